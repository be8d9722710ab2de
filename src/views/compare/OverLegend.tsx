import { compareWords } from '#words/compare.ts';
import { PlanSign } from '../../charts/compare/PlanSign.tsx';
import type { Side } from '../../keep/compareStudio.ts';

const words = compareWords.layouts.legend;

/** Which line is which where one basket is laid over the other. */
export function OverLegend({ solid }: { readonly solid: Side }) {
  return (
    <ul className="over-legend" aria-label={words.title}>
      <li>
        <PlanSign side={solid} /> {words.woven}
      </li>
      <li>
        <PlanSign side={solid === 'a' ? 'b' : 'a'} /> {words.over}
      </li>
    </ul>
  );
}
