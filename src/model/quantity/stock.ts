/** Colour of a strand that a plan gives none. */
export const undyed = 'natural';
