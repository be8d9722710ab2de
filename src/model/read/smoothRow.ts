/**
 * A row's loop drawn through its nodes. (`!`: typed arrays in a hot loop.)
 *
 * Between two nodes it is the cubic whose curvature runs evenly from one node's to the other's, the
 * very curve whose length the settling holds (net/smoothLength).
 */
import type { Row } from '../net/net.ts';
import { share } from '../net/smoothLength.ts';

/** Pieces that each segment is cut into; even, so that the tip of a corner is among the points. */
export const pieces = 6;

/** A row's loop as drawn. Lengths mm. */
export interface RowCurve {
  /** x, y, z of `pieces` points a segment, from each node on. */
  readonly points: Float64Array;
  /** Length of the curve from each node to the next. */
  readonly segment: Float64Array;
}

/** The chords of a loop from each node to the next: unit vectors and lengths, mm. */
export interface Chords {
  readonly unit: Float64Array;
  readonly length: Float64Array;
}

/** Chords of the loop through `nodes`, into the last argument. */
export function measureChords(nodes: Int32Array, x: Float64Array, { unit, length }: Chords): void {
  for (let j = 0; j < nodes.length; j++) {
    const a = 3 * nodes[j]!;
    const b = 3 * nodes[j + 1 < nodes.length ? j + 1 : 0]!;
    const dx = x[b]! - x[a]!;
    const dy = x[b + 1]! - x[a + 1]!;
    const dz = x[b + 2]! - x[a + 2]!;
    const c = Math.sqrt(dx * dx + dy * dy + dz * dz) + 1e-12;
    length[j] = c;
    unit[3 * j] = dx / c;
    unit[3 * j + 1] = dy / c;
    unit[3 * j + 2] = dz / c;
  }
}

/** Draws `row` as a smooth curve into `curve`; nothing is added at corners. */
export function drawSmooth(
  { nodes, spacing }: Row,
  positions: Float64Array,
  { unit, length }: Chords,
  { points, segment }: RowCurve,
): void {
  const n = nodes.length;
  for (let j = 0; j < n; j++) {
    const c = length[j]!;
    const k = j + 1 < n ? j + 1 : 0;
    const at = 3 * nodes[j]!;
    const before = 3 * (j > 0 ? j - 1 : n - 1);
    const ra = c * share(spacing, j, j);
    const rb = c * share(spacing, j, k);
    let aa = 0;
    let bb = 0;
    let ab = 0;
    for (let d = 0; d < 3; d++) {
      const own = unit[3 * j + d]!;
      const a = ra * (own - unit[before + d]!);
      const b = rb * (unit[3 * k + d]! - own);
      aa += a * a;
      bb += b * b;
      ab += a * b;
      for (let piece = 0; piece < pieces; piece++) {
        const s = piece / pieces;
        // Twice integrated from the curvatures a, b at the ends, 0 at both of them.
        const off = (a * (s * (3 - s) - 2) + b * (s * s - 1)) * (s / 6);
        points[3 * (j * pieces + piece) + d] = positions[at + d]! + s * c * own + off;
      }
    }
    segment[j] = c * (1 + (0.5 * ((aa + bb) / 45 + (7 * ab) / 180)) / (c * c));
  }
}
