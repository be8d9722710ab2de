/**
 * Weavers as strands: closed rounds, and weavers that go on as a spiral, rising by a row each time round, or
 * by two where two chase each other; a twined pair goes on side by side. Stakes stand in the middle of the
 * wall and the weaver passes them on either side (Peirce's straight stakes), half of both thicknesses off.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */
import { drawnWords } from '#words/drawn.ts';
import type { Basket } from '../model/basket.ts';
import type { Net } from '../model/net/net.ts';
import { strandColour } from '../plan/dyes.ts';
import { weaveFacts } from '../plan/weaveFacts.ts';
import type { Crossings } from './crossings.ts';
import { crossings, field, stride } from './crossings.ts';
import type { FirstRows } from './firstRows.ts';
import { firstRows } from './firstRows.ts';
import { stakeRoom } from './room.ts';
import { sectionOf } from './section.ts';
import { stakeFaces, standOff } from './standOff.ts';
import { straighten } from './straighten.ts';
import type { Strand } from './strandMesh.ts';
import { tangentAt } from './surface.ts';
import { weaverIsOutside } from './weave.ts';

/** Above so many crossings a gap is drawn with one section instead of two. */
const many = 5000;

type Band = Basket['plan']['bands'][number];

/** What every weaver is laid on. */
interface Ground {
  readonly net: Net;
  readonly positions: Float64Array;
  readonly normals: Float64Array;
  /** Widest that a stake is drawn at each node, mm. */
  readonly room: Float64Array;
  readonly faces: Float64Array;
  readonly lift: FirstRows;
}

/** Rows `first` … `last` of one band. */
interface Stretch {
  readonly band: Band;
  readonly first: number;
  readonly last: number;
}

/** Every weaver of the basket, from the base up. */
export function weaverStrands(basket: Basket, normals: Float64Array): Strand[] {
  const { net, positions } = basket;
  if (net.ends.length < 3) return [];
  const between = net.ends.length * (net.rows.length - 1) > many ? 1 : 2;
  const ground = {
    net,
    positions,
    normals,
    room: stakeRoom(basket),
    faces: stakeFaces({ net, positions, normals }),
    lift: firstRows(basket),
  };
  return stretches(basket).flatMap((stretch) => {
    const look = (name: string, path: Crossings, closed: boolean): Strand => ({
      name,
      path,
      closed,
      between,
      section: sectionOf(stretch.band.weaver),
      thickness: stretch.band.weaver.thickness,
      colour: strandColour(stretch.band.colour),
      seed: 4000,
    });
    const { first, last, band } = stretch;
    const { climb, weavers, strandsInRow } = weaveFacts[band.weave];
    if (climb === 0) {
      return Array.from({ length: last - first + 1 }, (_, at) =>
        look(
          drawnWords.weaverOfRows(first + at, first + at),
          round(ground, first + at, band),
          true,
        ),
      );
    }
    return Array.from({ length: weavers * strandsInRow }, (_, at) => {
      const way =
        at < weavers ? { behind: at, side: 1 as const } : { behind: 0, side: -1 as const };
      const name = at === 0 ? drawnWords.weaverOfRows : drawnWords.secondWeaverOfRows;
      return look(name(first, last), spiral(ground, stretch, way), false);
    });
  });
}

/** The rows of each band in turn. */
function stretches({ net, plan }: Basket): Stretch[] {
  const found: Stretch[] = [];
  for (let row = 1; row < net.rows.length; row += 1) {
    const index = net.rows[row]!.band;
    const band = plan.bands[index];
    const before = found.at(-1);
    if (band === undefined) continue;
    if (before?.band === band && before.last === row - 1) {
      found[found.length - 1] = { ...before, last: row };
    } else {
      found.push({ band, first: row, last: row });
    }
  }
  return found;
}

