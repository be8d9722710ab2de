/**
 * A weaver going round a sharp corner. (`!`: typed arrays in a hot loop.)
 *
 * The smooth curve bends at the two stakes beside the corner and swells the sides next to them. A
 * weaver round a sharp corner runs straight along the side, on to where the two sides' tangents cross.
 * The row lies between the two, as far as its length says.
 */
import type { Row } from '../net/net.ts';
import { share } from '../net/smoothLength.ts';
import type { Chords, RowCurve } from './smoothRow.ts';
import { pieces } from './smoothRow.ts';

/** Of the segment before the corner, the corner's and the one after: the smooth points, and the way from each to the sharp ones. */
const smooth = new Float64Array(9 * pieces);
const toSharp = new Float64Array(9 * pieces);
const turn = new Float64Array(3);

/**
 * Blends the smooth curve round corner segment j with the sharp one until it is `extra` mm longer.
 * On the flat base, where `extra` is all that the outline has beyond the smooth curve, it is the
 * outline. Drawn lengths go into `curve.segment`; their sum is what it was, and `extra`.
 */
export function reachOut(
  row: Row,
  j: number,
  extra: number,
  positions: Float64Array,
  chords: Chords,
  curve: RowCurve,
): void {
  const n = row.nodes.length;
  const trio = [(j + n - 1) % n, j, (j + 1) % n] as const;
  for (let part = 0; part < 3; part++) {
    const from = 3 * trio[part]! * pieces;
    for (let i = 0; i < 3 * pieces; i++) smooth[3 * part * pieces + i] = curve.points[from + i]!;
  }
  straighten(row, trio, chords);
  toTip(row.nodes, j, n, positions, chords);

  const said = trio.reduce((sum, segment) => sum + curve.segment[segment]!, extra);
  const end = 3 * row.nodes[(j + 2) % n]!;
  // Secant steps: the length grows with the blend, slightly faster than in proportion.
  let low = 0;
  let atLow = blended(0, positions, end).total;
  let high = 1;
  let drawn = blended(1, positions, end);
  for (let step = 0; step < 8 && Math.abs(drawn.total - said) > 1e-6 * said; step++) {
    const slope = (drawn.total - atLow) / (high - low);
    if (!(Math.abs(slope) > 1e-9)) break;
    low = high;
    atLow = drawn.total;
    high = Math.min(1.5, Math.max(0, high + (said - drawn.total) / slope));
    drawn = blended(high, positions, end);
  }
  for (let part = 0; part < 3; part++) {
    const to = 3 * trio[part]! * pieces;
    const from = 3 * part * pieces;
    for (let i = 0; i < 3 * pieces; i++) {
      curve.points[to + i] = smooth[from + i]! + high * toSharp[from + i]!;
    }
  }
  curve.segment[trio[0]] = drawn.before;
  curve.segment[trio[2]] = drawn.after;
  curve.segment[j] = said - drawn.before - drawn.after;
}

/** Takes out of the two sides what the turn at the corner's stakes put in. */
function straighten(row: Row, trio: readonly [number, number, number], { unit, length }: Chords) {
  const [before, j, after] = trio;
  const rb = length[before]! * share(row.spacing, before, j);
  const ra = length[after]! * share(row.spacing, after, after);
  for (let d = 0; d < 3; d++) {
    const b = rb * (unit[3 * j + d]! - unit[3 * before + d]!);
    const a = ra * (unit[3 * after + d]! - unit[3 * j + d]!);
    for (let piece = 0; piece < pieces; piece++) {
      const s = piece / pieces;
      toSharp[3 * piece + d] = -b * (s * s - 1) * (s / 6);
      toSharp[3 * (2 * pieces + piece) + d] = -a * (s * (3 - s) - 2) * (s / 6);
    }
  }
}

/** The way from the smooth corner to its tip, where the tangents of the sides cross. */
function toTip(nodes: Int32Array, j: number, n: number, x: Float64Array, { unit, length }: Chords) {
  const before = 3 * ((j + n - 1) % n);
  const after = 3 * ((j + 1) % n);
  // Outward: against the turn of the two sides, across the chord.
  let along = 0;
  for (let d = 0; d < 3; d++) along += (unit[before + d]! - unit[after + d]!) * unit[3 * j + d]!;
  let square = 0;
  for (let d = 0; d < 3; d++) {
    turn[d] = unit[before + d]! - unit[after + d]! - along * unit[3 * j + d]!;
    square += turn[d]! ** 2;
  }
  // |t₊ − t₋| = 2 sin(θ/2); the tip of an isosceles corner stands c/2·tan(θ/2) over its chord.
  const size = Math.sqrt(square) + 1e-12;
  const sine = Math.min(0.9, size / 2);
  const c = length[j]!;
  const tip = Math.max((0.5 * c * sine) / Math.sqrt(1 - sine * sine), 0.3 * c);
  for (let piece = 0; piece < pieces; piece++) {
    const s = piece / pieces;
    const tent = (tip * (1 - Math.abs(2 * s - 1))) / size;
    for (let d = 0; d < 3; d++) {
      const i = 3 * (pieces + piece) + d;
      const straight = x[3 * nodes[j]! + d]! + s * c * unit[3 * j + d]!;
      toSharp[i] = straight + tent * turn[d]! - smooth[i]!;
    }
  }
}

/** Lengths of the three segments blended by `blend`, up to the node at `end`. */
function blended(blend: number, positions: Float64Array, end: number) {
  let before = 0;
  let total = 0;
  let last = 0;
  for (let point = 1; point <= 3 * pieces; point++) {
    let square = 0;
    for (let d = 0; d < 3; d++) {
      const q = 3 * point + d;
      const here = smooth[q - 3]! + blend * toSharp[q - 3]!;
      const next = point < 3 * pieces ? smooth[q]! + blend * toSharp[q]! : positions[end + d]!;
      square += (next - here) ** 2;
    }
    total += Math.sqrt(square);
    if (point === pieces) before = total;
    if (point === 2 * pieces) last = total;
  }
  return { before, after: total - last, total };
}
