/** How far the wall leans. (`!`: typed arrays in a hot loop.) */
import type { Net } from '../net/net.ts';

const degrees = 180 / Math.PI;

/**
 * Lean of the stakes at a row: angle from the vertical, outward positive, in degrees; the mean over
 * all ends, and the one that is farthest from upright. Taken from the row below to the row above (at
 * the rim, to the rim), across the weaver's run: what a stake travels sideways is no lean.
 */
export function leans(
  { ends, rows }: Net,
  row: number,
  x: Float64Array,
): { readonly mean: number; readonly most: number } {
  const n = ends.length;
  const nodes = rows[row]!.nodes;
  const upper = Math.min(row + 1, rows.length - 1);
  let sum = 0;
  let most = 0;
  for (let j = 0; j < n; j++) {
    const a = 3 * ends[j]!.nodes[row - 1]!;
    const b = 3 * ends[j]!.nodes[upper]!;
    const p = 3 * nodes[j > 0 ? j - 1 : n - 1]!;
    const q = 3 * nodes[j + 1 < n ? j + 1 : 0]!;
    const tx = x[q]! - x[p]!;
    const ty = x[q + 1]! - x[p + 1]!;
    // Rows run counter-clockwise: outward is to the right of the run.
    const out =
      (ty * (x[b]! - x[a]!) - tx * (x[b + 1]! - x[a + 1]!)) / (Math.hypot(tx, ty) + 1e-12);
    const angle = degrees * Math.atan2(out, x[b + 2]! - x[a + 2]!);
    sum += angle;
    if (Math.abs(angle) > Math.abs(most)) most = angle;
  }
  return { mean: sum / n, most };
}
