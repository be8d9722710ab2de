/** Parts of a handle that stand through the rim: what lies there gives way to them. */

/** Such a part, in ends. */
export interface InTheWay {
  readonly end: number;
  /** Half its width. */
  readonly half: number;
}

/** How far `one` is on from `other` round a rim of `ends` ends, the short way. */
export function apart(one: number, other: number, ends: number): number {
  const way = (((one - other) % ends) + ends) % ends;
  return way > ends / 2 ? way - ends : way;
}

/** The place nearest to `end` that is `aside` clear of all that is in the way. */
export function clearOf(
  end: number,
  aside: number,
  inTheWay: readonly InTheWay[],
  ends: number,
): number {
  const isFree = (at: number) =>
    inTheWay.every((one) => Math.abs(apart(at, one.end, ends)) >= one.half + aside - 1e-9);
  const edges = inTheWay.flatMap((one) =>
    [-1, 1].map((side) => end + apart(one.end, end, ends) + side * (one.half + aside)),
  );
  const free = [end, ...edges].filter(isFree);
  return free.toSorted((one, other) => Math.abs(one - end) - Math.abs(other - end))[0] ?? end;
}
