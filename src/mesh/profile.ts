/**
 * How far several flat loops reach to either side at a given height.
 *
 * @param loops each x, y, x, y, …, closed
 * @returns least and largest x at height `y`; null where no loop comes to that height
 */
export function reachAt(
  loops: readonly (readonly number[])[],
  y: number,
): { readonly left: number; readonly right: number } | null {
  let [left, right] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const loop of loops) {
    for (let at = 0; at < loop.length; at += 2) {
      const next = at + 2 < loop.length ? at + 2 : 0;
      const [x0, y0, x1, y1] = [loop[at]!, loop[at + 1]!, loop[next]!, loop[next + 1]!];
      if ((y0 < y && y1 < y) || (y0 > y && y1 > y)) continue;
      const x = y0 === y1 ? x0 : x0 + ((x1 - x0) * (y - y0)) / (y1 - y0);
      left = Math.min(left, x);
      right = Math.max(right, x);
    }
  }
  return left <= right ? { left, right } : null;
}
