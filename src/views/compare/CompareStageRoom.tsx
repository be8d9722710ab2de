import { useMemo, useRef } from 'react';
import { compareWords } from '#words/compare.ts';
import { planLetters } from '#words/planLetters.ts';
import { stageWords } from '#words/stage.ts';
import { presentComparison, useComparison, useSide } from '../../keep/compareHere.ts';
import type { Side } from '../../keep/compareStudio.ts';
import { isRested } from '../../keep/studio.ts';
import type { Basket } from '../../model/basket.ts';
import type { Unit } from '../../plan/schema.ts';
import { formatLength } from '../../plan/units.ts';
import { hasWebgl } from '../../scene/hasWebgl.ts';
import type { TakePicture } from '../../scene/Snapshot.tsx';
import { fetched } from '../fetched.tsx';
import { SafetyNet } from '../SafetyNet.tsx';
import { useHeight } from '../stage/useHeight.ts';
import { useMedia } from '../useMedia.ts';
import { ViewButtons } from '../ViewButtons.tsx';
import { CompareDrawings } from './CompareDrawings.tsx';
import { LayoutButtons } from './LayoutButtons.tsx';
import { OverLegend } from './OverLegend.tsx';

const words = compareWords.stage;

const stage = fetched(
  async () => (await import('../../scene/compare/CompareStage.tsx')).CompareStage,
);

const canDraw = hasWebgl();

/** On a phone the buttons of the layout are at the lower edge, CSS pixels. */
const buttonsBelow = 46;

interface Props {
  /** Row to mark on each basket. */
  readonly rows: Readonly<Record<Side, number | null>>;
  readonly onRow: (side: Side, row: number | null) => void;
  readonly onPictures: (take: readonly TakePicture[]) => void;
}

/** Both baskets on one table, or as drawings where the browser cannot draw in three dimensions. */
export function CompareStageRoom({ rows, onRow, onPictures }: Props) {
  const { layout, solid, view, looks } = useComparison((comparison) => comparison);
  const theme = useSide('a', ({ theme }) => theme);
  const unit = useSide('a', ({ plan }) => plan.display.unit);
  const [a, b] = [useShown('a'), useShown('b')];
  const opened = useSide('a', ({ looks }) => looks) + useSide('b', ({ looks }) => looks);
  const rested = [useSide('a', isRested), useSide('b', isRested)];
  const views = useRef<HTMLDivElement>(null);
  const top = useHeight(views);
  const isPhone = useMedia('(max-width: 620px)');
  const inset = useMemo(() => ({ top, bottom: isPhone ? buttonsBelow : 0 }), [top, isPhone]);
  const drawings = <CompareDrawings a={a?.basket ?? null} b={b?.basket ?? null} layout={layout} />;
  return (
    <section className="stage-room compare-stage" data-drawn={!canDraw} aria-label={words.title}>
      <LayoutButtons layout={layout} solid={solid} />
      {canDraw ? (
        <SafetyNet under={() => drawings}>
          <div className="compare-views" ref={views}>
            <ViewButtons view={view} onView={(to) => presentComparison().look(to)} />
          </div>
          <stage.View
            standIn={<p className="waiting">{stageWords.waiting}</p>}
            a={a}
            b={b}
            areAtRest={rested.every(Boolean)}
            layout={layout}
            solid={solid}
            rows={rows}
            onRow={onRow}
            view={view}
            nonce={looks}
            opened={opened}
            theme={theme}
            inset={inset}
            labels={{
              a: inWords(planLetters.a, a?.basket, unit),
              b: inWords(planLetters.b, b?.basket, unit),
            }}
            onPictures={onPictures}
          />
        </SafetyNet>
      ) : (
        drawings
      )}
      {layout === 'over' && canDraw && <OverLegend solid={solid} />}
      {layout === 'beside' && canDraw && (
        <>
          <span className="stage-letter side-a" aria-hidden="true">
            {planLetters.a}
          </span>
          <span className="stage-letter side-b" aria-hidden="true">
            {planLetters.b}
          </span>
        </>
      )}
    </section>
  );
}

function useShown(side: Side) {
  const basket = useSide(side, ({ basket }) => basket);
  const mesh = useSide(side, ({ mesh }) => mesh);
  return useMemo(() => (basket && mesh ? { side, basket, mesh } : null), [side, basket, mesh]);
}

/** What a picture shows, for those who do not see it. */
function inWords(letter: string, basket: Basket | undefined, unit: Unit): string {
  if (!basket) return words.settling(letter);
  const { summary, plan } = basket;
  const length = (mm: number) => formatLength(mm, unit);
  return words.basket(
    letter,
    plan.name,
    length(summary.height),
    length(summary.rim.tapeGirth),
    summary.belly.row,
  );
}
