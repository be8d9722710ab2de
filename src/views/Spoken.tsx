import { useEffect, useState } from 'react';
import { stageWords } from '#words/stage.ts';
import { isRested } from '../keep/studio.ts';
import { useStudio } from '../keep/useStudio.ts';
import type { Basket } from '../model/basket.ts';
import { formatLength } from '../plan/units.ts';

/** So long must nothing change before it is said, ms: a drag, or a key held down, is not talked over. */
const quiet = 900;

/** What came of the last edit, for a screen reader: said politely, once the basket is at rest. */
export function Spoken() {
  const hasFailed = useStudio(({ state }) => state === 'failed');
  const text = useStudio((now) => (isRested(now) && now.basket ? inWords(now.basket) : null));
  const [said, say] = useState('');
  useEffect(() => {
    if (text === null) return;
    const waiting = setTimeout(() => say(text), quiet);
    return () => clearTimeout(waiting);
  }, [text]);
  return (
    <span className="unseen" role="status">
      {hasFailed ? stageWords.notSettled : said}
    </span>
  );
}

/** `Belly 29 1/2 in at row 21, rim 26 3/4 in, height 6 5/8 in. 2 findings.` */
function inWords({ plan, summary, findings, settling }: Basket): string {
  const length = (mm: number) => formatLength(mm, plan.display.unit);
  const { belly, rim, height } = summary;
  return stageWords.said({
    isAtRest: settling.converged,
    belly: length(belly.tapeGirth),
    bellyRow: belly.row,
    rim: length(rim.tapeGirth),
    height: length(height),
    findings: findings.length,
  });
}
