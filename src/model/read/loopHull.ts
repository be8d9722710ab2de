/** Length of a string pulled round a closed loop. (`!`: typed arrays in a hot loop.) */

/**
 * Perimeter of the convex hull over the perimeter of the loop itself: 1 for a convex loop, less for
 * one with hollows. `points` holds x, y of each point of a simple polygon, either way round.
 *
 * The hull is Melkman's (1987): one pass with a queue open at both ends, linear in the points.
 */
export function hullShare(points: Float64Array): number {
  const count = points.length / 2;
  let loop = 0;
  for (let i = 0; i < count; i++) loop += distance(points, i, (i + 1) % count);
  if (isConvex(points, count)) return 1;
  const hull = melkman(points, count);
  let perimeter = 0;
  for (let i = 0; i + 1 < hull.length; i++) perimeter += distance(points, hull[i]!, hull[i + 1]!);
  return loop > 0 ? perimeter / loop : 1;
}

/** True when the loop turns one way throughout. */
function isConvex(points: Float64Array, count: number): boolean {
  let sign = 0;
  for (let i = 0; i < count; i++) {
    const turn = cross(points, i, (i + 1) % count, (i + 2) % count);
    if (turn * sign < 0) return false;
    if (turn !== 0) sign = Math.sign(turn);
  }
  return true;
}

/** Hull of a simple polygon as point numbers, the first one again at the end. */
function melkman(points: Float64Array, count: number): Int32Array {
  const queue = new Int32Array(2 * count + 2);
  let third = 2;
  while (third < count && cross(points, 0, third - 1, third) === 0) third++;
  if (third >= count) return Int32Array.of(0, count - 1, 0);
  let bottom = count - 1;
  let top = bottom + 3;
  const left = cross(points, 0, third - 1, third) > 0;
  queue[bottom] = third;
  queue[bottom + 1] = left ? 0 : third - 1;
  queue[bottom + 2] = left ? third - 1 : 0;
  queue[top] = third;
  for (let i = third + 1; i < count; i++) {
    const under = cross(points, queue[bottom]!, queue[bottom + 1]!, i);
    const over = cross(points, queue[top - 1]!, queue[top]!, i);
    if (under > 0 && over > 0) continue;
    while (bottom + 1 < top && cross(points, queue[bottom]!, queue[bottom + 1]!, i) <= 0) bottom++;
    queue[--bottom] = i;
    while (top - 1 > bottom && cross(points, queue[top - 1]!, queue[top]!, i) <= 0) top--;
    queue[++top] = i;
  }
  return queue.subarray(bottom, top + 1);
}

/** Twice the area of the triangle of points i, j, k: positive where it turns left. */
function cross(points: Float64Array, i: number, j: number, k: number): number {
  const x = points[2 * i]!;
  const y = points[2 * i + 1]!;
  return (
    (points[2 * j]! - x) * (points[2 * k + 1]! - y) -
    (points[2 * j + 1]! - y) * (points[2 * k]! - x)
  );
}

function distance(points: Float64Array, i: number, j: number): number {
  const x = points[2 * j]! - points[2 * i]!;
  const y = points[2 * j + 1]! - points[2 * i + 1]!;
  return Math.sqrt(x * x + y * y);
}
