/**
 * The rows woven flat round the hub of a wheel or the mat of an oval base, out to its edge: one strand
 * that spirals outward over and under the stakes, of the first band's weaver.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */
import { drawnWords } from '#words/drawn.ts';
import type { Basket } from '../model/basket.ts';
import type { Net } from '../model/net/net.ts';
import { strandColour } from '../plan/dyes.ts';
import type { ArcPlace } from './arc.ts';
import { arcPlace } from './arc.ts';
import type { Crossings } from './crossings.ts';
import { crossings, field, stride } from './crossings.ts';
import { sectionOf } from './section.ts';
import type { Strand } from './strandMesh.ts';
import { tangentAt } from './surface.ts';

/** The part of an end's path that lies in the base beyond hub or mat, from the inside out. */
interface Course {
  readonly path: Crossings;
  /** Places of the path from the inside out. */
  readonly places: readonly number[];
  /** Length from the inside to each of these places, mm. */
  readonly reach: readonly number[];
  /** Length at which it comes out from under the stakes of a mat, mm. */
  readonly from: number;
}

/** The flat rows as strands: one, or none where the base has none. */
export function flatRows({ plan, net }: Basket, stakes: readonly Strand[]): Strand[] {
  if (plan.base.kind !== 'wheel' && plan.base.kind !== 'oval') return [];
  const band = plan.bands[0];
  const pitch = net.rows[1]?.pitch ?? 0;
  const courses = net.ends.map((_, end) => courseOf(net, end, stakes));
  const whole = Math.max(...courses.map((course) => course?.reach.at(-1) ?? 0));
  // the corner is left to the first row of the wall
  const rows = Math.floor(whole / pitch - 0.9);
  if (!band || !(rows > 0)) return [];
  const { weaver } = band;
  const laid: Laid[] = [];
  let turn = 0;
  for (let row = 0; row < rows; row += 1) {
    let passed = 0;
    courses.forEach((course, end) => {
      if (!course) return;
      const own = course.reach.at(-1)!;
      const along = ((row + (end + 0.5) / net.ends.length) / rows) * (whole - 0.9 * pitch);
      const at = along - (whole - own);
      if (at < course.from + 0.75 * pitch) return;
      laid.push({ course, at, side: turn % 2 === 0 ? 1 : -1 });
      turn += 1;
      passed += 1;
    });
    // an even count would lay every row as the one before
    if (passed % 2 === 0) turn += 1;
  }
  if (laid.length < 3) return [];
  return [
    {
      name: drawnWords.weaverOfFlatRows,
      path: wovenPath(laid, weaver, plan.base.stake.thickness),
      section: sectionOf(weaver),
      thickness: weaver.thickness,
      colour: strandColour('natural'),
      seed: 900,
      between: 2,
      closed: false,
    },
  ];
}

/** Where the weaver passes a stake. */
interface Laid {
  readonly course: Course;
  readonly at: number;
  readonly side: 1 | -1;
}

function wovenPath(
  laid: readonly Laid[],
  weaver: { readonly width: number; readonly thickness: number },
  stake: number,
): Crossings {
  const path = crossings(laid.length);
  const { data } = path;
  const widths = new Float64Array(laid.length);
  laid.forEach(({ course, at }, index) => {
    const here = index * stride;
    const place = placeOn(course, at);
    data.set(place.position, here + field.position);
    data.set(place.face, here + field.normal);
    data[here + field.width] = 0.97 * weaver.width;
    widths[index] = place.width;
  });
  const tangents = new Float64Array(3 * laid.length);
  laid.forEach((_, index) => {
    const here = index * stride;
    const before = index > 0 ? here - stride : here;
    const after = index + 1 < laid.length ? here + stride : here;
    tangentAt(tangents, 3 * index, data, before, here, after, data, here + field.normal);
    const nearest = Math.min(gap(data, before, here), gap(data, here, after));
    const past = Math.max(0, Math.min(0.35 * weaver.thickness, 0.2 * (nearest - widths[index]!)));
    data[here + field.bearing] = Math.min(widths[index]! / 2 + past, 0.47 * nearest);
    path.bears[index] = 1;
  });
  laid.forEach(({ side }, index) => {
    const here = index * stride;
    const off = (side * (stake + weaver.thickness)) / 2;
    for (let axis = 0; axis < 3; axis += 1) {
      data[here + axis]! += off * data[here + field.normal + axis]!;
      data[here + field.tangent + axis] = tangents[3 * index + axis]!;
    }
  });
  return path;
}

/** The course of an end through the base, as its stake is drawn; null where it has none. */
function courseOf(net: Net, end: number, stakes: readonly Strand[]): Course | null {
  const index = net.ends[end]!.stake;
  const { nodes, edge, ends } = net.stakes[index]!;
  const path = stakes[index]?.path;
  const side = ends[1] === end ? 1 : 0;
  const head = ends[0] >= 0 ? 1 : 0;
  // every node of these stakes is drawn, and one place more at each tip
  if (!path || path.count !== nodes.length + head + (ends[1] >= 0 ? 1 : 0)) return null;
  const inward = side === 1 ? -1 : 1;
  const places: number[] = [];
  for (let at = edge[side]; at >= 0 && at < nodes.length; at += inward) {
    if (net.ring[nodes[at]!] === 0 && net.flatRows.length > 0) break;
    places.unshift(at + head);
    if (path.bears[at + head] === 1) break;
  }
  if (places.length < 2) return null;
  const reach = [0];
  for (let at = 1; at < places.length; at += 1) {
    const [a, b] = [places[at - 1]! * stride, places[at]! * stride];
    reach.push(reach[at - 1]! + gap(path.data, a, b));
  }
  const first = places[0]!;
  const from = path.bears[first] === 1 ? path.data[first * stride + field.bearing]! : 0;
  return { path, places, reach, from };
}

/** The stake `at` mm along its course. */
function placeOn({ path, places, reach, from }: Course, at: number): ArcPlace {
  let step = 0;
  while (step + 2 < reach.length && reach[step + 1]! < at) step += 1;
  const start = step === 0 ? from : reach[step]!;
  const share = (at - start) / (reach[step + 1]! - start);
  return arcPlace(path, places[step]!, places[step + 1]!, Math.min(1, Math.max(0, share)));
}

function gap(data: Float64Array, one: number, other: number): number {
  if (one === other) return Number.POSITIVE_INFINITY;
  return Math.hypot(
    data[other]! - data[one]!,
    data[other + 1]! - data[one + 1]!,
    data[other + 2]! - data[one + 2]!,
  );
}
