import { useCallback, useRef } from 'react';
import { useStudio } from '../keep/useStudio.ts';
import { Bench } from './Bench.tsx';
import { FileDrop } from './FileDrop.tsx';
import { Header } from './Header.tsx';
import { KeyList } from './KeyList.tsx';
import { ProblemBanner } from './ProblemBanner.tsx';
import { takeFilesHere } from './take/takeFiles.ts';
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
      <Header onFiles={takeFilesHere} onKeys={listKeys} />
      {problem && <ProblemBanner problem={problem} onDismiss={() => showProblem(null)} />}
      <Bench />
      <FileDrop onFiles={takeFilesHere} />
      <KeyList dialog={keys} />
    </div>
  );
}
