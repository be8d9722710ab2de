const minute = 60_000;
const hour = 60 * minute;
const day = 24 * hour;

/** Made once: each one made anew takes a millisecond or more. */
const date = new Intl.DateTimeFormat([], { dateStyle: 'medium' });

/** When something was changed, as one says it: `just now`, `3 hours ago`, then the date. Times in ms. */
export function agoText(then: number, now: number): string {
  const ago = now - then;
  if (ago < minute) return 'just now';
  if (ago < hour) return counted(Math.floor(ago / minute), 'minute');
  if (ago < day) return counted(Math.floor(ago / hour), 'hour');
  if (ago < 7 * day) return counted(Math.floor(ago / day), 'day');
  return date.format(then);
}

function counted(count: number, unit: string): string {
  return `${count} ${unit}${count === 1 ? '' : 's'} ago`;
}
