import { useEffect } from 'react';
import { useSide } from '../../keep/compareHere.ts';
import type { Side } from '../../keep/compareStudio.ts';

/** More measures than this are not kept; a browser run reads them well before. */
const mostMeasures = 1000;

/** Notes, for each new basket of one plan, the time since that plan was edited (User Timing). */
export function useSideTimes(side: Side): void {
  const settling = useSide(side, ({ settling }) => settling);
  useEffect(() => {
    if (!settling) return;
    const name = `edit-to-shape-${side}`;
    if (performance.getEntriesByName(name).length >= mostMeasures) performance.clearMeasures(name);
    performance.measure(name, {
      start: settling.asked,
      end: performance.now(),
      detail: { worker: settling.milliseconds, polished: settling.polished },
    });
  }, [side, settling]);
}
