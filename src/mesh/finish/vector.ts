/** Points and directions in space, for the few places a finish is made of. */

export type Vector = readonly [number, number, number];

export function plus(one: Vector, other: Vector, times = 1): Vector {
  return [one[0] + times * other[0], one[1] + times * other[1], one[2] + times * other[2]];
}

export function minus(one: Vector, other: Vector): Vector {
  return plus(one, other, -1);
}

export function scaled(one: Vector, times: number): Vector {
  return [times * one[0], times * one[1], times * one[2]];
}

export function dot(one: Vector, other: Vector): number {
  return one[0] * other[0] + one[1] * other[1] + one[2] * other[2];
}

export function cross(one: Vector, other: Vector): Vector {
  return [
    one[1] * other[2] - one[2] * other[1],
    one[2] * other[0] - one[0] * other[2],
    one[0] * other[1] - one[1] * other[0],
  ];
}

export function size(one: Vector): number {
  return Math.sqrt(one[0] * one[0] + one[1] * one[1] + one[2] * one[2]);
}

/** The same direction with length 1; straight up where there is none. */
export function unit(one: Vector): Vector {
  const long = size(one);
  return long > 1e-12 ? [one[0] / long, one[1] / long, one[2] / long] : [0, 0, 1];
}

/** `share` of the way from one to the other. */
export function mix(one: Vector, other: Vector, share: number): Vector {
  return plus(one, minus(other, one), share);
}

/** Vector at place `at` of a list of numbers. */
export function vectorAt(list: Float64Array, at: number): Vector {
  return [list[at] ?? 0, list[at + 1] ?? 0, list[at + 2] ?? 0];
}
