import { lazy, Suspense } from 'react';
import { useStudio } from '../keep/useStudio.ts';
import type { Basket } from '../model/basket.ts';
import { formatLength } from '../plan/units.ts';
import { hasWebgl } from '../scene/hasWebgl.ts';
import { Drawings } from './Drawings.tsx';
import { FindingsButton } from './FindingsButton.tsx';
import { SafetyNet } from './SafetyNet.tsx';
import { Status } from './Status.tsx';
import { ViewButtons } from './ViewButtons.tsx';

const canDraw = hasWebgl();

const loadStage = async () => ({ default: (await import('../scene/Stage.tsx')).Stage });
// The stage is on its way while the rest of the page is still being made; who waits for it hears if it fails.
const early = canDraw ? loadStage() : null;
early?.catch(() => {});
const Stage = lazy(() => early ?? loadStage());

interface Props {
  /** Shows the findings, wherever they are. */
  readonly onFindings: () => void;
}

/** The basket on its table; outlines in its place where the browser cannot draw in three dimensions. */
export function StageRoom({ onFindings }: Props) {
  const { basket, mesh, row, view, looks, theme, pointAt, look } = useStudio((studio) => studio);
  const drawings = <Drawings basket={basket} row={row} />;
  return (
    <section className="stage-room" data-drawn={!canDraw} aria-label="Basket">
      {canDraw ? (
        <SafetyNet under={() => drawings}>
          <ViewButtons view={view} onView={look} />
          <Suspense fallback={<p className="waiting">Laying the table …</p>}>
            <Stage
              basket={basket}
              mesh={mesh}
              row={row}
              onRow={pointAt}
              view={view}
              onView={look}
              viewNonce={looks}
              theme={theme}
              label={basket ? inWords(basket) : 'The basket is being settled'}
            />
          </Suspense>
        </SafetyNet>
      ) : (
        drawings
      )}
      <Status />
      {basket && <FindingsButton findings={basket.findings} onPress={onFindings} />}
    </section>
  );
}

/** What the picture shows, for those who do not see it. */
function inWords({ plan, summary }: Basket): string {
  const length = (mm: number) => formatLength(mm, plan.display.unit);
  const { rim, belly, height, ends, rows } = summary;
  return `Woven basket, ${length(height)} high, ${length(rim.length)} by ${length(rim.width)} across the rim, widest at row ${belly.row}; ${ends} ends and ${rows} rows`;
}
