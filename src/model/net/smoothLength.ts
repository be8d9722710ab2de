/**
 * Length of the smooth closed curve through the nodes of a row, not of the polygon.
 *
 * Between two nodes the curve is taken as a cubic whose curvature runs evenly from the one node's to
 * the other's. With turn vectors a, b (difference of the unit chords at each node, scaled to this
 * segment) a chord c carries c·[1 + ½·((a² + b²)/45 + 7·a·b/180)]: the strain energy integral of a
 * beam loaded by end moments. On a circle a = b = κc and it is the usual c·(1 + (κc)²/24).
 *
 * `points` are x, y, z for each node in turn; `spacing` gives the intended segment lengths, by whose
 * ratio a node's turn is shared between a short and a long neighbour.
 */
export function smoothLength(points: ArrayLike<number>, spacing: ArrayLike<number>): number {
  const n = points.length / 3;
  const turn = new Float64Array(3 * n);
  const chord = new Float64Array(n);
  const unit = new Float64Array(3 * n);
  for (let j = 0; j < n; j++) {
    const next = ((j + 1) % n) * 3;
    const here = 3 * j;
    const x = at(points, next) - at(points, here);
    const y = at(points, next + 1) - at(points, here + 1);
    const z = at(points, next + 2) - at(points, here + 2);
    const c = Math.hypot(x, y, z) || 1e-12;
    chord[j] = c;
    unit[here] = x / c;
    unit[here + 1] = y / c;
    unit[here + 2] = z / c;
  }
  for (let j = 0; j < n; j++) {
    const before = 3 * ((j + n - 1) % n);
    for (let d = 0; d < 3; d++) turn[3 * j + d] = at(unit, 3 * j + d) - at(unit, before + d);
  }
  let length = 0;
  for (let j = 0; j < n; j++) {
    const next = (j + 1) % n;
    const ra = share(spacing, j, j);
    const rb = share(spacing, j, next);
    const a = 3 * j;
    const b = 3 * next;
    const longer = excess(
      ra * at(turn, a),
      ra * at(turn, a + 1),
      ra * at(turn, a + 2),
      rb * at(turn, b),
      rb * at(turn, b + 1),
      rb * at(turn, b + 2),
    );
    length += at(chord, j) * (1 + longer);
  }
  return length;
}

/**
 * How much longer than its chord a smooth segment is, as a share, from the turn vectors at its two nodes.
 */
export function excess(
  ax: number,
  ay: number,
  az: number,
  bx: number,
  by: number,
  bz: number,
): number {
  const squares = ax * ax + ay * ay + az * az + bx * bx + by * by + bz * bz;
  const product = ax * bx + ay * by + az * bz;
  return 0.5 * (squares / 45 + (7 / 180) * product);
}

/** Segment j's length over the mean of the two segments that meet at `node`. */
export function share(spacing: ArrayLike<number>, j: number, node: number): number {
  const n = spacing.length;
  const around = 0.5 * (at(spacing, node) + at(spacing, (node + n - 1) % n));
  return around > 0 ? at(spacing, j) / around : 1;
}

function at(values: ArrayLike<number>, index: number): number {
  return values[index] ?? 0;
}
