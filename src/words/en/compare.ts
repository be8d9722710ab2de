/**
 * What is said while two plans are compared; `letter` is A or B. Lengths come written. In `isEdited`
 * the letter stands apart at its place, in its plan's colour.
 */
export const compareWords = {
  title: 'Two plans side by side',
  close: 'Back to one plan',
  by: { title: 'Compare by', row: 'row', height: 'height' },
  saveCsv: 'Save CSV',
  savePng: 'Save PNG',
  savePdf: 'Save page (PDF)',

  files: {
    /** Name of a file, but for its ending; the plans' names can stand in names of files. */
    name: (a: string, b: string) => `${a} and ${b} compared`,
    notWritten: (why: string) => `The file was not written: ${why}`,
    noPen: 'this browser cannot draw a picture',
    noPicture: 'this browser could not write the picture',
    unreadable: (file: string) => `${file}: the browser could not read this file`,
  },

  /** One of the two plans. */
  side: {
    title: (letter: string) => `Plan ${letter}`,
    problem: (letter: string, problem: string) => `Plan ${letter}. ${problem}`,
    edit: (letter: string) => `Edit ${letter}`,
    editKey: 'Key E edits the other plan',
    isEdited: 'Plan {letter} is edited here',
    undoIn: (letter: string) => `Undo in plan ${letter}`,
    redoIn: (letter: string) => `Redo in plan ${letter}`,
    hasSettled: (letter: string) => `Plan ${letter} has settled`,
    hasNotSettled: (letter: string) => `Plan ${letter}: not settled`,
  },

  chooser: {
    title: (letter: string) => `Put another plan in the place of ${letter}`,
    choose: 'Put here …',
    copy: (letter: string) => `Copy of plan ${letter}`,
    file: 'A plan from a file …',
    shelf: 'Plans on the shelf',
    demos: 'Baskets of the orchard class',
    openFile: (letter: string) => `Plan file to open as plan ${letter}`,
  },

  stage: {
    title: 'Both baskets',
    settling: (letter: string) => `Basket ${letter} is being settled`,
    basket: (letter: string, name: string, height: string, rim: string, belly: number) =>
      `Basket ${letter}, ${name}: wall ${height} high, rim ${rim} round, widest at row ${belly}`,
    noWebgl:
      'The baskets cannot be shown in three dimensions here (that takes WebGL), so they are drawn in outline, A in a whole line and B in a dashed one.',
  },

  layouts: {
    title: 'Lay the baskets',
    beside: { name: 'Side by side', means: 'Both as woven, turned together' },
    bOverA: { name: 'B over A', means: 'A as woven, with the outline of B laid over it' },
    aOverB: { name: 'A over B', means: 'B as woven, with the outline of A laid over it' },
    /** Beside the line of each. */
    legend: { title: 'Lines of the two', woven: 'as woven', over: 'its outline' },
  },

  rooms: {
    girths: 'Both girth lines',
    plan: (letter: string) => `Numbers of plan ${letter}`,
    differences: 'Differences',
    differencesWait: 'The differences are shown once both baskets have settled.',
    findings: (letter: string) => `Findings of plan ${letter}`,
  },

  /** The plan between the two. */
  blend: {
    title: 'Blend of the two plans',
    keepAsA: 'Keep as A',
    keepAsB: 'Keep as B',
    toShelf: 'Put on the shelf',
    toFile: 'Save as file',
    isNow: (letter: string) => `The blend is now plan ${letter}; undo brings the old one back.`,
    isOnShelf: 'It is on the shelf, and in the list “Put here …” of both plans.',
    noRoom: 'This browser would not keep it, so save it as a file.',
    onBaseOfA: 'On the base of A, with the line of B in proportion to it.',
  },
};
