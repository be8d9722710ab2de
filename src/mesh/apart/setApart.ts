/**
 * Strands that press into each other are moved apart. They are laid one by one, each on the net, and where many
 * come together (corners of the base, first rows, rim) faces of some would lie up to half a millimetre inside
 * others. Here such places are found, and both strands moved until none does: mostly a few tenths of a millimetre,
 * where stakes crowd up to a stake's thickness.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */
import type { Basket } from '../../model/basket.ts';
import type { BasketStrands } from '../basketStrands.ts';
import { stride } from '../crossings.ts';
import type { Strand } from '../strandMesh.ts';
import { sweepStrands } from '../sweepStrands.ts';
import { nearPairs } from './nearPairs.ts';
import type { Touch } from './overlap.ts';
import { deepest, isClear } from './overlap.ts';
import type { Pieces } from './pieces.ts';
import { boxSize, measure, piecesOf } from './pieces.ts';

/** Rows over the base that are looked at; further up strands lie as the weave says. */
const firstRows = 8;
/** Turns of finding and moving. In those from `drawnAnew` on strands are looked at closely. */
const rounds = 6;
const drawnAnew = 4;
/** Turns of moving what was found. */
const turns = 8;
// lengths in thicknesses of a stake
/** Strands that are farther than this from each other do not come to meet. */
const near = 0.2;
/** From so deep on strands are moved; and from then on with what comes as near as this to them. */
const deep = 0.02;
const beside = 0.03;
/** No place moves farther than this in one turn, and less than that is none. */
const farthest = 0.4;
const still = 0.015;

/** Moves the places of strands that share room, in place. */
export function setApart(
  { stakes, weavers, base, finish }: BasketStrands,
  { net, plan }: Basket,
): void {
  const rows = net.rows.length - 1;
  const unit = plan.base.stake.thickness;
  const lashings = finish.filter(({ isThrough }) => isThrough);
  // rows that a lashing goes through under the hoops
  const seam = rows - Math.ceil(plan.rim.hoop.width / (net.rows[rows]?.pitch || 1));
  const isCrowded = (row: number) =>
    row <= firstRows || (lashings.length > 0 && row >= seam && row <= seam + 3);
  const strands = [
    ...stakes.flatMap((stake, index) => {
      const [head, tail] = net.stakes[index]!.ends;
      const last = rows + 2 - stake.path.count;
      return partsOf(stake, (place) =>
        isCrowded(Math.max(head >= 0 ? rows + 1 - place : 0, tail >= 0 ? last + place : 0)),
      );
    }),
    ...weavers.flatMap((weaver) =>
      partsOf(weaver, (place) => isCrowded(weaver.path.strand[place]!)),
    ),
    // the rows woven flat; a board is cut to its stakes
    ...base.filter(({ between }) => between > 0),
    ...lashings.flatMap((strand) => {
      const isThin = (place: number) => (strand.thinned?.[place] ?? 1) < 1;
      return partsOf(strand, (place) => isThin(place - 1) || isThin(place) || isThin(place + 1));
    }),
  ];
  const pieces = piecesOf(strands, sweepStrands(strands));
  const pairs = nearPairs(
    pieces,
    strands.map(({ closed }) => closed),
    near * unit,
  );
  const work = {
    strands,
    unit,
    pieces,
    pairs,
    isNew: new Uint8Array(pieces.count).fill(1),
    isOnce: new Uint8Array(pieces.count),
    moved: new Float64Array(3 * strands.reduce((sum, { path }) => sum + path.count, 0)),
  };
  for (let round = 0; round < rounds; round += 1) {
    if (round === drawnAnew) lookAnew(work);
    if (!turnOf(work, round) && round >= drawnAnew) return;
  }
}

interface Work {
  readonly strands: readonly Strand[];
  /** Thickness of a stake, mm. */
  readonly unit: number;
  readonly pieces: Pieces;
  readonly pairs: readonly number[];
  /** Pieces that were moved in the last turn; and those that were in any. */
  readonly isNew: Uint8Array;
  readonly isOnce: Uint8Array;
  /** How far each place is moved, mm: x, y, z. */
  readonly moved: Float64Array;
}

/** Till now pieces went with their places: sees how they are drawn there. */
function lookAnew({ strands, pieces, isNew, isOnce }: Work): void {
  pieces.mesh = sweepStrands(strands);
  isNew.set(isOnce);
  for (let piece = 0; piece < isOnce.length; piece += 1) {
    if (isOnce[piece] === 1) measure(pieces, piece);
  }
}

/** Finds and moves once; tells whether anything was moved. */
function turnOf({ strands, unit, pieces, pairs, isNew, isOnce, moved }: Work, round: number) {
  const margin = unit * (round === 0 ? -deep : beside);
  const touches = meet(pieces, pairs, isNew, margin, round >= drawnAnew);
  moved.fill(0);
  for (let turn = 0; turn < turns; turn += 1) part(touches, moved);
  const isMoved = move(strands, moved, unit);
  if (!isMoved && round >= drawnAnew) return false;
  follow(pieces, moved, isNew, still * unit);
  for (let piece = 0; piece < isOnce.length; piece += 1) {
    if (isNew[piece] === 1) isOnce[piece] = 1;
  }
  return isMoved;
}

