/** What all printed pages have in common. */
export const pdfPageWords = {
  maker: 'Girthline',
  page: (page: number, pages: number) => `Page ${page} of ${pages}`,
  papers: { a4: 'A4', letter: 'US Letter' },
};
