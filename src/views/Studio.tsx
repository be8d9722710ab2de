import { useCallback, useEffect, useState } from 'react';
import { appWords } from '#words/app.ts';
import { presentStudio, useStudio } from '../keep/useStudio.ts';
import { Bench } from './Bench.tsx';
import { FileDrop } from './FileDrop.tsx';
import { Guide } from './guide/Guide.tsx';
import { isTourWanted, tourBegins } from './guide/leaveForTour.ts';
import { Header } from './Header.tsx';
import { HelpPage } from './help/HelpPage.tsx';
import { useHelp } from './help/useHelp.ts';
import { ProblemBanner } from './ProblemBanner.tsx';
import { ShapeTimes } from './ShapeTimes.ts';
import { useKeys } from './useKeys.ts';
import { useTheme } from './useTheme.ts';
import './pieces.css';
import './studio.css';

/** The page: head, messages, and the bench with plan, basket, girth line and row chart. */
export function Studio() {
  const problem = useStudio(({ problem }) => problem);
  const showProblem = useStudio(({ showProblem }) => showProblem);
  const [isTouring, setTouring] = useState(isTourWanted);
  const startTour = useCallback(() => setTouring(true), []);
  const help = useHelp();
  useEffect(tourBegins, []);
  useKeys();
  useTheme();
  return (
    <div className="studio">
      <Header onFiles={takeFiles} onHelp={help.show} />
      {problem && <ProblemBanner problem={problem} onDismiss={() => showProblem(null)} />}
      <Guide isTouring={isTouring} onStart={startTour} onEnd={() => setTouring(false)} />
      <Bench />
      <ShapeTimes />
      <FileDrop onFiles={takeFiles} />
      <HelpPage dialog={help.dialog} page="plan" onTour={startTour} />
    </div>
  );
}

/** Takes files in; what does so is fetched with the first. */
function takeFiles(files: readonly File[]): void {
  import('./take/takeFiles.ts')
    .then(({ takeFilesHere }) => takeFilesHere(files))
    .catch(() => presentStudio().showProblem(appWords.file.notOpened(files[0]?.name ?? '')));
}
