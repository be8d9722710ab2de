import { lazy, Suspense, useCallback, useMemo, useState } from 'react';
import { useStudio } from '../keep/useStudio.ts';
import { rowTints } from '../mesh/rowTints.ts';
import type { Basket } from '../model/basket.ts';
import { formatLength } from '../plan/units.ts';
import { hasWebgl } from '../scene/hasWebgl.ts';
import type { TakePicture } from '../scene/Snapshot.tsx';
import { Drawings } from './Drawings.tsx';
import { FindingsButton } from './FindingsButton.tsx';
import { SafetyNet } from './SafetyNet.tsx';
import { Status } from './Status.tsx';
import { BuildUpBar } from './stage/BuildUpBar.tsx';
import { readingWords } from './stage/readingWords.ts';
import { StageTools } from './stage/StageTools.tsx';
import type { StageShow } from './stage/stageShow.ts';
import { plainStage } from './stage/stageShow.ts';
import { TintLegend } from './stage/TintLegend.tsx';
import { useBuildUp } from './stage/useBuildUp.ts';
import './stage/stageRoom.css';
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
  const { plan, basket, mesh, row, view, looks, theme, pointAt, look } = useStudio(
    (studio) => studio,
  );
  const [show, setShow] = useState<StageShow>(plainStage);
  const [isBuilding, setBuilding] = useState(false);
  const [picture, setPicture] = useState<{ readonly take: TakePicture | null }>({ take: null });
  const build = useBuildUp(plan, isBuilding);
  const shown = build.shown ?? (basket && mesh ? { basket, mesh } : null);
  const tints = useMemo(
    () => (shown && show.tint ? rowTints(shown.basket.rows, show.tint) : null),
    [shown, show.tint],
  );
  const onPicture = useCallback((take: TakePicture | null) => setPicture({ take }), []);
  const drawings = (
    <Drawings basket={shown?.basket ?? null} row={row} isChosen={canDraw && show.outline} />
  );
  return (
    <section className="stage-room" data-drawn={!canDraw} aria-label="Basket">
      {canDraw && <ViewButtons view={view} onView={look} />}
      {canDraw && !show.outline ? (
        <SafetyNet under={() => drawings}>
          <Suspense fallback={<p className="waiting">Laying the table …</p>}>
            <Stage
              basket={shown?.basket ?? null}
              mesh={shown?.mesh ?? null}
              row={build.shown ? null : row}
              onRow={pointAt}
              view={view}
              onView={look}
              viewNonce={looks}
              theme={theme}
              label={basket ? inWords(basket) : 'The basket is being settled'}
              readings={shown && show.sizes ? readingWords(shown.basket, row) : null}
              tints={tints}
              onPicture={onPicture}
            />
          </Suspense>
        </SafetyNet>
      ) : (
        drawings
      )}
      {basket && (
        <StageTools
          basket={basket}
          show={show}
          onShow={setShow}
          isBuilding={isBuilding}
          onBuild={() => setBuilding(!isBuilding)}
          onPicture={picture.take}
        />
      )}
      {shown && show.tint && tints && canDraw && !show.outline && (
        <TintLegend kind={show.tint} tints={tints} unit={plan.display.unit} />
      )}
      {isBuilding && basket && (
        <BuildUpBar build={build} basket={basket} onClose={() => setBuilding(false)} />
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
