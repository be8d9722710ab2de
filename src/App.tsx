import { lazy, Suspense } from 'react';
import { useComparison } from './keep/compareHere.ts';
import { useHash } from './views/bench/useHash.ts';
import { Mishap } from './views/Mishap.tsx';
import { SafetyNet } from './views/SafetyNet.tsx';
import { Studio } from './views/Studio.tsx';
import { UpdateNotice } from './views/UpdateNotice.tsx';

const ComparePage = lazy(async () => ({
  default: (await import('./views/compare/ComparePage.tsx')).ComparePage,
}));

const loadBench = async () => ({
  default: (await import('./views/bench/BenchPage.tsx')).BenchPage,
});
const BenchPage = lazy(loadBench);

/** Fetched when the page has been open for a while, ms, so that the bench opens without a connection too. */
const restBeforeBench = 20_000;
setTimeout(() => loadBench().catch(() => {}), restBeforeBench);

/** The app, and under it a net, so that a fault never leaves a blank page. */
export function App() {
  return (
    <SafetyNet under={(error) => <Mishap error={error} />}>
      <Page />
      <UpdateNotice />
    </SafetyNet>
  );
}

/** The bench, two plans, or one. */
function Page() {
  const isComparing = useComparison(({ isOpen }) => isOpen);
  const isAtBench = useHash() === '#bench';
  if (!isAtBench && !isComparing) return <Studio />;
  const waiting = isAtBench ? 'Laying the plan on the bench …' : 'Laying out both plans …';
  return (
    <Suspense fallback={<p className="waiting">{waiting}</p>}>
      {isAtBench ? <BenchPage /> : <ComparePage />}
    </Suspense>
  );
}
