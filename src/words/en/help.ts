/** The page of help: words of the trade, and keys. */
export const helpWords = {
  title: 'Help',
  pages: 'Words and keys',
  tradeWords: 'Words of the trade',
  keys: 'Keys',
  where: 'They work wherever you are not typing.',
  /** Keys as they are written on a keyboard. */
  key: {
    undo: 'Ctrl or ⌘ Z',
    redo: 'Ctrl or ⌘ Y',
    arrows: 'Arrows',
    add: 'A',
    delete: 'Delete',
    other: 'E',
    help: '?',
    escape: 'Esc',
  },
  does: {
    arrows: 'On a point of the girth line: move it',
    add: 'On a point: add the next one',
    delete: 'On a point: take it away',
    other: 'Edit the other plan',
    help: 'This page',
    escape: 'Close what is open',
  },
};
