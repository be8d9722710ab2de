/** What is said of opening, changing and keeping plans. */
export const keepingWords = {
  /** Names of what is read, put before what is wrong with it. */
  thisPlan: 'this plan',
  planOnShelf: 'the plan on the shelf',

  notChanged: 'This change was not made.',
  fileNotOpened: 'This file was not opened; your plan is as it was.',
  lastNotOpened: 'Your last plan cannot be opened; it stays on the shelf as it is.',
  noShelf: 'The shelf cannot be opened.',
  notOnShelf: 'This plan is no longer on the shelf.',
  goesOnAsCopy: 'This plan was changed in another window too, so it goes on as a copy.',
  notSettled: (why: string) =>
    `This plan could not be settled, so the basket shown is the last one that could: ${why}.`,
  tableNotSettled: (why: string) => `The basket on the table could not be settled: ${why}.`,

  /** What can be undone, as it is named behind “Undo”. */
  steps: {
    change: 'a change',
    opening: (name: string) => `opening “${name}”`,
    openingIt: 'opening it',
    takingTheirs: 'taking over what the other window has',
    changedElsewhere: 'what another tab changed',
    keepingMine: 'keeping mine as a copy',
    keepingIt: 'keeping it as a copy',
    /** A step that ended with another plan: undoing it goes back to the one opened before. */
    backTo: (step: string, plan: string) => `${step}: back to “${plan}”`,
  },

  /** One of the baskets made from a plan, until it is given a name. */
  basket: (number: number) => `Basket ${number}`,

  /** Endings of the names of copies, counted from 1, each another. */
  copy: (number: number) => (number === 1 ? ', copy' : `, copy ${number}`),
  /** Ending of the name of a copy that is compared with its original. */
  second: ', second',
};
