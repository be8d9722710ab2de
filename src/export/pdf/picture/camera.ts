/** The eye that draws the picture: parallel, so that lengths keep their proportion. */

export type Vector = readonly [number, number, number];

export interface Camera {
  /** Unit vectors to the right, up, and out of the picture to the eye. */
  readonly right: Vector;
  readonly up: Vector;
  readonly toEye: Vector;
}

/**
 * A camera that looks from `turn` degrees round (0 from the south, 90 from the east) and `rise`
 * degrees over the table.
 */
export function cameraFrom(turn: number, rise: number): Camera {
  const a = (turn * Math.PI) / 180;
  const b = (rise * Math.PI) / 180;
  return {
    right: [Math.cos(a), Math.sin(a), 0],
    up: [-Math.sin(a) * Math.sin(b), Math.cos(a) * Math.sin(b), Math.cos(b)],
    toEye: [Math.sin(a) * Math.cos(b), -Math.cos(a) * Math.cos(b), Math.sin(b)],
  };
}

export function dot(one: Vector, other: Vector): number {
  return one[0] * other[0] + one[1] * other[1] + one[2] * other[2];
}

/** Half-way from one point to the other. */
export function middle(one: Vector, other: Vector): Vector {
  return [(one[0] + other[0]) / 2, (one[1] + other[1]) / 2, (one[2] + other[2]) / 2];
}

/** `from` moved by `by` times `along`. */
export function moved(from: Vector, along: Vector, by: number): Vector {
  return [from[0] + by * along[0], from[1] + by * along[1], from[2] + by * along[2]];
}

/** Unit vector from one point to another; straight up where they coincide. */
export function direction(from: Vector, to: Vector): Vector {
  const [x, y, z] = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
  const size = Math.hypot(x, y, z);
  return size > 1e-9 ? [x / size, y / size, z / size] : [0, 0, 1];
}

/** Point `share` of the way along a smooth curve from `b` to `c`, with neighbours `a` and `d`. */
export function between(a: Vector, b: Vector, c: Vector, d: Vector, share: number): Vector {
  const s = share;
  const weights = [
    (-s + 2 * s * s - s * s * s) / 2,
    (2 - 5 * s * s + 3 * s * s * s) / 2,
    (s + 4 * s * s - 3 * s * s * s) / 2,
    (-s * s + s * s * s) / 2,
  ] as const;
  const axis = (at: 0 | 1 | 2) =>
    weights[0] * a[at] + weights[1] * b[at] + weights[2] * c[at] + weights[3] * d[at];
  return [axis(0), axis(1), axis(2)];
}
