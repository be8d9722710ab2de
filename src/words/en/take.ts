/** Plans that come in from files, archives and links, and why the shelf may refuse. */
export const takeWords = {
  refused: {
    full: 'This browser has no room left. Deleting plans from the shelf makes room.',
    closed:
      'The shelf is closed, perhaps by a newer Girthline in another window. Load this page again.',
    other: 'The browser refused. Load this page again and try once more.',
  },

  notAllTaken: 'Not all of this came on the shelf.',
  noShelf: 'This browser has no shelf to put several plans on; open them one by one.',
  /** What was found, and what would be allowed. */
  found: {
    unreadable: 'nothing that the browser could read',
  },
  allowed: {
    present: 'a file that is still there',
  },
  /** What came of it; counts of 0 are not spoken of, but for plans put on the shelf. */
  taken({
    added,
    replaced,
    skipped,
    same,
    joined,
  }: Readonly<Record<'added' | 'replaced' | 'skipped' | 'same' | 'joined', number>>): string {
    const parts = [
      `${added} ${added === 1 ? 'plan' : 'plans'} put on the shelf`,
      replaced > 0 && `${replaced} replaced`,
      skipped > 0 && `${skipped} left out`,
      same > 0 && `${same} there already`,
      joined > 0 && `${joined} earlier versions or bench pages added to those that were there`,
    ];
    return `${parts.filter(Boolean).join(', ')}.`;
  },

  /** A plan that comes in while one of its name is on the shelf. */
  twin: {
    title: (plan: string) => `“${plan}” is on your shelf already`,
    text: (changed: string) =>
      `The one on the shelf was last changed ${changed}, and the one coming in differs from it. If it is replaced, it stays among its earlier versions.`,
    both: 'Keep both',
    replace: 'Replace the one on the shelf',
    skip: 'Leave the new one out',
    forAll: (toCome: number) => `Do so with all others of this archive too (${toCome} to come)`,
    /** Label of the edit. */
    replacing: 'replacing it',
  },

  link: {
    notOpened: 'This link was not opened; your plan is as it was.',
    title: (plan: string) => `This link brings a plan: “${plan}”`,
    text: (rows: number, hasShelf: boolean) =>
      hasShelf
        ? `It has ${rows} rows. Your own plan stays as it is, on your shelf.`
        : `It has ${rows} rows. There is no shelf here to keep your own plan on: if you open this one, undo brings yours back while the page is open; save yours as a file first to be sure.`,
    open: 'Open it',
    beside: 'Look at it beside mine',
    leave: 'Leave it',
    planNotOpened: 'This plan was not opened.',
  },
};
