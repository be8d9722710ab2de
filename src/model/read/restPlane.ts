/** The plane that points rest on. (`!`: typed arrays in a hot loop.) */

/** A plane z = a·x + b·y + c. */
export type Plane = readonly [a: number, b: number, c: number];

/** A corner of the triangle that carries the plane. */
type Corner = readonly [x: number, y: number, z: number];

/**
 * The plane under all points that is highest at (`gx`, `gy`): the facet of their lower hull below the
 * centre of mass, so the table they come to rest on. `points` holds x, y, z of each point.
 *
 * A linear program in three unknowns, solved from outside in: a triangle round (gx, gy) carries the
 * plane; the point that lies deepest under it takes the place of one corner, so that (gx, gy) stays
 * inside, until no point lies under the plane. Where (gx, gy) is outside the points, a level plane.
 */
export function restPlane(points: Float64Array, gx: number, gy: number): Plane {
  const size = extent(points, gx, gy);
  const far = 8 * size.reach;
  const high = size.top + far;
  let corners: readonly [Corner, Corner, Corner] = [
    [gx + 2 * far, gy, high],
    [gx - far, gy + 2 * far, high],
    [gx - far, gy - 2 * far, high],
  ];
  let plane = planeOf(corners);
  for (let turn = 0; turn < 200; turn++) {
    const deepest = lowest(points, plane);
    if (deepest.depth > -1e-11 * size.reach) break;
    const at = 3 * deepest.index;
    const next = exchange(corners, [points[at]!, points[at + 1]!, points[at + 2]!], gx, gy);
    if (!next) break;
    corners = next;
    plane = planeOf(corners);
  }
  const real = corners.every(([, , z]) => z < high);
  return supporting(points, real ? plane[0] : 0, real ? plane[1] : 0);
}

/** The plane of the given slopes that touches the points from below. */
export function supporting(points: Float64Array, a: number, b: number): Plane {
  return [a, b, lowest(points, [a, b, 0]).depth];
}

function lowest(points: Float64Array, [a, b, c]: Plane) {
  let depth = Number.POSITIVE_INFINITY;
  let index = -1;
  for (let i = 0; 3 * i < points.length; i++) {
    const over = points[3 * i + 2]! - a * points[3 * i]! - b * points[3 * i + 1]! - c;
    if (over < depth) {
      depth = over;
      index = i;
    }
  }
  return { depth, index };
}

/** Puts `point` in the place of the corner that leaves (gx, gy) best inside. */
function exchange(
  [p, q, r]: readonly [Corner, Corner, Corner],
  point: Corner,
  gx: number,
  gy: number,
): readonly [Corner, Corner, Corner] | null {
  const choices = [
    [point, q, r],
    [p, point, r],
    [p, q, point],
  ] as const;
  let best: readonly [Corner, Corner, Corner] | null = null;
  let most = -1e-9;
  for (const choice of choices) {
    const inside = leastShare(choice, gx, gy);
    if (inside > most) {
      most = inside;
      best = choice;
    }
  }
  return best;
}

/** Least barycentric share of (gx, gy) in a triangle: negative outside it, NaN where it has no area. */
function leastShare([p, q, r]: readonly [Corner, Corner, Corner], gx: number, gy: number): number {
  const area = cross(p, q, r[0], r[1]);
  return Math.min(
    cross(p, q, gx, gy) / area,
    cross(q, r, gx, gy) / area,
    cross(r, p, gx, gy) / area,
  );
}

function cross(p: Corner, q: Corner, x: number, y: number): number {
  return (q[0] - p[0]) * (y - p[1]) - (q[1] - p[1]) * (x - p[0]);
}

function planeOf([p, q, r]: readonly [Corner, Corner, Corner]): Plane {
  const area = cross(p, q, r[0], r[1]);
  const a = ((q[2] - p[2]) * (r[1] - p[1]) - (r[2] - p[2]) * (q[1] - p[1])) / area;
  const b = ((r[2] - p[2]) * (q[0] - p[0]) - (q[2] - p[2]) * (r[0] - p[0])) / area;
  return [a, b, p[2] - a * p[0] - b * p[1]];
}

function extent(points: Float64Array, gx: number, gy: number) {
  let reach = 1e-9;
  let top = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < points.length; i += 3) {
    reach = Math.max(reach, Math.abs(points[i]! - gx), Math.abs(points[i + 1]! - gy));
    top = Math.max(top, points[i + 2]!);
  }
  return { reach, top };
}
