/** The rim cut across: what a lashing is pulled tight over. */

import { fillerThickness } from '../../model/quantity/rimParts.ts';
import type { Plan } from '../../plan/schema.ts';
import { sectionOf } from '../section.ts';
import type { RimSizes } from './rimStrands.ts';

/** A place in the rim's section, mm: outward from the middle of the wall, upward from its top. */
type Flat = readonly [out: number, up: number];

/** A place of a strand wound round the rim, and which way its face looks there. */
export interface ProfilePlace {
  readonly at: Flat;
  readonly face: Flat;
}

/** Which hoops have their lap at the place of a section. */
export interface Lapped {
  readonly outside: boolean;
  readonly inside: boolean;
}

/** Corners of a whole section, in widths and thicknesses. */
const whole = [0.5, 0.5, -0.5, 0.5, -0.5, -0.5, 0.5, -0.5] as const;

/** Sharp corners are rounded off so far out at most, in the strand's distances. */
const mitre = 1.5;

/**
 * The line at `off` mm round hoops and filler, from the foot of the inside hoop over the top to the
 * foot of the outside one: the rim's convex outline, which is where a strand pulled tight lies.
 */
export function rimProfile(
  plan: Plan,
  sizes: RimSizes,
  off: number,
  lapped: Lapped,
): ProfilePlace[] {
  const outline = convex(corners(plan, sizes, lapped));
  const count = outline.length;
  const normals = outline.map((from, at) => {
    const to = outline[(at + 1) % count] ?? from;
    const [x, y] = [to[0] - from[0], to[1] - from[1]];
    const long = Math.hypot(x, y) || 1;
    return [y / long, -x / long] as const;
  });
  const places = outline.map((corner, at): ProfilePlace => {
    const [one, other] = [normals[(at + count - 1) % count], normals[at]];
    const [x, y] = [(one?.[0] ?? 0) + (other?.[0] ?? 0), (one?.[1] ?? 0) + (other?.[1] ?? 0)];
    const long = Math.hypot(x, y) || 1;
    const face: Flat = [x / long, y / long];
    const far = off * Math.min(mitre, 2 / long);
    return { at: [corner[0] + far * face[0], corner[1] + far * face[1]], face };
  });
  // counter-clockwise from the lowest on the outside: the other way round it begins on the inside
  const foot = lowest(places, 1);
  const turned = [...places.slice(foot), ...places.slice(0, foot)].toReversed();
  return turned.slice(lowest(turned, -1));
}

/** Corners of both hoops and of the filler. Where a hoop laps, its ends are flat and fill its whole section. */
function corners({ rim: { hoop, filler }, base }: Plan, sizes: RimSizes, lapped: Lapped): Flat[] {
  const middle = (sizes.hoopTop + sizes.hoopBottom) / 2;
  const found: Flat[] = [];
  for (const side of [1, -1] as const) {
    const isLapped = side === 1 ? lapped.outside : lapped.inside;
    const points = isLapped ? whole : sectionOf(hoop).points;
    const face = side === 1 ? sizes.outside : sizes.inside;
    for (let at = 0; at < points.length; at += 2) {
      const through = (points[at + 1] ?? 0) * hoop.thickness;
      const up = middle + (points[at] ?? 0) * hoop.width;
      found.push([side * (face - hoop.thickness / 2 + through), up]);
    }
  }
  if (!filler) return found;
  const radius = fillerThickness / 2;
  const folded = base.stake.thickness;
  const sides = 8;
  for (let at = 0; at < sides; at += 1) {
    const angle = (2 * Math.PI * at) / sides;
    const up = sizes.top - radius + radius * Math.sin(angle);
    found.push([-folded / 2 + radius * Math.cos(angle), up]);
  }
  return found;
}

/** The convex outline of points, counter-clockwise (Andrew's monotone chain). */
function convex(points: readonly Flat[]): Flat[] {
  const sorted = points.toSorted((one, other) => one[0] - other[0] || one[1] - other[1]);
  const chain = (list: readonly Flat[]) => {
    const kept: Flat[] = [];
    for (const point of list) {
      while (kept.length > 1 && !turnsLeft(kept.at(-2) ?? point, kept.at(-1) ?? point, point)) {
        kept.pop();
      }
      kept.push(point);
    }
    return kept.slice(0, -1);
  };
  return [...chain(sorted), ...chain(sorted.toReversed())];
}

function turnsLeft(a: Flat, b: Flat, c: Flat): boolean {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]) > 1e-6;
}

/** Place of the lowest on the side of the wall that `sign` gives. */
function lowest(places: readonly ProfilePlace[], sign: 1 | -1): number {
  let best = 0;
  places.forEach(({ at }, index) => {
    const own = places[best]?.at ?? at;
    const isBetter = sign * own[0] < 0 || at[1] < own[1] - 1e-9;
    if (sign * at[0] > 0 && isBetter) best = index;
  });
  return best;
}
