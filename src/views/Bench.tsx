import { useCallback, useMemo, useState } from 'react';
import { appWords } from '#words/app.ts';
import { FindingList } from '../charts/FindingList.tsx';
import { GirthLine } from '../charts/GirthLine.tsx';
import { RowTable } from '../charts/RowTable.tsx';
import { SummaryCard } from '../charts/SummaryCard.tsx';
import { isRested } from '../keep/studio.ts';
import { presentStudio, useStudio } from '../keep/useStudio.ts';
import { girthLine } from '../model/girth/girthLine.ts';
import { PlanPanel } from '../panel/PlanPanel.tsx';
import type { Plan } from '../plan/schema.ts';
import { Room } from './Room.tsx';
import { StageRoom } from './StageRoom.tsx';
import { saveRowsNow } from './save.ts';
import { useCalmBasket } from './stage/calmBasket.ts';
import { Tabs } from './Tabs.tsx';
import { useCalm } from './useCalm.ts';
import { useMedia } from './useMedia.ts';

const tabs = [
  { name: 'plan', title: appWords.rooms.plan },
  { name: 'rows', title: appWords.rooms.rowChart },
  { name: 'summary', title: appWords.rooms.summaryTab },
] as const;

type TabName = (typeof tabs)[number]['name'];

/** All rooms side by side on a wide page; on a narrow one three of them behind tabs. */
export function Bench() {
  const isNarrow = useMedia('(max-width: 1099px)');
  const [tab, setTab] = useState<TabName>('plan');
  const plan = useStudio(({ plan }) => plan);
  const calm = useCalmBasket();
  // the newest there is whenever an edit draws the line anew: no shape does so by itself
  const { basket } = presentStudio();
  const row = useStudio(({ row }) => row);
  const { pointAt, change } = presentStudio();
  const girths = useMemo(() => girthLine(plan), [plan]);
  const isAtRest = useStudio(isRested);
  const read = useCalm(
    useMemo(() => ({ plan, girths, basket: calm }), [plan, girths, calm]),
    !isAtRest,
  );
  const onFindings = useCallback(() => showFindings(setTab), []);
  const room = (name: TabName) => ({
    name,
    isTab: isNarrow,
    hidden: isNarrow && tab !== name,
  });
  return (
    <main className="bench">
      <StageRoom onFindings={onFindings} />
      <section className="girth-room" aria-label={appWords.rooms.girthLine}>
        <GirthLine
          plan={plan}
          girths={girths}
          basket={basket}
          row={row}
          onRow={pointAt}
          onChange={change}
        />
      </section>
      {isNarrow && <Tabs tabs={tabs} chosen={tab} onChoose={setTab} />}
      <Room {...room('plan')} title={appWords.rooms.plan}>
        <PlanPanel plan={plan} onChange={change} />
      </Room>
      <Room {...room('rows')} title={appWords.rooms.rowChart}>
        <RowTable
          plan={read.plan}
          girths={read.girths}
          basket={read.basket}
          present={presentPlan}
          row={row}
          onRow={pointAt}
          onChange={change}
          onSave={calm ? saveRowsNow : undefined}
        />
      </Room>
      <Room {...room('summary')} title={appWords.rooms.summary} takesKeyboard>
        {read.basket && <SummaryCard basket={read.basket} />}
        {read.basket && (
          <FindingList
            basket={read.basket}
            plan={read.plan}
            present={presentPlan}
            onRow={pointAt}
            onChange={change}
          />
        )}
      </Room>
    </main>
  );
}

/** Brings the findings into sight, from behind their tab where there is one. */
function showFindings(setTab: (name: TabName) => void): void {
  setTab('summary');
  const show = () => document.querySelector('.findings')?.scrollIntoView({ block: 'nearest' });
  setTimeout(show);
}

function presentPlan(): Plan {
  return presentStudio().plan;
}
