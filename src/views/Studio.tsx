import { useCallback, useRef } from 'react';
import { presentStudio, useStudio } from '../keep/useStudio.ts';
import { Bench } from './Bench.tsx';
import { FileDrop } from './FileDrop.tsx';
import { Header } from './Header.tsx';
import { KeyList } from './KeyList.tsx';
import { ProblemBanner } from './ProblemBanner.tsx';
import { useKeys } from './useKeys.ts';
import { useShapeTimes } from './useShapeTimes.ts';
import { useTheme } from './useTheme.ts';
import './pieces.css';
import './studio.css';

/** The page: head, messages, and the bench with plan, basket, girth line and row chart. */
export function Studio() {
  const problem = useStudio(({ problem }) => problem);
  const showProblem = useStudio(({ showProblem }) => showProblem);
  const keys = useRef<HTMLDialogElement>(null);
  const listKeys = useCallback(() => keys.current?.showModal(), []);
  useKeys(listKeys);
  useTheme();
  useShapeTimes();
  return (
    <div className="studio">
      <Header onFiles={takeFiles} onKeys={listKeys} />
      {problem && <ProblemBanner problem={problem} onDismiss={() => showProblem(null)} />}
      <Bench />
      <FileDrop onFiles={takeFiles} />
      <KeyList dialog={keys} />
    </div>
  );
}

/** Takes files in; what does so is fetched with the first. */
function takeFiles(files: readonly File[]): void {
  import('./take/takeFiles.ts')
    .then(({ takeFilesHere }) => takeFilesHere(files))
    .catch(() => presentStudio().showProblem(`${files[0]?.name}: this file could not be opened`));
}
