/** Short pieces of strand, as the painter lays them on one another. */
import type { Vector } from './camera.ts';
import { moved } from './camera.ts';

/** A flat piece of strand seen from one side. Lengths mm, in the basket's space. */
export interface Ribbon {
  /** Its outline. */
  readonly outline: readonly Vector[];
  /** The two long edges, which are drawn as lines. */
  readonly edges: readonly (readonly Vector[])[];
  /** Which way its seen face looks. */
  readonly facing: Vector;
  /** Red, green, blue, 0 … 255. */
  readonly colour: readonly [number, number, number];
  /** Share of light that comes to it besides its facing: less where it lies deep. */
  readonly light: number;
}

/** Ribbons painted together, from the lowest up, in the order of their places' depth. */
export interface Pile {
  readonly place: Vector;
  /** Added to the depth, mm: more for what lies before its neighbours. */
  readonly before: number;
  readonly ribbons: readonly Ribbon[];
}

/** A ribbon `width` wide along `line`, spread out both ways along `across`. */
export function ribbonAlong(
  line: readonly Vector[],
  across: readonly Vector[],
  width: number,
  look: Pick<Ribbon, 'facing' | 'colour' | 'light'>,
): Ribbon {
  const side = (sign: number) =>
    line.map((point, at) => moved(point, across[at] ?? [0, 0, 1], (sign * width) / 2));
  const [one, other] = [side(1), side(-1)];
  return { outline: [...one, ...other.toReversed()], edges: [one, other], ...look };
}
