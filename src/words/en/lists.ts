/** How texts are put behind one another. */
export const listWords = {
  /** Things: `hoops, rim filler`. */
  things: (texts: readonly string[]) => texts.join(', '),
  /** Things of which one is meant; there are two or more. */
  either: (texts: readonly string[]) => `${texts.slice(0, -1).join(', ')} or ${texts.at(-1)}`,
  /** What is to be done at one place; each begins in lower case. */
  steps: (texts: readonly string[]) => texts.join('; '),
  /** Whole sentences. */
  sentences: (texts: readonly string[]) => texts.join(' '),
};
