import { hullFromAbove } from './hullFromAbove.ts';

/** How far a basket can be tilted before it tips over. (`!`: typed arrays in a hot loop.) */

/** Directions tried, evenly round; those straight over the edges of the feet are tried as well. */
const around = 24;
/** Tilts below this are rocking on an uneven bottom, radians. */
const rocking = 0.05;
const degrees = 180 / Math.PI;

/**
 * Least tilt, in degrees, at which the centre of mass `g` is over the point the basket turns on, so
 * that it falls on instead of back; over all directions. `points` holds x, y, z of the lower face.
 *
 * Tilted by φ towards a direction, the basket stands on the point where v·cos φ + u·sin φ is greatest
 * (u ahead of g, v below it). That height stops growing at tan φ = u/v; if another point carries by
 * then, it grows on to that point's own φ, which is always a larger one. What is wide and low may be
 * stood on its rim and not fall over: 90° at the most.
 *
 * @param contacts points that touch the table when the basket stands
 */
export function tipAngle(
  points: Float64Array,
  g: readonly [number, number, number],
  contacts: readonly number[],
): number {
  const directions = Array.from({ length: around }, (_, i) => (2 * Math.PI * i) / around);
  const hull = hullFromAbove(points, contacts);
  hull.forEach((p, i) => {
    const q = hull[(i + 1) % hull.length]!;
    const x = points[3 * q]! - points[3 * p]!;
    const y = points[3 * q + 1]! - points[3 * p + 1]!;
    if (Math.hypot(x, y) > 1e-9) directions.push(Math.atan2(-x, y));
  });
  const angles = directions.map((direction) => tipTowards(points, g, direction));
  return Math.min(90, degrees * Math.min(...angles));
}

function tipTowards(
  points: Float64Array,
  [gx, gy, gz]: readonly [number, number, number],
  direction: number,
): number {
  const dx = Math.cos(direction);
  const dy = Math.sin(direction);
  let angle = rocking;
  for (let turn = 0; turn < 50; turn++) {
    const cos = Math.cos(angle);
    const sin = Math.sin(angle);
    let most = Number.NEGATIVE_INFINITY;
    let [ahead, below] = [0, 1];
    for (let i = 0; i < points.length; i += 3) {
      const u = (points[i]! - gx) * dx + (points[i + 1]! - gy) * dy;
      const v = gz - points[i + 2]!;
      const height = v * cos + u * sin;
      if (height > most) {
        most = height;
        ahead = u;
        below = v;
      }
    }
    const next = Math.atan2(ahead, below);
    if (next <= angle + 1e-9) return Math.max(0, next);
    angle = next;
  }
  return angle;
}
