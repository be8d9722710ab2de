import type { Basket } from '../../model/basket.ts';
import type { Strand } from '../strandMesh.ts';
import { handleFeet, handleStrands } from './handleStrands.ts';
import { rimLine } from './rimLine.ts';
import { rimSizes, rimStrands } from './rimStrands.ts';

/** Rim and handle of a basket as drawn, fitted to its settled rim. */
export function finishStrands(
  basket: Basket,
  normals: Float64Array,
  stakes: readonly Strand[],
): Strand[] {
  const line = rimLine(basket, normals);
  const feet = handleFeet(basket, line);
  // a stake beside a leg of the handle is cut: its place behind the hoop is taken
  const isFree = (end: number) =>
    !feet?.ends.some((foot) => {
      const apart = Math.abs(end - foot) % line.ends;
      return Math.min(apart, line.ends - apart) < feet.reach + 0.45;
    });
  const names = stakes.map(({ name }) => name);
  const rim = rimStrands(basket, line, isFree, names, feet?.legs ?? []);
  return feet ? [...rim, ...handleStrands(basket, line, rimSizes(basket, line), feet)] : rim;
}
