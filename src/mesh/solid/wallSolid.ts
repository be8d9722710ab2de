/**
 * Base and wall as one closed solid of their true thickness, as for a mould.
 * Hot loops over typed arrays: `!` says that an index is inside.
 */
import type { Basket } from '../../model/basket.ts';
import type { Skin } from './netSkin.ts';
import { netSkin } from './netSkin.ts';
import { outwardSteps } from './outwardSteps.ts';
import { smoothSkin } from './smoothSkin.ts';
import { untangled } from './untangled.ts';

/** A closed surface. Lengths mm, z up. */
export interface Solid {
  /** x, y, z of each point. */
  readonly points: Float64Array;
  /** Three points a triangle, counter-clockwise seen from outside the solid. */
  readonly triangles: Int32Array;
}

/** Nets of more nodes are drawn with half as many pieces an edge. */
const many = 4000;

/** The smooth middle surface of base and wall, up to the top of the wall. */
export function wallSkin(basket: Basket): Skin {
  return smoothSkin(netSkin(basket), basket.net.nodeCount > many ? 2 : 4);
}

/** The wall's outer and inner face, as far apart as the strands are thick, and its top; on z = 0. */
export function wallSolid(basket: Basket): Solid {
  const { points, triangles } = thickened(wallSkin(basket));
  let low = Number.POSITIVE_INFINITY;
  for (let at = 2; at < points.length; at += 3) low = Math.min(low, points[at]!);
  return { points: points.map((value, at) => (at % 3 === 2 ? value - low : value)), triangles };
}

/** A skin moved to both sides by its half thickness, and closed along its rim. */
function thickened(skin: Skin): Solid {
  const { points: middle, half, triangles, rim } = skin;
  const count = half.length;
  const step = outwardSteps(skin);
  const face = (side: 1 | -1) => {
    const moved = middle.map((value, at) => value + side * half[Math.floor(at / 3)]! * step[at]!);
    return untangled(moved, skin);
  };
  const points = new Float64Array(6 * count);
  points.set(face(1));
  points.set(face(-1), 3 * count);
  const all = new Int32Array(2 * triangles.length + 6 * rim.length);
  all.set(triangles);
  for (let at = 0; at < triangles.length; at += 3) {
    all[triangles.length + at] = count + triangles[at]!;
    all[triangles.length + at + 1] = count + triangles[at + 2]!;
    all[triangles.length + at + 2] = count + triangles[at + 1]!;
  }
  rim.forEach((a, index) => {
    const b = rim[(index + 1) % rim.length]!;
    all.set([a, b, count + b, a, count + b, count + a], 2 * triangles.length + 6 * index);
  });
  return { points, triangles: all };
}