/** The parts of a strand that are wanted, as strands whose places are those of the whole. */
function partsOf(strand: Strand, isWanted: (place: number) => boolean): Strand[] {
  const { path, thinned } = strand;
  const { data, strand: numbers, bears, count } = path;
  const parts: Strand[] = [];
  for (let from = 0, to = 0; from < count; from = to + 1) {
    for (to = from; to < count && isWanted(to); ) to += 1;
    if (to - from === count) return [strand];
    if (to - from < 2) continue;
    const own = {
      data: data.subarray(from * stride, to * stride),
      strand: numbers.subarray(from, to),
      bears: bears.subarray(from, to),
      count: to - from,
    };
    parts.push({
      ...strand,
      path: own,
      ...(thinned && { thinned: thinned.subarray(from, to) }),
      closed: false,
    });
  }
  return parts;
}

/** The place found last, used again and again. */
const touch: Touch = { depth: 0, at: 0, on: 0, x: 0, y: 0, z: 0 };

/**
 * Where pieces of which one is new share room, or come as near as `margin` mm: each touch as its depth, the
 * direction, and four times a place and its weight.
 */
function meet(
  pieces: Pieces,
  pairs: readonly number[],
  isNew: Uint8Array,
  margin: number,
  isClose: boolean,
): number[] {
  const { boxes, from, to, strand, along, first, places } = pieces;
  const touches: number[] = [];
  for (let at = 0; at < pairs.length; at += 2) {
    const i = pairs[at]!;
    const j = pairs[at + 1]!;
    if (isNew[i] === 0 && isNew[j] === 0) continue;
    if (isClear(boxes, boxSize * i, boxSize * j, margin)) continue;
    for (let turn = 0; turn < 2; turn += 1) {
      const one = turn === 0 ? i : j;
      const other = turn === 0 ? j : i;
      if (!deepest(pieces, one, other, margin, isClose, touch)) continue;
      touches.push(touch.depth, touch.x, touch.y, touch.z);
      for (let end = 0; end < 2; end += 1) {
        const piece = end === 0 ? one : other;
        const sign = end === 0 ? 1 : -1;
        const low = along[from[piece]!]!;
        const place = low + (end === 0 ? touch.at : touch.on) * (along[to[piece]!]! - low);
        const s = strand[from[piece]!]!;
        const p = Math.floor(place);
        const w = smooth(place - p);
        touches.push(first[s]! + (p % places[s]!), sign * (1 - w));
        touches.push(first[s]! + ((p + 1) % places[s]!), sign * w);
      }
    }
  }
  return touches;
}

/** How far a section between two places goes with the second, as strands are swept. */
function smooth(share: number): number {
  return share * share * (3 - 2 * share);
}

/** Moves the places of each touch apart by what is left of its depth. */
function part(touches: readonly number[], moved: Float64Array): void {
  for (let at = 0; at < touches.length; at += 12) {
    const x = touches[at + 1]!;
    const y = touches[at + 2]!;
    const z = touches[at + 3]!;
    let depth = touches[at]!;
    let sum = 0;
    for (let end = at + 4; end < at + 12; end += 2) {
      const p = 3 * touches[end]!;
      const weight = touches[end + 1]!;
      depth -= weight * (x * moved[p]! + y * moved[p + 1]! + z * moved[p + 2]!);
      sum += weight * weight;
    }
    if (depth <= 0) continue;
    for (let end = at + 4; end < at + 12; end += 2) {
      const p = 3 * touches[end]!;
      const on = (touches[end + 1]! * depth) / sum;
      moved[p]! += on * x;
      moved[p + 1]! += on * y;
      moved[p + 2]! += on * z;
    }
  }
}

/** Moves the places of strands, none by more than a little; tells whether any was. */
function move(strands: readonly Strand[], moved: Float64Array, unit: number): boolean {
  let any = false;
  let p = 0;
  for (const { path } of strands) {
    for (let at = 0; at < path.count * stride; at += stride, p += 3) {
      const far = Math.sqrt(moved[p]! ** 2 + moved[p + 1]! ** 2 + moved[p + 2]! ** 2);
      if (far > still * unit) any = true;
      for (let axis = 0; axis < 3; axis += 1) {
        if (far > farthest * unit) moved[p + axis]! *= (farthest * unit) / far;
        path.data[at + axis]! += moved[p + axis]!;
      }
    }
  }
  return any;
}

/** Moves the sections of pieces with their places, and notes the pieces that went `least` mm or more. */
function follow(pieces: Pieces, moved: Float64Array, isNew: Uint8Array, least: number): void {
  const { mesh, count, from, to, vertex, strand, along, sides, first, places } = pieces;
  let done = -1;
  for (let piece = 0; piece < count; piece += 1) {
    isNew[piece] = 0;
    for (let end = 0; end < 2; end += 1) {
      const section = end === 0 ? from[piece]! : to[piece]!;
      const s = strand[section]!;
      const p = Math.floor(along[section]!);
      const w = smooth(along[section]! - p);
      const one = 3 * (first[s]! + (p % places[s]!));
      const other = 3 * (first[s]! + ((p + 1) % places[s]!));
      const isStill =
        moved[one] === 0 &&
        moved[one + 1] === 0 &&
        (w === 0 || (moved[other] === 0 && moved[other + 1] === 0));
      if (isStill) continue;
      let far = 0;
      for (let axis = 0; axis < 3; axis += 1) {
        const on = (1 - w) * moved[one + axis]! + w * moved[other + axis]!;
        far += on * on;
        // pieces share sections, and of a closed strand the last is the first
        if (section <= done || p === places[s]) continue;
        for (let side = 0; side < sides[s]!; side += 1) {
          mesh.positions[3 * (vertex[section]! + side) + axis]! += on;
        }
      }
      if (section > done) done = section;
      if (far > least * least) isNew[piece] = 1;
    }
    if (isNew[piece] === 1) measure(pieces, piece);
  }
}
