/** Where the eye must stand so that all of the basket is in the picture. Scene units: centimetres, y up. */
import type { Basket } from '../model/basket.ts';
import { centimetres } from './toThree.ts';

export interface Extent {
  /** Middle of the basket. */
  readonly middle: readonly [number, number, number];
  /** Half its size along x, y (up) and z. */
  readonly half: readonly [number, number, number];
  /** x, y, z of each node, mm, z up. */
  readonly positions: Float64Array;
}

export interface Lens {
  /** Angle of the picture from bottom to top, radians. */
  readonly angle: number;
  /** Width over height of the picture. */
  readonly aspect: number;
  /** Share of the picture's height that nothing lies over; all of it where left out. */
  readonly free?: number;
}

/** What lies over the picture at its upper and lower edge, CSS pixels. */
export interface Inset {
  readonly top: number;
  readonly bottom: number;
}

/** Air left round the basket, as a share of the distance. */
const margin = 1.1;

/** Of strands every so many numbers' place is enough to frame it; a multiple of 3. */
const thinning = 12;

/**
 * How far the basket reaches, with strands that stand out over its nodes: finish, and stakes that still
 * stand on (x, y, z, …, mm).
 */
export function extent(
  { positions: nodes }: Pick<Basket, 'positions'>,
  strands: readonly Float32Array[] = [],
): Extent {
  const room = strands.reduce((sum, { length }) => sum + 3 * Math.ceil(length / thinning), 0);
  const positions = new Float64Array(nodes.length + room);
  positions.set(nodes);
  let end = nodes.length;
  for (const strand of strands) {
    for (let at = 0; at < strand.length; at += thinning) {
      for (let axis = 0; axis < 3; axis += 1) positions[end + axis] = strand[at + axis] ?? 0;
      end += 3;
    }
  }
  const [x, y, z] = [0, 1, 2].map((axis) => span(positions, axis)) as [Span, Span, Span];
  return {
    middle: [x.middle, z.middle, -y.middle],
    half: [x.half, z.half, y.half],
    positions,
  };
}

/** Distance of the eye from the basket's middle, looking from angles `turn` and `rise`. */
export function distance({ middle, positions }: Extent, turn: number, rise: number, lens: Lens) {
  let needed = 1;
  eachPoint(positions, middle, turn, rise, lens, (nearer, across, up) => {
    needed = Math.max(needed, nearer + Math.abs(across), nearer + Math.abs(up));
  });
  return needed * margin;
}

/** Where an eye is: `away` from what it looks at, at the angles `turn` and `rise`. */
export interface Standing {
  readonly middle: readonly [number, number, number];
  readonly away: number;
  readonly turn: number;
  readonly rise: number;
}

/** Less than this share of the whole picture, both across and upward, is too small to look at. */
export const leastShareOf = { basket: 1 / 3, part: 0.5 } as const;

/** Whether all of the basket is in the picture, and takes so much of its width or height or more. */
export function isWellFramed(
  { positions }: Extent,
  eye: Standing,
  lens: Lens,
  leastShare: number = leastShareOf.basket,
): boolean {
  const { middle, away, turn, rise } = eye;
  const seen = { left: 1, right: -1, low: 1, high: -1, isBehind: false };
  eachPoint(positions, middle, turn, rise, lens, (nearer, across, up) => {
    const depth = away - nearer;
    if (depth <= 0) seen.isBehind = true;
    seen.left = Math.min(seen.left, across / depth);
    seen.right = Math.max(seen.right, across / depth);
    seen.low = Math.min(seen.low, up / depth);
    seen.high = Math.max(seen.high, up / depth);
  });
  const fits = Math.max(-seen.left, seen.right, -seen.low, seen.high) <= 1;
  const tall = (seen.high - seen.low) * (lens.free ?? 1);
  const share = Math.max(seen.right - seen.left, tall) / 2;
  return fits && !seen.isBehind && share >= leastShare;
}

/**
 * Tells of each point how much nearer to the eye it is than the middle, and how far to the right and up,
 * both over what the picture's half shows a unit away: over its distance, 1 is the picture's edge.
 */
function eachPoint(
  positions: Float64Array,
  [mx, my, mz]: readonly [number, number, number],
  turn: number,
  rise: number,
  lens: Lens,
  tell: (nearer: number, across: number, up: number) => void,
): void {
  const out = [Math.sin(turn) * Math.cos(rise), Math.sin(rise), Math.cos(turn) * Math.cos(rise)];
  const right = [Math.cos(turn), 0, -Math.sin(turn)];
  const up = [-Math.sin(turn) * Math.sin(rise), Math.cos(rise), -Math.cos(turn) * Math.sin(rise)];
  const high = Math.tan(lens.angle / 2) * (lens.free ?? 1);
  const wide = Math.tan(lens.angle / 2) * lens.aspect;
  for (let at = 0; at + 2 < positions.length; at += 3) {
    const [x = 0, y = 0, z = 0] = positions.subarray(at, at + 3);
    const point = [centimetres * x - mx, centimetres * z - my, -centimetres * y - mz];
    tell(dot(point, out), dot(point, right) / wide, dot(point, up) / high);
  }
}

interface Span {
  readonly middle: number;
  readonly half: number;
}

/** Middle and half size along one axis of the basket, in scene units. */
function span(positions: Float64Array, axis: number): Span {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let at = axis; at < positions.length; at += 3) {
    const value = positions[at] ?? 0;
    if (value < low) low = value;
    if (value > high) high = value;
  }
  if (!(high >= low)) return { middle: 0, half: 1 };
  return {
    middle: (centimetres * (low + high)) / 2,
    half: Math.max(0.1, (centimetres * (high - low)) / 2),
  };
}

function dot(one: readonly number[], other: readonly number[]): number {
  return one.reduce((sum, value, axis) => sum + value * (other[axis] ?? 0), 0);
}
