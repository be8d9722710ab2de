import { lazy, Suspense } from 'react';
import { useComparison } from './keep/compareHere.ts';
import { Mishap } from './views/Mishap.tsx';
import { SafetyNet } from './views/SafetyNet.tsx';
import { Studio } from './views/Studio.tsx';

const ComparePage = lazy(async () => ({
  default: (await import('./views/compare/ComparePage.tsx')).ComparePage,
}));

/** The app: one plan or two, and under it a net, so that a fault never leaves a blank page. */
export function App() {
  const isComparing = useComparison(({ isOpen }) => isOpen);
  return (
    <SafetyNet under={(error) => <Mishap error={error} />}>
      {isComparing ? (
        <Suspense fallback={<p className="waiting">Laying out both plans …</p>}>
          <ComparePage />
        </Suspense>
      ) : (
        <Studio />
      )}
    </SafetyNet>
  );
}
