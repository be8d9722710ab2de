import { useMemo } from 'react';
import { stageWords } from '#words/stage.ts';
import { OutlineDrawing, outlineFrame } from '../charts/OutlineDrawing.tsx';
import { flatFinish } from '../mesh/flatFinish.ts';
import type { OutlineView } from '../mesh/outline.ts';
import { outline } from '../mesh/outline.ts';
import type { Basket } from '../model/basket.ts';
import type { Live } from '../scene/live.ts';
import { useLive } from '../scene/live.ts';
import type { StageShape } from '../scene/stageShape.ts';

interface Props {
  readonly basket: Basket | null;
  readonly row: number | null;
  /** True where a person asked for the drawings, false where there is nothing else to show. */
  readonly isChosen?: boolean;
}

const drawn = ['side', 'end'] as const;

interface LiveProps extends Omit<Props, 'basket'> {
  readonly shapes: Live<StageShape | null>;
}

/** The same of a basket that changes. */
export function LiveDrawings({ shapes, ...rest }: LiveProps) {
  return <Drawings {...rest} basket={useLive(shapes)?.basket ?? null} />;
}

/** Side and end view as line drawings: asked for, or for a browser without WebGL. */
function Drawings({ basket, row, isChosen = false }: Props) {
  const outlines = useMemo(
    () => basket && { side: bothOf(basket, 'side'), end: bothOf(basket, 'end') },
    [basket],
  );
  return (
    <div className="drawings">
      {!isChosen && <p className="soft">{stageWords.noWebgl}</p>}
      {basket && outlines && (
        <div className="drawings-pair">
          {drawn.map((view) => (
            <div key={view} style={{ flexGrow: outlines[view].box[2] }}>
              <OutlineDrawing
                title={stageWords.viewNames[view]}
                outline={outlines[view].outline}
                finish={outlines[view].finish}
                row={row}
                unit={basket.plan.display.unit}
              />
            </div>
          ))}
        </div>
      )}
    </div>
  );
}

function bothOf(basket: Basket, view: OutlineView) {
  const [drawn, finish] = [outline(basket, view), flatFinish(basket, view)];
  return { outline: drawn, finish, box: outlineFrame(drawn, finish).box };
}
