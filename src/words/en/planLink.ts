/** What is said of a link that should carry a plan: its name, what was found, what is allowed. */
export const planLinkWords = {
  link: 'this link',
  wholeLink: 'a whole link as Girthline makes it',
  newer: 'a link of a newer Girthline',
  cutShort: 'a link that is cut short or was changed',
  notUnpacked: 'a link that cannot be unpacked',
};
