import { useCallback, useRef, useState } from 'react';
import { appWords } from '#words/app.ts';
import { presentStudio, useStudio } from '../keep/useStudio.ts';
import { Bench } from './Bench.tsx';
import { FileDrop } from './FileDrop.tsx';
import { Guide } from './guide/Guide.tsx';
import { Header } from './Header.tsx';
import { Help } from './Help.tsx';
import { ProblemBanner } from './ProblemBanner.tsx';
import { ShapeTimes } from './ShapeTimes.ts';
import { useKeys } from './useKeys.ts';
import { useTheme } from './useTheme.ts';
import './help.css';
import './pieces.css';
import './studio.css';

/** The page: head, messages, and the bench with plan, basket, girth line and row chart. */
export function Studio() {
  const problem = useStudio(({ problem }) => problem);
  const showProblem = useStudio(({ showProblem }) => showProblem);
  const help = useRef<HTMLDialogElement>(null);
  const [isTouring, setTouring] = useState(false);
  const showHelp = useCallback(() => help.current?.showModal(), []);
  useKeys(showHelp);
  useTheme();
  return (
    <div className="studio">
      <Header onFiles={takeFiles} onHelp={showHelp} />
      {problem && <ProblemBanner problem={problem} onDismiss={() => showProblem(null)} />}
      <Guide
        isTouring={isTouring}
        onStart={() => setTouring(true)}
        onEnd={() => setTouring(false)}
      />
      <Bench />
      <ShapeTimes />
      <FileDrop onFiles={takeFiles} />
      <Help dialog={help} onTour={() => setTouring(true)} />
    </div>
  );
}

/** Takes files in; what does so is fetched with the first. */
function takeFiles(files: readonly File[]): void {
  import('./take/takeFiles.ts')
    .then(({ takeFilesHere }) => takeFilesHere(files))
    .catch(() => presentStudio().showProblem(appWords.file.notOpened(files[0]?.name ?? '')));
}
