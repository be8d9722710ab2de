import { useMemo } from 'react';
import { compareWords } from '#words/compare.ts';
import { stageWords } from '#words/stage.ts';
import { CompareOutlines } from '../../charts/compare/CompareOutlines.tsx';
import { flatFinish } from '../../mesh/flatFinish.ts';
import type { OutlineView } from '../../mesh/outline.ts';
import { outline } from '../../mesh/outline.ts';
import type { Basket } from '../../model/basket.ts';

const words = compareWords.stage;

interface Props {
  readonly a: Basket | null;
  readonly b: Basket | null;
  readonly layout: 'beside' | 'over';
}

/** Both baskets from the side and the end as line drawings, for a browser without WebGL. */
export function CompareDrawings({ a, b, layout }: Props) {
  const drawn = useMemo(
    () =>
      (['side', 'end'] as const).map((view) => ({
        view,
        a: a && outlined(a, view),
        b: b && outlined(b, view),
      })),
    [a, b],
  );
  return (
    <div className="drawings">
      <p className="soft">{words.noWebgl}</p>
      <div className="drawings-pair">
        {drawn.map(({ view, a: one, b: other }) => (
          <div key={view} style={{ flexGrow: Math.max(widthOf(one), widthOf(other)) }}>
            <CompareOutlines a={one} b={other} layout={layout} title={stageWords.viewNames[view]} />
          </div>
        ))}
      </div>
    </div>
  );
}

function outlined(basket: Basket, view: OutlineView) {
  return { outline: outline(basket, view), finish: flatFinish(basket, view) };
}

function widthOf(one: ReturnType<typeof outlined> | null): number {
  return one ? one.finish.right - one.finish.left : 1;
}
