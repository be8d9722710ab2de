/** The dialog that shows and saves what is printed. */
export const printWords = {
  title: (plan: string) => `Print ${plan}`,
  choose: 'What to look at',
  kinds: {
    sheet: 'Sheet to weave from',
    gauges: 'Full-size gauges',
  },
  paper: 'Paper',
  /** Whose materials the sheet lists; with a field for the count. */
  baskets: 'Baskets to make',
  save: {
    sheet: 'Save sheet (PDF)',
    gauges: 'Save gauges (PDF)',
  },
  ready: {
    sheet: (pages: number, paper: string) => `${pages} pages, ${paper}.`,
    gauges: (pages: number, paper: string) =>
      `${pages} pages, ${paper}. Print at 100 % and check the bars.`,
  },
  pages: 'Pages',
  page: (kind: string, page: number, pages: number) => `${kind}, page ${page} of ${pages}`,
  gettingLetters: 'Getting the letters …',
  noLetters: (status: number) => `the letters to print with could not be read (${status})`,
  layingOut: 'Laying out the pages …',
  writing: {
    sheet: 'Writing the sheet …',
    gauges: 'Writing the gauges …',
  },
  /** Names of the files that are offered. `stem` is the plan's name. */
  fileName: {
    sheet: (stem: string) => `${stem} sheet.pdf`,
    gauges: (stem: string) => `${stem} gauges.pdf`,
  },
  failed: (why: string) => `This did not work: ${why}.`,
};
