/** What the part after # of an address begins with when it carries a plan. */
export const linkMark = '#plan=';
