import { useCallback, useDeferredValue, useMemo, useRef, useState } from 'react';
import { appWords } from '#words/app.ts';
import { compareWords } from '#words/compare.ts';
import { planLetters } from '#words/planLetters.ts';
import { CompareGirthLine } from '../../charts/compare/CompareGirthLine.tsx';
import { DifferenceTable } from '../../charts/compare/DifferenceTable.tsx';
import { HeightLines } from '../../charts/compare/HeightLines.tsx';
import { MeasureTable } from '../../charts/compare/MeasureTable.tsx';
import { FindingList } from '../../charts/FindingList.tsx';
import { Sentence } from '../../form/Sentence.tsx';
import { useComparison, useSide } from '../../keep/compareHere.ts';
import type { Side } from '../../keep/compareStudio.ts';
import { blend } from '../../model/compare/blend.ts';
import { girthLine } from '../../model/girth/girthLine.ts';
import { PlanPanel } from '../../panel/PlanPanel.tsx';
import type { TakePicture } from '../../scene/Snapshot.tsx';
import { Room } from '../Room.tsx';
import { Tabs } from '../Tabs.tsx';
import { useMedia } from '../useMedia.ts';
import { BlendCard } from './BlendCard.tsx';
import { CompareStageRoom } from './CompareStageRoom.tsx';
import { placeOfRow, rowsAt } from './places.ts';
import { SideCard } from './SideCard.tsx';
import { changeShown, shownIn } from './shownPlan.ts';
import type { Reading } from './useReading.ts';

const { rooms: words, side: sideWords } = compareWords;

const tabs = [
  { name: 'plan', title: appWords.rooms.plan },
  { name: 'rows', title: words.differences },
  { name: 'summary', title: appWords.rooms.summaryTab },
] as const;

type TabName = (typeof tabs)[number]['name'];

interface Props {
  readonly reading: Reading | null;
  readonly onPictures: (take: readonly TakePicture[]) => void;
}

/** Both plans, their baskets, lines and differences. */
export function CompareBench({ reading, onPictures }: Props) {
  const isNarrow = useMedia('(max-width: 1099px)');
  const [tab, setTab] = useState<TabName>('plan');
  const { edited, by, place, share, pointAt } = useComparison((comparison) => comparison);
  const planA = useSide('a', ({ plan }) => plan);
  const ownPlanB = useSide('b', ({ plan }) => plan);
  const { unit } = planA.display;
  const planB = useMemo(() => shownIn(ownPlanB, unit), [ownPlanB, unit]);
  const girths = useMemo(() => ({ a: girthLine(planA), b: girthLine(planB) }), [planA, planB]);
  // a drag does not wait for what lies between the two
  const [lateA, lateB] = [useDeferredValue(planA), useDeferredValue(planB)];
  const third = useMemo(() => blend(lateA, lateB, share), [lateA, lateB, share]);
  const thirdGirths = useMemo(() => girthLine(third), [third]);
  const plan = edited === 'a' ? planA : planB;
  const found = reading?.differences ?? null;
  const latest = useRef(found);
  latest.current = found;
  const change = useMemo(() => changeShown(edited), [edited]);
  const pointRow = useCallback(
    (side: Side, row: number | null) =>
      pointAt(latest.current && placeOfRow(latest.current, side, row)),
    [pointAt],
  );
  const showFindings = (side: Side) => {
    setTab('summary');
    setTimeout(() =>
      document.querySelector(`#findings-of-${side}`)?.scrollIntoView({ block: 'nearest' }),
    );
  };
  const room = (name: TabName) => ({ name, isTab: isNarrow, hidden: isNarrow && tab !== name });
  return (
    <main className="bench compare-bench">
      <div className="side-cards">
        <SideCard side="a" onFindings={showFindings} />
        <SideCard side="b" onFindings={showFindings} />
      </div>
      <CompareStageRoom rows={rowsAt(found, place)} onRow={pointRow} onPictures={onPictures} />
      <section className="girth-room" aria-label={words.girths}>
        {by === 'height' && reading ? (
          <HeightLines
            rows={{ a: reading.a.rows, b: reading.b.rows }}
            differences={reading.differences}
            place={place}
            onPlace={pointAt}
            unit={unit}
          />
        ) : (
          <CompareGirthLine
            key={edited}
            girths={girths}
            blend={thirdGirths}
            edited={edited}
            plan={plan}
            differences={by === 'row' ? found : null}
            row={by === 'row' ? place : null}
            onRow={pointAt}
            onChange={change}
          />
        )}
        <BlendCard plan={third} girths={thirdGirths} isOnOwnBase={girths.a[0] !== girths.b[0]} />
      </section>
      {isNarrow && <Tabs tabs={tabs} chosen={tab} onChoose={setTab} />}
      <Room {...room('plan')} title={words.plan(planLetters[edited])}>
        <p className={`panel-side side-${edited}`}>
          <Sentence
            text={sideWords.isEdited}
            places={{ letter: <span className={`side-${edited}`}>{planLetters[edited]}</span> }}
          />
        </p>
        <PlanPanel key={edited} plan={plan} onChange={change} />
      </Room>
      <Room {...room('rows')} title={words.differences}>
        {found ? (
          <DifferenceTable differences={found} place={place} onPlace={pointAt} unit={unit} />
        ) : (
          <p className="waiting">{words.differencesWait}</p>
        )}
      </Room>
      <Room {...room('summary')} title={appWords.rooms.summary} takesKeyboard>
        {reading && <MeasureTable measures={reading.measures} unit={unit} />}
        {reading &&
          (['a', 'b'] as const).map((side) => (
            <div key={side} id={`findings-of-${side}`} className="side-findings-list">
              <FindingList
                title={words.findings(planLetters[side])}
                basket={{ ...reading[side], plan: shownIn(reading[side].plan, unit) }}
                plan={side === 'a' ? planA : planB}
                onRow={(row) => pointRow(side, row)}
                onChange={changeShown(side)}
              />
            </div>
          ))}
      </Room>
    </main>
  );
}