/** One closed row. */
function round(ground: Ground, row: number, band: Band): Crossings {
  const ends = ground.net.ends.length;
  const { rise, share } = ground.lift(row);
  const path = crossings(ends);
  for (let end = 0; end < ends; end += 1) {
    place(path, end, ground, row, end, rise);
    path.data[end * stride + field.width] = share * band.weaver.width;
    path.strand[end] = row;
  }
  const strokes = Array.from({ length: ends }, (_, end) => ({ end, row }));
  finish(path, ground, band, strokes, 1, true);
  return path;
}

/** One of the weavers of a spiral: how many rows it begins behind the first, and its side of a twined pair. */
interface Way {
  readonly behind: number;
  readonly side: 1 | -1;
}

/** A weaver meeting an end: in which row it would be there if rows did not climb. */
interface Stroke {
  readonly end: number;
  readonly row: number;
}

/**
 * A weaver that goes on through all rows of a stretch, from half a row under its first row's line to half
 * a row over its last, kept between the stretch's lower and upper edge: so it begins and ends at half its
 * width, as a tapered weaver does, and both edges stay level. Of two that chase each other the second
 * begins half a turn from the first.
 */
function spiral(ground: Ground, { band, first, last }: Stretch, { behind, side }: Way): Crossings {
  const ends = ground.net.ends.length;
  const { climb, strandsInRow } = weaveFacts[band.weave];
  /** Height of the weaver's middle `stroke` ends on from end 0, in rows. */
  const heightAt = (stroke: number) => first + behind + (climb * stroke) / ends - climb / 2;
  const strokeAt = (height: number) => ((height - first - behind + climb / 2) * ends) / climb;
  const start = Math.ceil(strokeAt(first - 0.5) - 1e-9);
  const count = Math.floor(strokeAt(last + 0.5) + 1e-9) - start + 1;
  const path = crossings(count);
  const strokes: Stroke[] = [];
  for (let at = 0; at < count; at += 1) {
    const isTip = at === 0 || at === count - 1;
    const turn = Math.floor((start + at) / ends);
    const end = start + at - turn * ends;
    const height = heightAt(start + at);
    const low = Math.max(first - 0.5, height - 0.5);
    const full = Math.min(last + 0.5, height + 0.5);
    const high = isTip ? low + 0.4 * (full - low) : full;
    const middle = (low + high) / 2;
    const row = Math.min(last, Math.max(first, Math.round(height + 1e-9)));
    const { rise: up, share } = ground.lift(middle);
    place(path, at, ground, row, end, middle - row + up);
    path.data[at * stride + field.width] = share * band.weaver.width * (high - low);
    path.strand[at] = row;
    strokes.push({ end, row: first + behind + climb * turn });
    if (strandsInRow === 2) {
      // between two ends the strands of a pair cross, one over the other
      const sign = side * (isOutside(band, strokes[at]!, ends) ? 1 : -1);
      path.data[at * stride + field.bow] =
        -sign * share * (high - low) * pairBow * band.weaver.thickness;
    }
  }
  finish(path, ground, band, strokes, side, false);
  return path;
}

/** How far a strand of a twined pair bows up or down where the two cross, in thicknesses. */
const pairBow = 0.5;

function isOutside({ weave }: Band, { row, end }: Stroke, ends: number): boolean {
  return weaverIsOutside(weave, row, end, ends);
}

/**
 * Puts place `at` of `path` in the wall's middle where `row` meets `end`, `rise` rows up the stake
 * from there, with its normal.
 */
