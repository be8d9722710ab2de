/** What the basket holds. (`!`: typed arrays in a hot loop.) */
import type { Plan } from '../../plan/schema.ts';
import type { StakeReading } from '../basket.ts';
import type { Net } from '../net/net.ts';
import type { RowCurve } from './smoothRow.ts';
import { surfaceTriangles } from './surface.ts';
import { volumeBelow } from './volume.ts';
import { halfBase, halfWall } from './wallThickness.ts';

/**
 * Volume inside the inner faces of base and wall, up to the lowest point of the rim, mm³.
 *
 * The net is moved inward by half of what lies there, its wall is carried on to the top, and the
 * volume under the level of the lowest top is taken; then what the rows' curves enclose beyond the
 * chords between the nodes is added, row by row (0.7 % of a round basket of 30 ends).
 */
export function capacity(
  plan: Plan,
  net: Net,
  positions: Float64Array,
  stakes: readonly StakeReading[],
  curves: readonly RowCurve[],
): number {
  const { points, triangles, level } = innerSurface(plan, net, positions, stakes);
  return Math.max(
    0,
    volumeBelow(points, triangles, level) + rounding(net, positions, points, curves, level),
  );
}

/** The inner faces of base and wall, open above: what is filled. */
export interface InnerSurface {
  /** x, y, z of the net's nodes moved inward, and of the top of each end after them. */
  readonly points: Float64Array;
  readonly triangles: Int32Array;
  /** Height of the lowest top: fuller it would run over. */
  readonly level: number;
}

/** The inner faces of a standing basket, by the chords between its nodes. */
export function innerSurface(
  plan: Plan,
  net: Net,
  positions: Float64Array,
  stakes: readonly StakeReading[],
): InnerSurface {
  const inner = new Float64Array(3 * (net.nodeCount + net.ends.length));
  inner.set(inward(plan, net, positions));
  let level = Number.POSITIVE_INFINITY;
  stakes.forEach(({ path }, e) => {
    const [x, y, z] = path.at(-1)!;
    level = Math.min(level, z);
    const last = 3 * net.ends[e]!.nodes.at(-1)!;
    const top = 3 * (net.nodeCount + e);
    inner[top] = x + inner[last]! - positions[last]!;
    inner[top + 1] = y + inner[last + 1]! - positions[last + 1]!;
    // The top is cut off level, whichever way the wall leans.
    inner[top + 2] = z;
  });
  return { points: inner, triangles: withTop(net), level };
}

/** The net's triangles and those of one more ring, numbered on after the nodes. */
function withTop(net: Net): Int32Array {
  const own = surfaceTriangles(net);
  const nodes = net.rows.at(-1)!.nodes;
  const n = nodes.length;
  const all = new Int32Array(own.length + 6 * n);
  all.set(own);
  for (let j = 0; j < n; j++) {
    const [a, b] = [nodes[j]!, nodes[(j + 1) % n]!];
    const [c, d] = [net.nodeCount + ((j + 1) % n), net.nodeCount + j];
    all.set([a, b, c, a, c, d], own.length + 6 * j);
  }
  return all;
}

/** Every node moved inward by half of base or wall; farther at a fold, so that its faces move so far. */
function inward(plan: Plan, net: Net, x: Float64Array): Float64Array {
  const normal = new Float64Array(3 * net.nodeCount);
  const area = new Float64Array(net.nodeCount);
  const triangles = surfaceTriangles(net);
  for (let i = 0; i < triangles.length; i += 3) {
    const [a, b, c] = [3 * triangles[i]!, 3 * triangles[i + 1]!, 3 * triangles[i + 2]!];
    const [ux, uy, uz] = [x[b]! - x[a]!, x[b + 1]! - x[a + 1]!, x[b + 2]! - x[a + 2]!];
    const [vx, vy, vz] = [x[c]! - x[a]!, x[c + 1]! - x[a + 1]!, x[c + 2]! - x[a + 2]!];
    const nx = uy * vz - uz * vy;
    const ny = uz * vx - ux * vz;
    const nz = ux * vy - uy * vx;
    const size = Math.sqrt(nx * nx + ny * ny + nz * nz);
    for (const node of [a, b, c]) {
      normal[node] = normal[node]! + nx;
      normal[node + 1] = normal[node + 1]! + ny;
      normal[node + 2] = normal[node + 2]! + nz;
      area[node / 3] = area[node / 3]! + size;
    }
  }
  const half = new Float64Array(net.nodeCount).fill(halfBase(plan));
  net.rows.forEach(({ nodes }, row) => {
    if (row > 0) for (const node of nodes) half[node] = halfWall(plan, row);
  });
  const moved = Float64Array.from(x);
  for (let node = 0; node < net.nodeCount; node++) {
    const at = 3 * node;
    const square = normal[at]! ** 2 + normal[at + 1]! ** 2 + normal[at + 2]! ** 2;
    // area ÷ |Σ normals| is one over the mean cosine between the node's normal and its faces'.
    const step = half[node]! * Math.min(2 / Math.sqrt(square), area[node]! / square);
    for (let d = at; d < at + 3; d++) moved[d] = moved[d]! - step * normal[d]!;
  }
  return moved;
}

/**
 * Volume between the rows' curves and their chords, up to `level`: measured in the middle of the wall, and
 * brought in to its inner face in proportion to what the chords enclose there.
 */
function rounding(
  net: Net,
  positions: Float64Array,
  inner: Float64Array,
  curves: readonly RowCurve[],
  level: number,
): number {
  let volume = 0;
  let below = -1;
  let heightBelow = meanHeight(net.rows[0]!.nodes, positions);
  for (const [index, { points }] of curves.entries()) {
    const row = net.rows[index + 1]!;
    const middle = areaInside(nodesOf(row.nodes, positions));
    const share = areaInside(nodesOf(row.nodes, inner)) / middle;
    const beyond = share * (areaInside(points) - middle);
    const height = Math.min(level, meanHeight(row.nodes, positions));
    volume += (height - heightBelow) * (below < 0 ? beyond : (below + beyond) / 2);
    below = beyond;
    heightBelow = height;
  }
  return volume + below * Math.max(0, level - heightBelow);
}

/** Area of a loop of x, y, z as seen from above. */
function areaInside(points: Float64Array): number {
  let twice = 0;
  for (let a = 0; a < points.length; a += 3) {
    const b = a + 3 < points.length ? a + 3 : 0;
    twice += points[a]! * points[b + 1]! - points[a + 1]! * points[b]!;
  }
  return twice / 2;
}

function nodesOf(nodes: Int32Array, positions: Float64Array): Float64Array {
  const points = new Float64Array(3 * nodes.length);
  for (let j = 0; j < nodes.length; j++) {
    for (let d = 0; d < 3; d++) points[3 * j + d] = positions[3 * nodes[j]! + d]!;
  }
  return points;
}

function meanHeight(nodes: Int32Array, positions: Float64Array): number {
  let sum = 0;
  for (const node of nodes) sum += positions[3 * node + 2]!;
  return sum / nodes.length;
}
