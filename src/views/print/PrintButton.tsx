import { useState } from 'react';
import { appWords } from '#words/app.ts';
import { presentStudio, useStudio } from '../../keep/useStudio.ts';
import type { Basket } from '../../model/basket.ts';
import { fetched } from '../fetched.tsx';
import { Missed } from '../Missed.tsx';

/** What lays out pages is fetched when someone wants to print. */
const dialog = fetched(async () => (await import('./PrintDialog.tsx')).PrintDialog);

/** Opens the preview of the sheet and the gauges. */
export function PrintButton() {
  const hasSettled = useStudio(({ basket }) => basket !== null);
  const [shown, show] = useState<Basket | null>(null);
  return (
    <>
      <button type="button" disabled={!hasSettled} onClick={() => show(presentStudio().basket)}>
        {appWords.print}
      </button>
      {shown && (
        <dialog.View
          standIn={
            <p className="print-waiting" role="status">
              {appWords.gettingPages}
            </p>
          }
          missed={(again) => <Missed again={again} onClose={() => show(null)} />}
          basket={shown}
          onClose={() => show(null)}
        />
      )}
    </>
  );
}
