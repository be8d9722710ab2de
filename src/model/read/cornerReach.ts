/** A weaver going round a sharp corner. (`!`: typed arrays in a hot loop.) */
import type { Chords, RowCurve } from './smoothRow.ts';
import { pieces } from './smoothRow.ts';

const smooth = new Float64Array(3 * pieces);
const toCorner = new Float64Array(3 * pieces);
const out = new Float64Array(3);

/**
 * Blends segment j, drawn as a smooth curve, with the corner where the tangents of the two sides
 * cross, until it is `curve.segment[j]` long. On the flat base that is the corner of the outline.
 */
export function reachOut(
  curve: RowCurve,
  { unit, length }: Chords,
  j: number,
  nodes: Int32Array,
  positions: Float64Array,
): void {
  const n = nodes.length;
  const before = 3 * ((j + n - 1) % n);
  const after = 3 * ((j + 1) % n);
  const c = length[j]!;
  // Outward: against the turn of the two sides, across the chord.
  let along = 0;
  for (let d = 0; d < 3; d++) along += (unit[before + d]! - unit[after + d]!) * unit[3 * j + d]!;
  let square = 0;
  for (let d = 0; d < 3; d++) {
    out[d] = unit[before + d]! - unit[after + d]! - along * unit[3 * j + d]!;
    square += out[d]! ** 2;
  }
  const size = Math.sqrt(square);
  if (!(size > 1e-9)) return;
  // |t₊ − t₋| = 2 sin(θ/2); the tip of an isosceles corner stands c/2·tan(θ/2) over its chord.
  const sine = Math.min(0.9, size / 2);
  const tip = Math.max((0.5 * c * sine) / Math.sqrt(1 - sine * sine), 0.3 * c);
  const first = 3 * j * pieces;
  const start = 3 * nodes[j]!;
  for (let piece = 0; piece < pieces; piece++) {
    const s = piece / pieces;
    const tent = (tip * (1 - Math.abs(2 * s - 1))) / size;
    for (let d = 0; d < 3; d++) {
      const i = 3 * piece + d;
      smooth[i] = curve.points[first + i]!;
      toCorner[i] = positions[start + d]! + s * c * unit[3 * j + d]! + tent * out[d]! - smooth[i]!;
    }
  }
  // Secant steps: the length grows with the blend, slightly faster than in proportion.
  const wanted = curve.segment[j]!;
  const end = 3 * nodes[(j + 1) % n]!;
  let low = 0;
  let atLow = blended(curve.points, first, low, positions, end);
  let high = 1;
  let atHigh = blended(curve.points, first, high, positions, end);
  for (let step = 0; step < 8 && Math.abs(atHigh - wanted) > 1e-6 * wanted; step++) {
    const slope = (atHigh - atLow) / (high - low);
    if (!(Math.abs(slope) > 1e-9)) break;
    low = high;
    atLow = atHigh;
    high = Math.min(3, Math.max(0, high + (wanted - atHigh) / slope));
    atHigh = blended(curve.points, first, high, positions, end);
  }
}

/** Writes the segment blended by `blend` into `points`; gives its length up to the node at `end`. */
function blended(
  points: Float64Array,
  first: number,
  blend: number,
  positions: Float64Array,
  end: number,
): number {
  for (let i = 0; i < 3 * pieces; i++) points[first + i] = smooth[i]! + blend * toCorner[i]!;
  let sum = 0;
  for (let piece = 1; piece <= pieces; piece++) {
    const p = first + 3 * piece;
    const last = piece === pieces;
    const dx = (last ? positions[end]! : points[p]!) - points[p - 3]!;
    const dy = (last ? positions[end + 1]! : points[p + 1]!) - points[p - 2]!;
    const dz = (last ? positions[end + 2]! : points[p + 2]!) - points[p - 1]!;
    sum += Math.sqrt(dx * dx + dy * dy + dz * dz);
  }
  return sum;
}
