/** Hot loops over typed arrays: `!` says that an index is inside. */

/** Pieces each gap between two nodes is drawn in. */
const pieces = 3;

/**
 * A smooth closed line through `nodes`, seen along a level axis: x, y, x, y, … with the coordinate
 * `axis` to the right and z up. Cubic arcs whose direction at a node is that of the circle through
 * it and its neighbours.
 *
 * @param positions x, y, z of each node
 */
export function flatLoop(positions: Float64Array, nodes: Int32Array, axis: 0 | 1): number[] {
  const count = nodes.length;
  const gaps = Array.from(nodes, (node, index) =>
    distance(positions, 3 * node, 3 * nodes[(index + 1) % count]!),
  );
  const line: number[] = [];
  for (let index = 0; index < count; index += 1) {
    const [before, here, after, later] = [index - 1, index, index + 1, index + 2].map(
      (at) => 3 * nodes[(at + count) % count]!,
    ) as [number, number, number, number];
    const own = gaps[index]!;
    const last = gaps[(index + count - 1) % count]!;
    const next = gaps[(index + 1) % count]!;
    for (let piece = 0; piece < pieces; piece += 1) {
      const t = piece / pieces;
      const s = 1 - t;
      for (const part of [axis, 2]) {
        const [a, b] = [positions[here + part]!, positions[after + part]!];
        const from = own * slope(a - positions[before + part]!, last, b - a, own);
        const to = own * slope(b - a, own, positions[later + part]! - b, next);
        line.push(a * s * s * (1 + 2 * t) + b * t * t * (1 + 2 * s) + s * t * (from * s - to * t));
      }
    }
  }
  line.push(...line.slice(0, 2));
  return line;
}

/** Change per length between two steps, the shorter counting more; 0 where one has no length. */
function slope(first: number, firstLength: number, second: number, secondLength: number): number {
  if (!(firstLength > 0 && secondLength > 0)) return 0;
  const [a, b] = [1 / firstLength, 1 / secondLength];
  return (first * a * a + second * b * b) / (a + b);
}

function distance(positions: Float64Array, one: number, other: number): number {
  return Math.hypot(
    positions[other]! - positions[one]!,
    positions[other + 1]! - positions[one + 1]!,
    positions[other + 2]! - positions[one + 2]!,
  );
}
