/** What is said of files in an archive of the shelf: what was found there, and what may stand there. */
export const archiveWords = {
  moreFiles: 'more files',
  atMostFiles: (count: number) => `at most ${count} files; the rest is left out`,
  notUnpacked: 'a file that cannot be unpacked',
  archive: 'a shelf saved by Girthline (zip)',
};
