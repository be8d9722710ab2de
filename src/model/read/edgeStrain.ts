/** How much longer one edge of a flat weaver would have to be than the other. (`!`: typed arrays in a hot loop.) */
import type { Net } from '../net/net.ts';

/**
 * Edge strain of a weaver `width` mm wide at row `row`: the largest geodesic curvature of the row on the wall,
 * times half the width. A flat strand bends out of its face but not in it, so on a row that curves within
 * the wall one edge is stretched and the other pressed by this share of its length.
 *
 * At each node the row's curvature (turn of the unit chords over the mean chord) is taken across the row
 * in the wall's tangent plane, which the stake spans; on a cone of half angle α it is sin α / r all round.
 * The mean of three nodes counts, as the strand's own stiffness spreads it.
 */
export function edgeStrain(net: Net, row: number, width: number, x: Float64Array): number {
  const { nodes } = net.rows[row]!;
  const n = nodes.length;
  const below = row > 1 ? net.rows[row - 1]!.nodes : nodes;
  const above = row + 1 < net.rows.length ? net.rows[row + 1]!.nodes : nodes;
  const curvature = new Float64Array(n);
  for (let j = 0; j < n; j++) {
    const a = 3 * nodes[(j + n - 1) % n]!;
    const b = 3 * nodes[j]!;
    const c = 3 * nodes[(j + 1) % n]!;
    // A wall of one row has no stake above or below it: its edge on the base tells the way up.
    const low = 3 * (below === above ? net.ends[j]!.nodes[0]! : below[j]!);
    curvature[j] = acrossRow(x, a, b, c, low, 3 * above[j]!);
  }
  let most = 0;
  for (let j = 0; j < n; j++) {
    const mean = (curvature[(j + n - 1) % n]! + curvature[j]! + curvature[(j + 1) % n]!) / 3;
    most = Math.max(most, Math.abs(mean));
  }
  return (most * width) / 2;
}

/** Curvature at b of the curve through a, b, c, across it in the plane it spans with low → high. */
function acrossRow(
  x: Float64Array,
  a: number,
  b: number,
  c: number,
  low: number,
  high: number,
): number {
  const [px, py, pz] = [x[b]! - x[a]!, x[b + 1]! - x[a + 1]!, x[b + 2]! - x[a + 2]!];
  const [qx, qy, qz] = [x[c]! - x[b]!, x[c + 1]! - x[b + 1]!, x[c + 2]! - x[b + 2]!];
  const p = Math.sqrt(px * px + py * py + pz * pz) + 1e-12;
  const q = Math.sqrt(qx * qx + qy * qy + qz * qz) + 1e-12;
  const [kx, ky, kz] = [qx / q - px / p, qy / q - py / p, qz / q - pz / p];
  const [tx, ty, tz] = [qx / q + px / p, qy / q + py / p, qz / q + pz / p];
  const [sx, sy, sz] = [x[high]! - x[low]!, x[high + 1]! - x[low + 1]!, x[high + 2]! - x[low + 2]!];
  // The stake's way with the row's own taken out, k·(s − (s·t)t/|t|²); k is square to t up to p ≠ q.
  const square = tx * tx + ty * ty + tz * tz + 1e-24;
  const along = (sx * tx + sy * ty + sz * tz) / square;
  const [mx, my, mz] = [sx - along * tx, sy - along * ty, sz - along * tz];
  const size = Math.sqrt(mx * mx + my * my + mz * mz) + 1e-12;
  return (2 * (kx * mx + ky * my + kz * mz)) / (size * (p + q));
}
