/** Notices at the foot of every page: a plan that is not kept, two windows that changed it, a newer app. */
export const keepNoticeWords = {
  notKept: {
    none: 'This browser gives Girthline no place to keep plans; perhaps this is a private window. Everything works, but your plan may be gone when you close the page: save it as a file before.',
    newer:
      'The shelf of this browser was written by a newer Girthline, so it is left untouched. Everything works here, but what you do now does not go on the shelf: save it as a file, or load the page again to get the newer one.',
    busy: 'Another window holds the shelf up. Close the other Girthline windows and load this page again; until then what you do goes nowhere but into a file you save.',
    full: 'This browser has no room left, so your last changes are not kept. Save the plan as a file now. Girthline goes on trying; deleting plans from the shelf makes room.',
    refused:
      'This browser would not keep your last changes. Save the plan as a file now. Girthline goes on trying.',
  },
  clash: {
    deleted: 'This plan was deleted in another window. What you have here is not on the shelf.',
    changed:
      'This plan was changed in another window too, or on the shelf. Nothing is lost: choose which of the two goes on here.',
    keepMine: 'Keep mine as a copy',
    leaveDeleted: 'Leave it deleted',
    takeTheirs: 'Take the other one',
  },
  update: {
    ready: 'A newer Girthline is ready. Your plan stays as it is.',
    elsewhere:
      'Another window has loaded a newer Girthline. This one may miss parts until it is loaded again. Your plan stays as it is.',
    take: {
      ready: 'Load it now',
      elsewhere: 'Load again',
    },
    later: 'Later',
  },
};
