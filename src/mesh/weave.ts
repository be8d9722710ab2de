/** Over and under: on which face of an end each row lies. */
import type { Basket } from '../model/basket.ts';

/** How a band's weaver goes, as the plan names it. */
export type Weave = Basket['plan']['bands'][number]['weave'];

/**
 * Whether the weaver of `row` passes outside `end`.
 *
 * A continuous weaver and a twined pair change sides at every end they meet, a twill at every second one, the turn of the
 * row included: round k begins k · `ends` strokes on. So on an odd count the rows of a plain weave
 * alternate and those of a twill step by one end, which way depends on what the count leaves over from
 * fours (`twillStep`); on other counts they repeat their own path or show no diagonal, and that is what
 * is shown. Of two weavers that chase each other each goes on in every other row, so those and
 * closed rounds alternate by end and row.
 */
export function weaverIsOutside(weave: Weave, row: number, end: number, ends: number): boolean {
  if (weave === 'continuous' || weave === 'twined') return (row * ends + end) % 2 === 0;
  if (weave === 'twill') return (row * ends + end) % 4 < 2;
  return (row + end) % 2 === 0;
}
