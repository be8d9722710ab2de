/**
 * A made-up language: English in which every text is marked, `⟦Close⟧`. What a text takes in stands between
 * marks of its own, so that it needs to be a text of the words too: `⟦Print ⟧⟨⟦Label pot⟧⟩`.
 */

/** The words of one file, each string marked, and what each function gives. Other values stay as they are. */
export function marked<Words>(words: Words): Words {
  return mark(words) as Words;
}

function mark(value: unknown): unknown {
  if (typeof value === 'string') return inMarks(value);
  if (typeof value === 'function') {
    return (...given: unknown[]) => mark(value(...given.map(takenIn)));
  }
  return within(value, mark);
}

/** A place for something that is no text, as `{name}`, is kept for the code to find. */
function inMarks(text: string): string {
  return `⟦${text.replace(/\{\w+\}/g, '⟧$&⟦')}⟧`.replaceAll('⟦⟧', '');
}

function takenIn(value: unknown): unknown {
  if (typeof value === 'string') return value && `⟧⟨${value}⟩⟦`;
  return within(value, takenIn);
}

function within(value: unknown, change: (one: unknown) => unknown): unknown {
  if (Array.isArray(value)) return value.map(change);
  if (typeof value !== 'object' || value === null || value instanceof RegExp) return value;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, change(one)]));
}

/** What of a text stands outside of marks and has a letter in it; empty where there is no such thing. */
export function unmarked(text: string): string {
  return text
    .split(/⟦[^⟦⟧]*⟧/)
    .filter((piece) => /\p{L}/u.test(piece))
    .map((piece) => piece.replace(/[⟨⟩\s]+/g, ' ').trim())
    .join(' … ');
}
