import { useMemo } from 'react';
import { OutlineDrawing } from '../charts/OutlineDrawing.tsx';
import { outline } from '../mesh/outline.ts';
import type { Basket } from '../model/basket.ts';

interface Props {
  readonly basket: Basket | null;
  readonly row: number | null;
}

/** Side and end view as line drawings, for a browser without WebGL. */
export function Drawings({ basket, row }: Props) {
  const outlines = useMemo(
    () => basket && { side: outline(basket, 'side'), end: outline(basket, 'end') },
    [basket],
  );
  return (
    <div className="drawings">
      <p className="soft">
        This browser has no WebGL, so the basket is drawn in outline. All else works as it should.
      </p>
      {basket && outlines && (
        <div className="drawings-pair">
          <OutlineDrawing
            title="Side view"
            outline={outlines.side}
            row={row}
            unit={basket.plan.display.unit}
          />
          <OutlineDrawing
            title="End view"
            outline={outlines.end}
            row={row}
            unit={basket.plan.display.unit}
          />
        </div>
      )}
    </div>
  );
}
