/** Dates in the language of the words. */
import { language } from '#words/language.ts';

/** The reader's own ways of that language, as `en-GB`, which tell the order of day and month; then itself. */
export function localesOf(read: readonly string[], written: string): string[] {
  const base = (one: string) => one.toLowerCase().split('-')[0];
  const own = read.filter((one) => base(one) === base(written));
  return [...own, written];
}

const locales = localesOf(globalThis.navigator?.languages ?? [], language);

/** Made once: each one made anew takes a millisecond or more. */
const day = new Intl.DateTimeFormat(locales, { dateStyle: 'medium' });
const dayAndTime = new Intl.DateTimeFormat(locales, { dateStyle: 'medium', timeStyle: 'short' });

/** `31 Jan 2026`; `time` in ms since 1970. */
export function dateText(time: number): string {
  return day.format(time);
}

/** `31 Jan 2026, 14:05`; `time` in ms since 1970. */
export function dateTimeText(time: number): string {
  return dayAndTime.format(time);
}
