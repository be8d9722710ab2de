import { useEffect } from 'react';
import type { SettlingNote } from '../keep/studio.ts';
import { here } from '../keep/useStudio.ts';

const name = 'edit-to-shape';

/** More measures than this are not kept; a browser run reads them well before. */
const mostMeasures = 1000;

/**
 * Notes, for each new basket on the stage, the time since its plan was edited (User Timing). Draws nothing,
 * and is not drawn anew either.
 */
export function ShapeTimes(): null {
  useEffect(
    () =>
      here.subscribe(({ settling }, before) => {
        if (settling && settling !== before.settling) note(settling);
      }),
    [],
  );
  return null;
}

function note({ asked, milliseconds, polished }: SettlingNote): void {
  if (performance.getEntriesByName(name).length >= mostMeasures) performance.clearMeasures(name);
  performance.measure(name, {
    start: asked,
    end: performance.now(),
    detail: { worker: milliseconds, polished },
  });
}
