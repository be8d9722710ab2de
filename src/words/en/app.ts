/** The page of a plan, its head, and what all pages say alike. */
export const appWords = {
  name: 'Girthline',

  close: 'Close',
  putAway: 'Put away',
  undo: 'Undo',
  redo: 'Redo',
  /** `what` is the label of an edit, as `naming it Trug`. */
  undoThis: (what: string) => `Undo ${what}`,
  redoThis: (what: string) => `Redo ${what}`,

  /** While a page is fetched. */
  waiting: {
    bench: 'Laying the plan on the bench …',
    shelf: 'Opening the shelf …',
    compare: 'Laying out both plans …',
  },

  shelf: 'Shelf',
  compare: 'Compare',
  atTheBench: 'At the bench',
  print: 'Print',
  gettingPages: 'Getting the pages ready …',
  help: 'Help: tour, words, keys',
  helpWithKey: 'Help: tour, words, keys (?)',

  planName: 'Name of the plan',
  /** Label of the edit. */
  namingIt: (name: string) => `naming it ${name}`,

  lengthsIn: 'Lengths in',
  /** Label of the edit. */
  settingUnit: (unit: string) => `lengths in ${unit}`,

  file: {
    menu: 'File',
    open: 'Open …',
    save: 'Save as a file',
    copyLink: 'Copy a link …',
    earlierVersions: 'Earlier versions …',
    rowChart: 'Row chart (CSV)',
    pick: 'Plan file to open',
    drop: 'Drop the plan here to open it',
    notOpened: (file: string) => `${file}: this file could not be opened`,
    linkNotOpened: 'The link could not be opened; load it again.',
  },

  /** Names of files that are offered. `stem` is the plan's name. */
  fileName: {
    /** In place of a name that no file can have. */
    unnamed: 'basket',
    rows: (stem: string) => `${stem} rows.csv`,
    outlines: (stem: string) => `${stem} outlines.svg`,
  },

  rooms: {
    all: 'Rooms of the plan',
    girthLine: 'Girth line',
    plan: 'Plan',
    rowChart: 'Row chart',
    summary: 'Summary and findings',
    /** On its tab. */
    summaryTab: 'Summary',
  },

  mishap: {
    title: 'Girthline stopped',
    text: 'Something went wrong in the program, not in your basket. Your plan is still here.',
    savePlan: 'Save the plan as a file',
    loadAgain: 'Load the page again',
    startAgain: 'Start again with the first basket',
    details: 'What the program said',
  },

  missed: {
    title: 'This page did not come',
    part: 'This part of Girthline could not be fetched; your plan stays as it is. Look whether there is a connection and try again. If it still does not come, load the page again.',
    again: 'Try again',
    back: 'Back to the plan',
  },

  newcomer: {
    label: 'For newcomers',
    text: 'New here? Drag a point of the girth line, and the basket follows.',
    showMeRound: 'Show me round',
    notNow: 'Not now',
  },
};
