import { shelfWords } from '#words/shelf.ts';
import { dateText } from '../dates.ts';

const words = shelfWords.ago;

const minute = 60_000;
const hour = 60 * minute;
const day = 24 * hour;

/** When something was changed, as one says it: `just now`, `3 hours ago`, then the date. Times in ms. */
export function agoText(then: number, now: number): string {
  const ago = now - then;
  if (ago < minute) return words.now;
  if (ago < hour) return words.minutes(Math.floor(ago / minute));
  if (ago < day) return words.hours(Math.floor(ago / hour));
  if (ago < 7 * day) return words.days(Math.floor(ago / day));
  return dateText(then);
}
