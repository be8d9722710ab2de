import { useEffect } from 'react';
import { useStudio } from '../keep/useStudio.ts';

const name = 'edit-to-shape';

/** More measures than this are not kept; a browser run reads them well before. */
const mostMeasures = 1000;

/**
 * Notes, for each new basket on the stage, the time since its plan was edited (User Timing).
 * Draws nothing: what hears of every shape is drawn anew with it.
 */
export function ShapeTimes(): null {
  const settling = useStudio(({ settling }) => settling);
  useEffect(() => {
    if (!settling) return;
    if (performance.getEntriesByName(name).length >= mostMeasures) performance.clearMeasures(name);
    performance.measure(name, {
      start: settling.asked,
      end: performance.now(),
      detail: { worker: settling.milliseconds, polished: settling.polished },
    });
  }, [settling]);
  return null;
}
