/** The shelf of plans, and the versions of each. */
export const shelfWords = {
  search: 'Search the plans',
  searchIn: 'Search names and notes',
  openFiles: 'Open files …',
  saveAll: 'Save the whole shelf',
  packing: 'Packing …',
  back: 'Back to the plan',
  drop: 'Drop plans or a whole shelf here',
  notSaved: 'The shelf was not saved into a file.',
  /** Name of the file; `day` as `2026-01-31`. */
  fileName: (day: string) => `Girthline shelf ${day}.zip`,
  noShelf:
    'This browser gives Girthline no place to keep plans, so there is no shelf here. You can start from a basket of the class, open a plan from a file, and save your own as files.',

  /** With how many there are. */
  yourPlans: 'Your plans {count}',
  someOf: (found: number, all: number) => `${found} of ${all}`,
  none: 'Nothing here yet. A plan comes on the shelf by itself with its first change.',
  noneFound: 'No plan has these words in its name or its notes.',
  classBaskets: 'Start from a basket of the orchard class',
  startFrom: (demo: string) => `Start from ${demo}`,

  /** On a card: what its buttons say, and in full what they do to which plan. */
  card: {
    open: (plan: string) => `Open ${plan}`,
    rename: 'Rename',
    renameThis: (plan: string) => `Rename ${plan}`,
    newName: 'New name',
    copy: 'Copy',
    copyThis: (plan: string) => `Copy ${plan}`,
    versions: 'Versions',
    versionsOf: (plan: string) => `Versions of ${plan}`,
    delete: 'Delete',
    deleteThis: (plan: string) => `Delete ${plan}`,
    openNow: 'open now',
    notOpened: (plan: string) => `“${plan}” was not opened.`,
    notCopied: (plan: string) => `“${plan}” was not copied.`,
    notDeleted: (plan: string) => `“${plan}” was not deleted.`,
    notRenamed: (plan: string) => `“${plan}” was not renamed.`,
  },

  ago: {
    now: 'just now',
    minutes: (count: number) => `${count} ${count === 1 ? 'minute' : 'minutes'} ago`,
    hours: (count: number) => `${count} ${count === 1 ? 'hour' : 'hours'} ago`,
    days: (count: number) => `${count} ${count === 1 ? 'day' : 'days'} ago`,
  },

  told: {
    removed: (plan: string) => `“${plan}” is off the shelf.`,
    putBack: 'Put it back',
    notPutBack: (plan: string) => `“${plan}” was not put back.`,
    nothing: 'Nothing was taken in.',
    more: (count: number) => `and ${count} more`,
  },

  versions: {
    ofThePlan: 'Versions of the plan',
    notOnShelf: 'This plan is not on the shelf yet. It comes there with its first change.',
    none: 'None yet. Girthline puts one by every ten minutes while you change a plan.',
    /** With a field for the name. */
    keepUnder: 'Keep it as it is now under the name {name}',
    example: 'as taught in October',
    keep: 'Keep version',
    notKept: 'The version was not kept.',
    automatic: 'put by automatically',
    bringBack: 'Bring back',
    bringBackThis: (version: string, when: string) => `Bring back ${version}, ${when}`,
    notBroughtBack: 'It was not brought back.',
    /** Label of the edit. */
    bringingBack: (version: string) => `bringing back ${version}`,
    openBeside: 'Open beside',
    openThisBeside: (version: string, when: string) =>
      `Open beside the plan as it is now ${version}, ${when}`,
    notOpened: 'It was not opened.',
    keepForGood: 'Keep for good',
    keepThisForGood: (when: string) => `Keep for good the version of ${when}`,
    notNamed: 'It was not named.',
    /** Name it gets then. */
    asOf: (when: string) => `as of ${when}`,
    /** One without a name. */
    ofDay: (when: string) => `version of ${when}`,
    /** Name of the plan that is laid beside. */
    nameBeside: (plan: string, version: string) => `${plan}, ${version}`,
    /** In place of the name of a file that cannot be read. */
    thisVersion: 'this version',
  },
};