function place(
  path: Crossings,
  at: number,
  { net, positions, normals }: Ground,
  row: number,
  end: number,
  rise: number,
): void {
  const { nodes } = net.ends[end]!;
  const here = 3 * nodes[row]!;
  const above = 3 * (nodes[row + 1] ?? -1);
  const under = 3 * (nodes[row - 1] ?? -1);
  // under row 1 lies the base edge, less than a row away; over the last row there is nothing
  const upward = above >= 0 && (rise > 0 || row === 1);
  const from = upward || under < 0 ? here : under;
  const to = upward ? above : here;
  const out = at * stride;
  // what lies a part of a row away faces a part of the way to that row's normal
  const isUp = from === here;
  let other = here;
  if (isUp && rise >= 0) other = to;
  if (!isUp && rise < 0) other = from;
  const share = Math.min(1, Math.abs(rise));
  let [size, long, along] = [0, 0, 0];
  for (let axis = 0; axis < 3; axis += 1) {
    const step = positions[to + axis]! - positions[from + axis]!;
    path.data[out + axis] = positions[here + axis]! + rise * step;
    const normal = (1 - share) * normals[here + axis]! + share * normals[other + axis]!;
    path.data[out + field.normal + axis] = normal;
    long += step * step;
    along += normal * step;
  }
  // square to the stake: rows on either face of it are as far from each other as up its middle
  along /= long || 1;
  for (let axis = 0; axis < 3; axis += 1) {
    const step = positions[to + axis]! - positions[from + axis]!;
    path.data[out + field.normal + axis]! -= along * step;
    size += path.data[out + field.normal + axis]! ** 2;
  }
  size = Math.sqrt(size) || 1;
  for (let axis = field.normal; axis < field.normal + 3; axis += 1) path.data[out + axis]! /= size;
}

/** Fills in tangents and bearings, and moves each place to its side of the stake. */
function finish(
  path: Crossings,
  ground: Ground,
  band: Band,
  strokes: readonly Stroke[],
  side: 1 | -1,
  closed: boolean,
): void {
  const { data, count } = path;
  const { net, room } = ground;
  const { thickness } = band.weaver;
  const ends = net.ends.length;
  const tangents = new Float64Array(3 * count);
  for (let at = 0; at < count; at += 1) {
    const here = at * stride;
    const around = closed ? count * stride : 0;
    const before = at > 0 ? here - stride : here + Math.max(0, around - stride);
    const after = at + 1 < count ? here + stride : here - Math.max(0, around - stride);
    tangentAt(tangents, 3 * at, data, before, here, after, data, here + field.normal);
    const end = net.ends[strokes[at]!.end]!;
    const nearest = Math.min(
      before === here ? Number.POSITIVE_INFINITY : distance(data, before, here),
      after === here ? Number.POSITIVE_INFINITY : distance(data, here, after),
    );
    const width = Math.min(end.width, room[end.nodes[path.strand[at]!]!]!);
    // it lies on a little past the stake's edge, so that it bends clear of it
    const past = Math.max(0, Math.min(0.35 * thickness, 0.2 * (nearest - width)));
    data[here + field.bearing] = Math.min(width / 2 + past, 0.47 * nearest);
    path.bears[at] = 1;
  }
  const offs = new Float64Array(count);
  for (let at = 0; at < count; at += 1) {
    const here = at * stride;
    const stroke = strokes[at]!;
    const stake = net.stakes[net.ends[stroke.end]!.stake]?.strand.thickness ?? 0;
    const row = path.strand[at]!;
    const sign = side * (isOutside(band, stroke, ends) ? 1 : -1);
    const clear = standOff(
      ground,
      ground.faces,
      row,
      stroke.end,
      tangents,
      3 * at,
      sign,
      data,
      here,
    );
    offs[at] = sign * ((stake + thickness) / 2 + clear);
    for (let axis = 0; axis < 3; axis += 1) {
      data[here + axis]! += offs[at]! * data[here + field.normal + axis]!;
      data[here + field.tangent + axis] = tangents[3 * at + axis]!;
    }
  }
  for (let at = 0; at < (closed ? count : count - 1); at += 1)
    straighten(data, offs, at, (at + 1) % count);
}

function distance(data: Float64Array, one: number, other: number): number {
  const x = data[other]! - data[one]!;
  const y = data[other + 1]! - data[one + 1]!;
  const z = data[other + 2]! - data[one + 2]!;
  return Math.sqrt(x * x + y * y + z * z);
}
