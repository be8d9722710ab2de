/**
 * The kinds of number a design document holds.
 * The error text of every schema in this room is what is *allowed* (see `allowed.ts`).
 */
import { z } from 'zod';
import { documentWords } from '#words/document.ts';
import { refusalWords } from '#words/refusals.ts';
import { allowedWords } from './allowed.ts';

// zod would write itself a faster reader as text and run it; the page's policy allows no such thing.
// It stands here because every schema is made of these, and so after it.
z.config({ jitless: true });

/** A length in millimetres from `least` to `most`. `what` says what it measures. */
export function length(least: number, most: number, what: string) {
  const error = refusalWords.allowed.length(`${least}`, `${most}`);
  return z
    .number({ error })
    .min(least, { error })
    .max(most, { error })
    .meta({ description: documentWords.inMillimetres(what) });
}

/** A whole number from `least` to `most`. */
export function count(least: number, most: number, what: string) {
  const error = refusalWords.allowed.count(`${least}`, `${most}`);
  return z.int({ error }).min(least, { error }).max(most, { error }).meta({ description: what });
}

/** A plain number without a unit from `least` to `most`. */
export function ratio(least: number, most: number, what: string) {
  const error = refusalWords.allowed.ratio(`${least}`, `${most}`);
  return z.number({ error }).min(least, { error }).max(most, { error }).meta({ description: what });
}

/** One of a few words. */
export function oneOf<const Words extends readonly [string, ...string[]]>(
  words: Words,
  what: string,
) {
  return z.enum(words, { error: allowedWords(words) }).meta({ description: what });
}
