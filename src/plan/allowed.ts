/**
 * What is allowed, in words. The error text of every schema in this room says only that;
 * `problems.ts` adds the file, the path of the key and what was found.
 */
import { listWords } from '#words/lists.ts';
import { refusalWords } from '#words/refusals.ts';

/** `"split", "added" or "none"`. */
export function allowedWords(words: readonly string[]): string {
  const quoted = words.map((word) => `"${word}"`);
  return quoted.length < 2 ? (quoted[0] ?? '') : listWords.either(quoted);
}

/** For a strict object: which keys it has. */
export function keysOf(shape: Readonly<Record<string, unknown>>): string {
  return refusalWords.allowed.keys(listWords.things(Object.keys(shape)));
}

/** For a union by kind: one of the kinds, or an object in the first place. */
export function kindsOf(
  issue: { readonly code?: string | undefined },
  kinds: readonly string[],
): string {
  const words = allowedWords(kinds);
  return issue.code === 'invalid_union' ? words : refusalWords.allowed.kinds(words);
}
