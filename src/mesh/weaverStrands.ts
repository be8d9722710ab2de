/**
 * Weavers as strands: closed rounds, twined pairs, and a continuous weaver as one spiral that rises
 * by a row each time round. Stakes stand in the middle of the wall and the weaver passes them on
 * either side (Peirce's straight stakes), half of both thicknesses off.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */
import type { Basket } from '../model/basket.ts';
import type { Net } from '../model/net/net.ts';
import { strandColour } from '../plan/dyes.ts';
import type { Crossings } from './crossings.ts';
import { crossings, field, stride } from './crossings.ts';
import { sectionOf } from './section.ts';
import type { Strand } from './strandMesh.ts';
import { tangentAt } from './surface.ts';
import { weaverIsOutside } from './weave.ts';

/** Above so many crossings a gap is drawn with one section instead of two. */
const many = 5000;

type Band = Basket['plan']['bands'][number];

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
  return stretches(basket).flatMap((stretch) => {
    const look = (path: Crossings, closed: boolean): Strand => ({
      path,
      closed,
      between,
      section: sectionOf(stretch.band.weaver),
      thickness: stretch.band.weaver.thickness,
      colour: strandColour(stretch.band.colour),
      seed: 4000,
    });
    if (stretch.band.weave === 'continuous') {
      return [look(spiral(net, positions, normals, stretch), false)];
    }
    const strands: Strand[] = [];
    for (let row = stretch.first; row <= stretch.last; row += 1) {
      strands.push(look(round(net, positions, normals, row, stretch.band, 1), true));
      if (stretch.band.weave === 'twined') {
        strands.push(look(round(net, positions, normals, row, stretch.band, -1), true));
      }
    }
    return strands;
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

/** One closed row. `side` −1 is the second strand of a twined pair, which goes the other way. */
function round(
  net: Net,
  positions: Float64Array,
  normals: Float64Array,
  row: number,
  band: Band,
  side: 1 | -1,
): Crossings {
  const ends = net.ends.length;
  const path = crossings(ends);
  const bow = band.weave === 'twined' ? band.weaver.thickness / 2 : 0;
  for (let end = 0; end < ends; end += 1) {
    const sign = side * (weaverIsOutside(band.weave, row, end, ends) ? 1 : -1);
    place(path, end, net, positions, normals, row, end, 0);
    path.data[end * stride + field.width] = band.weaver.width;
    path.data[end * stride + field.bow] = -sign * bow;
    path.strand[end] = row;
  }
  finish(path, net, band, side, true);
  return path;
}

/**
 * One weaver for all rows of a stretch, from half a row under its first row's line to half a row
 * over its last, kept between the stretch's lower and upper edge: so it begins and ends at half its
 * width, as a tapered weaver does, and both edges stay level.
 */
function spiral(
  net: Net,
  positions: Float64Array,
  normals: Float64Array,
  { band, first, last }: Stretch,
): Crossings {
  const ends = net.ends.length;
  const count = (last - first + 1) * ends + 1;
  const path = crossings(count);
  for (let at = 0; at < count; at += 1) {
    const isLast = at === count - 1;
    const row = isLast ? last : first + Math.floor(at / ends);
    const rise = isLast ? 0.5 : (at % ends) / ends - 0.5;
    const low = Math.max(first - 0.5, row + rise - 0.5);
    const full = Math.min(last + 0.5, row + rise + 0.5);
    const high = at === 0 || isLast ? low + 0.4 * (full - low) : full;
    place(path, at, net, positions, normals, row, at % ends, (low + high) / 2 - row);
    path.data[at * stride + field.width] = band.weaver.width * (high - low);
    path.strand[at] = row;
  }
  finish(path, net, band, 1, false);
  return path;
}

/**
 * Puts place `at` of `path` in the wall's middle where `row` meets `end`, `rise` rows up the stake
 * from there, with its normal.
 */
function place(
  path: Crossings,
  at: number,
  net: Net,
  positions: Float64Array,
  normals: Float64Array,
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
  for (let axis = 0; axis < 3; axis += 1) {
    const step = positions[to + axis]! - positions[from + axis]!;
    path.data[out + axis] = positions[here + axis]! + rise * step;
    path.data[out + field.normal + axis] = normals[here + axis]!;
  }
}

/** Fills in tangents and bearings, and moves each place to its side of the stake. */
function finish(path: Crossings, net: Net, band: Band, side: 1 | -1, closed: boolean): void {
  const { data, count } = path;
  const ends = net.ends.length;
  const tangents = new Float64Array(3 * count);
  for (let at = 0; at < count; at += 1) {
    const here = at * stride;
    const around = closed ? count * stride : 0;
    const before = at > 0 ? here - stride : here + Math.max(0, around - stride);
    const after = at + 1 < count ? here + stride : here - Math.max(0, around - stride);
    tangentAt(tangents, 3 * at, data, before, here, after, data, here + field.normal);
    const end = net.ends[at % ends]!;
    const nearest = Math.min(
      before === here ? Number.POSITIVE_INFINITY : distance(data, before, here),
      after === here ? Number.POSITIVE_INFINITY : distance(data, here, after),
    );
    data[here + field.bearing] = Math.min(end.width / 2, 0.38 * nearest);
    path.bears[at] = 1;
  }
  for (let at = 0; at < count; at += 1) {
    const here = at * stride;
    const end = net.ends[at % ends]!;
    const stake = net.stakes[end.stake]?.strand.thickness ?? 0;
    const row = path.strand[at]!;
    // the last place of a spiral is end 0 of the row to come
    const turn = !closed && at === count - 1 ? row + 1 : row;
    const sign = side * (weaverIsOutside(band.weave, turn, at % ends, ends) ? 1 : -1);
    const off = (sign * (stake + band.weaver.thickness)) / 2;
    for (let axis = 0; axis < 3; axis += 1) {
      data[here + axis]! += off * data[here + field.normal + axis]!;
      data[here + field.tangent + axis] = tangents[3 * at + axis]!;
    }
  }
}

function distance(data: Float64Array, one: number, other: number): number {
  const x = data[other]! - data[one]!;
  const y = data[other + 1]! - data[one + 1]!;
  const z = data[other + 2]! - data[one + 2]!;
  return Math.sqrt(x * x + y * y + z * z);
}
