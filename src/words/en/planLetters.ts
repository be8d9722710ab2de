/** By what two plans that are compared are told apart, and the one between them. */
export const planLetters = { a: 'A', b: 'B', blend: 'C' };
