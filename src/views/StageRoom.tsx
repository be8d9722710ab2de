import { memo, useCallback, useMemo, useRef, useState } from 'react';
import { stageWords } from '#words/stage.ts';
import { presentStudio, useStudio } from '../keep/useStudio.ts';
import { rowTints } from '../mesh/rowTints.ts';
import type { Basket } from '../model/basket.ts';
import { formatLength } from '../plan/units.ts';
import { hasWebgl } from '../scene/hasWebgl.ts';
import type { TakePicture } from '../scene/Snapshot.tsx';
import { LiveDrawings } from './Drawings.tsx';
import { FindingsButton } from './FindingsButton.tsx';
import { fetched } from './fetched.tsx';
import { Missed } from './Missed.tsx';
import { SafetyNet } from './SafetyNet.tsx';
import { Status } from './Status.tsx';
import { useCalmBasket } from './stage/calmBasket.ts';
import { usePresentShapes } from './stage/presentShapes.ts';
import { readingWords } from './stage/readingWords.ts';
import { StageTools } from './stage/StageTools.tsx';
import type { ShownBasket, StageShow } from './stage/stageShow.ts';
import { plainStage } from './stage/stageShow.ts';
import { TintLegend } from './stage/TintLegend.tsx';
import { useHeight } from './stage/useHeight.ts';
import './stage/stageRoom.css';
import { ViewButtons } from './ViewButtons.tsx';

const canDraw = hasWebgl();

const stage = fetched(async () => (await import('../scene/Stage.tsx')).Stage);
// The stage is on its way while the rest of the page is still being made; who waits for it hears if it fails.
if (canDraw) stage.fetch().catch(() => {});
const buildUp = fetched(async () => (await import('./stage/BuildUpBar.tsx')).BuildUpBar);

/** Room for notes along the stage's lower edge, and for the sizes under the basket, CSS pixels. */
const notes = { plain: 26, sizes: 70 } as const;

interface Props {
  /** Shows the findings, wherever they are. */
  readonly onFindings: () => void;
}

/** The basket on its table; outlines in its place where the browser cannot draw in three dimensions. */
export const StageRoom = memo(function StageRoom({ onFindings }: Props) {
  // shapes go to the stage past this room, which is not drawn anew for each
  const basket = useCalmBasket();
  const row = useStudio(({ row }) => row);
  const view = useStudio(({ view }) => view);
  const looks = useStudio(({ looks }) => looks);
  const theme = useStudio(({ theme }) => theme);
  const unit = useStudio(({ plan }) => plan.display.unit);
  const { pointAt, look } = presentStudio();
  const [show, setShow] = useState<StageShow>(plainStage);
  const [isBuilding, setBuilding] = useState(false);
  const [built, setBuilt] = useState<ShownBasket | null>(null);
  const [picture, setPicture] = useState<{ readonly take: TakePicture | null }>({ take: null });
  const head = useRef<HTMLDivElement>(null);
  const over = useHeight(head);
  const under = show.sizes ? notes.sizes : notes.plain;
  const inset = useMemo(() => ({ top: over, bottom: under }), [over, under]);
  const [sizings, setSizings] = useState(0);
  const onShow = (next: StageShow) => {
    // sizes want room: the eye looks anew
    if (next.sizes && !show.sizes) setSizings(sizings + 1);
    setShow(next);
  };
  const step = isBuilding ? built : null;
  const shapes = usePresentShapes(step);
  const shown = step?.basket ?? basket;
  const tints = useMemo(
    () => (shown && show.tint ? rowTints(shown.rows, show.tint) : null),
    [shown, show.tint],
  );
  const scale = show.tint && tints && { kind: show.tint, tints, unit };
  const onPicture = useCallback((take: TakePicture | null) => setPicture({ take }), []);
  const isDrawing = !canDraw || show.outline;
  const drawings = <LiveDrawings shapes={shapes} row={row} isChosen={canDraw && show.outline} />;
  const closeBuildUp = useCallback(() => {
    setBuilding(false);
    setBuilt(null);
  }, []);
  return (
    <section
      className="stage-room studio-stage"
      data-drawn={!canDraw}
      aria-label={stageWords.basket}
    >
      <div className="stage-box" data-drawing={isDrawing}>
        <div className="stage-head" ref={head}>
          {!isDrawing && <ViewButtons view={view} onView={look} />}
          <StageTools
            basket={basket}
            show={show}
            onShow={onShow}
            canDraw={canDraw}
            isBuilding={isBuilding}
            onBuild={() => (isBuilding ? closeBuildUp() : setBuilding(true))}
            onPicture={isDrawing ? null : picture.take}
            scale={scale}
          />
        </div>
        {isDrawing ? (
          drawings
        ) : (
          <SafetyNet under={() => drawings}>
            <stage.View
              standIn={<p className="waiting">{stageWords.waiting}</p>}
              shapes={shapes}
              row={step ? null : row}
              onRow={pointAt}
              view={view}
              onView={look}
              viewNonce={looks + sizings}
              theme={theme}
              label={basket ? inWords(basket) : stageWords.unsettled}
              readings={show.sizes ? readingWords : null}
              tint={show.tint}
              inset={inset}
              onPicture={onPicture}
            />
          </SafetyNet>
        )}
        {scale && !isDrawing && <TintLegend scale={scale} top={over + 6} />}
        <Status />
        {basket && <FindingsButton findings={basket.findings} onPress={onFindings} />}
      </div>
      {isBuilding && basket && (
        <buildUp.View
          missed={(again) => <Missed again={again} onClose={closeBuildUp} />}
          plan={basket.plan}
          basket={basket}
          onShown={setBuilt}
          onClose={closeBuildUp}
        />
      )}
    </section>
  );
});

/** What the picture shows, for those who do not see it. */
function inWords({ plan, summary }: Basket): string {
  const length = (mm: number) => formatLength(mm, plan.display.unit);
  const { rim, belly, height, ends, rows } = summary;
  return stageWords.picture({
    height: length(height),
    rimLength: length(rim.length),
    rimWidth: length(rim.width),
    bellyRow: belly.row,
    ends,
    rows,
  });
}
