import { useState } from 'react';
import { appWords } from '#words/app.ts';
import { benchWords } from '#words/bench.ts';
import { useStudio } from '../../keep/useStudio.ts';
import { leaveForTour } from '../guide/leaveForTour.ts';
import { HelpPage } from '../help/HelpPage.tsx';
import { useHelp } from '../help/useHelp.ts';
import { BenchHead } from './BenchHead.tsx';
import type { BenchWork } from './benchWork.ts';
import { Coming } from './Coming.tsx';
import { MeasurePad } from './MeasurePad.tsx';
import { NextRows } from './NextRows.tsx';
import { OnTable } from './OnTable.tsx';
import { ReplanCard } from './ReplanCard.tsx';
import { RowButtons } from './RowButtons.tsx';
import { RowCard } from './RowCard.tsx';
import { useBenchWork } from './useBenchWork.ts';
import { useWakeLock } from './useWakeLock.ts';
import '../../charts/charts.css';
import './bench.css';
import './pad.css';

/** The bench: the row being woven, large; below it the rows to come and the basket on the table. */
export function BenchPage() {
  const work = useBenchWork();
  const problem = useStudio(({ problem }) => problem);
  const isAwake = useWakeLock();
  if (!work) {
    return (
      <main className="bench-page bench-waiting">
        <p role="status">{problem ?? appWords.waiting.bench}</p>
        <a className="bench-back" href="#plan">
          {benchWords.toPlan}
        </a>
      </main>
    );
  }
  return <AtWork work={work} isAwake={isAwake} />;
}

function AtWork({ work, isAwake }: { readonly work: BenchWork; readonly isAwake: boolean }) {
  const help = useHelp();
  const [isMeasuring, setMeasuring] = useState(false);
  return (
    <div className="bench-page" data-settled={work.isAtRest}>
      <BenchHead work={work} isAwake={isAwake} onHelp={help.show} />
      <main className="bench-main">
        <div className="bench-now">
          <RowCard work={work} />
          <NextRows work={work} />
        </div>
        <div className="bench-cards">
          <ReplanCard work={work} />
          <OnTable work={work} />
          <Coming work={work} />
        </div>
      </main>
      <RowButtons work={work} onMeasure={() => setMeasuring(true)} />
      {isMeasuring && <MeasurePad work={work} onDone={() => setMeasuring(false)} />}
      <HelpPage dialog={help.dialog} page="bench" onTour={leaveForTour} />
    </div>
  );
}
