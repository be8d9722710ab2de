/** Over and under: on which face of an end each row lies. */
import type { Basket } from '../model/basket.ts';

/** How a band's weaver goes, as the plan names it. */
export type Weave = Basket['plan']['bands'][number]['weave'];

/**
 * Whether the weaver of `row` passes outside `end`.
 *
 * A continuous weaver changes sides at every end it meets, the turn of the row included: on an odd
 * count the rows alternate, on an even one it repeats its own path, and that is what is shown. A
 * twill goes over two and under two, one end further each row. All others alternate by end and row.
 */
export function weaverIsOutside(weave: Weave, row: number, end: number, ends: number): boolean {
  if (weave === 'continuous') return (row * ends + end) % 2 === 0;
  if (weave === 'twill') return (row + end) % 4 < 2;
  return (row + end) % 2 === 0;
}
