import { useCallback, useRef, useState } from 'react';
import { compareWords } from '#words/compare.ts';
import { planLetters } from '#words/planLetters.ts';
import { presentComparison, presentSide, useComparison, useSide } from '../../keep/compareHere.ts';
import type { TakePicture } from '../../scene/Snapshot.tsx';
import { FileDrop } from '../FileDrop.tsx';
import { leaveForTour } from '../guide/leaveForTour.ts';
import { HelpPage } from '../help/HelpPage.tsx';
import { useHelp } from '../help/useHelp.ts';
import { ProblemBanner } from '../ProblemBanner.tsx';
import { useTheme } from '../useTheme.ts';
import { CompareBench } from './CompareBench.tsx';
import { CompareHead } from './CompareHead.tsx';
import { saveCsv, savePage, savePicture } from './files.ts';
import { openBeside } from './openBeside.ts';
import { useCompareKeys } from './useCompareKeys.ts';
import { useReading } from './useReading.ts';
import { useSideTimes } from './useSideTimes.ts';
import '../pieces.css';
import '../studio.css';
import './comparePage.css';

/** The page while two plans are compared. */
export function ComparePage() {
  const by = useComparison(({ by }) => by);
  const unit = useSide('a', ({ plan }) => plan.display.unit);
  const problemA = useSide('a', ({ problem }) => problem);
  const problemB = useSide('b', ({ problem }) => problem);
  const reading = useReading(by, unit);
  const pictures = useRef<readonly TakePicture[]>([]);
  const keepPictures = useCallback((take: readonly TakePicture[]) => {
    pictures.current = take;
  }, []);
  const [isBusy, setBusy] = useState(false);
  const help = useHelp();
  useCompareKeys();
  useTheme();
  useSideTimes('a');
  useSideTimes('b');

  const write = async (file: () => Promise<void>) => {
    setBusy(true);
    try {
      await file();
    } catch (error) {
      presentSide('a').showProblem(compareWords.files.notWritten(String(error)));
    } finally {
      setBusy(false);
    }
  };
  return (
    <div className="studio compare-page">
      <CompareHead
        reading={reading}
        isBusy={isBusy}
        onCsv={() => reading && saveCsv(reading)}
        onPrint={() => reading && write(() => savePage(reading))}
        onPicture={() => reading && write(() => savePicture(reading, pictures.current))}
        onHelp={help.show}
      />
      {problemA && (
        <ProblemBanner
          problem={compareWords.side.problem(planLetters.a, problemA)}
          onDismiss={() => presentSide('a').showProblem(null)}
        />
      )}
      {problemB && (
        <ProblemBanner
          problem={compareWords.side.problem(planLetters.b, problemB)}
          onDismiss={() => presentSide('b').showProblem(null)}
        />
      )}
      <CompareBench reading={reading} onPictures={keepPictures} />
      <FileDrop onFiles={([file]) => file && openBeside(file, presentComparison().edited)} />
      <HelpPage dialog={help.dialog} page="compare" onTour={leaveForTour} />
    </div>
  );
}
