import { appWords } from '#words/app.ts';
import { presentComparison, useComparison } from './keep/compareHere.ts';
import { leave, useOpenQuestion } from './views/ask/asking.ts';
import { useHash } from './views/bench/useHash.ts';
import { fetched } from './views/fetched.tsx';
import { Mishap } from './views/Mishap.tsx';
import { Missed, MissedPage } from './views/Missed.tsx';
import { Notices } from './views/Notices.tsx';
import { SafetyNet } from './views/SafetyNet.tsx';
import { Studio } from './views/Studio.tsx';
import { useLink } from './views/take/useLink.ts';

const compare = fetched(async () => (await import('./views/compare/ComparePage.tsx')).ComparePage);
const bench = fetched(async () => (await import('./views/bench/BenchPage.tsx')).BenchPage);
const shelf = fetched(async () => (await import('./views/shelf/ShelfPage.tsx')).ShelfPage);
const versions = fetched(async () => (await import('./views/shelf/VersionsHere.tsx')).VersionsHere);
const ask = fetched(async () => (await import('./views/ask/AskDialog.tsx')).AskDialog);

/** Fetched when the page has been open for a while, ms, so that the bench opens without a connection too. */
const restBeforeBench = 20_000;
setTimeout(() => bench.fetch().catch(() => {}), restBeforeBench);

/** The shelf is wanted at once when it is wanted, ms. */
const restBeforeShelf = 4000;
setTimeout(() => shelf.fetch().catch(() => {}), restBeforeShelf);

/** The app, and under it a net, so that a fault never leaves a blank page. */
export function App() {
  return (
    <SafetyNet under={(error) => <Mishap error={error} />}>
      <Page />
      <Notices />
      <Question />
    </SafetyNet>
  );
}

/** What is being asked, over everything else. */
function Question() {
  const open = useOpenQuestion();
  return (
    open && <ask.View missed={(again) => <Missed again={again} onClose={() => leave(open)} />} />
  );
}

/** The bench, the shelf, two plans, or one. */
function Page() {
  const isComparing = useComparison(({ isOpen }) => isOpen);
  const hash = useHash();
  useLink(hash);
  const place = placeOf(hash, isComparing);
  if (place === 'plan') {
    const [, of] = /^#versions=(.+)$/.exec(hash) ?? [];
    return (
      <>
        <Studio />
        {of && (
          <versions.View
            id={of}
            missed={(again) => <Missed again={again} onClose={backToPlan} />}
          />
        )}
      </>
    );
  }
  const { View } = pages[place];
  return (
    <View
      standIn={<p className="waiting">{appWords.waiting[place]}</p>}
      missed={(again) => (
        <MissedPage
          again={again}
          onClose={place === 'compare' ? presentComparison().close : backToPlan}
        />
      )}
    />
  );
}

function backToPlan(): void {
  globalThis.location.hash = '#plan';
}

const pages = { bench, shelf, compare };

function placeOf(hash: string, isComparing: boolean): keyof typeof pages | 'plan' {
  if (hash === '#bench') return 'bench';
  if (/^#shelf(=|$)/.test(hash)) return 'shelf';
  return isComparing ? 'compare' : 'plan';
}
