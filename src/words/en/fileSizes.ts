/** How large a file is, and how large one may be, where it is not read. */
export const fileSizeWords = {
  bytes: (count: number) => `${count} bytes`,
  atMostBytes: (count: number) => `at most ${count} bytes`,
};
