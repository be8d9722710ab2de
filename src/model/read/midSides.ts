import type { End, Side } from '../net/net.ts';

const sides: readonly Side[] = ['south', 'east', 'north', 'west'];

/**
 * Numbers of the ends nearest the middle of each side: one, or two where the side has an even count. A side
 * that no stake stands on (the short one of a narrow board) is left out.
 */
export function midSideEnds(ends: readonly End[]): readonly (readonly number[])[] {
  const named = sides.map((side) => {
    const own = ends.flatMap((end, e) => (end.side === side ? [e] : []));
    const from = (own.length - 1) >> 1;
    return own.slice(from, own.length % 2 === 0 ? from + 2 : from + 1);
  });
  return named.filter((own) => own.length > 0);
}
