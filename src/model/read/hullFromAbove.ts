/**
 * Convex hull of some of `points` (x, y, z a point) as seen from above: their numbers, counter-clockwise
 * (A. M. Andrew, Inf. Process. Lett. 9, 1979).
 */
export function hullFromAbove(
  points: ArrayLike<number>,
  chosen: readonly number[],
): readonly number[] {
  const x = (i: number) => points[3 * i]!;
  const y = (i: number) => points[3 * i + 1]!;
  const sorted = chosen.toSorted((p, q) => x(p) - x(q) || y(p) - y(q));
  const half = (order: readonly number[]) => {
    const chain: number[] = [];
    for (const i of order) {
      while (chain.length > 1) {
        const [p, q] = [chain.at(-2)!, chain.at(-1)!];
        if ((x(q) - x(p)) * (y(i) - y(p)) - (y(q) - y(p)) * (x(i) - x(p)) > 0) break;
        chain.pop();
      }
      chain.push(i);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.toReversed())];
}
