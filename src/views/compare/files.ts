/** The comparison as files: a table, a printed page, a picture. */
import { compareWords } from '#words/compare.ts';
import { compareCsv } from '../../export/compareCsv.ts';
import type { TakePicture } from '../../scene/Snapshot.tsx';
import { paperHere } from '../print/paperHere.ts';
import { download, fileStem } from '../save.ts';
import { posterPicture } from './posterPicture.ts';
import type { Reading } from './useReading.ts';

/** Offers `first and second compared.csv`. */
export function saveCsv(reading: Reading): void {
  download(`${stem(reading)}.csv`, 'text/csv', compareCsv(reading));
}

/** Offers the comparison as one page to print. What writes it is fetched when it is asked for. */
export async function savePage(reading: Reading): Promise<void> {
  const [{ comparePdf }, { fonts }] = await Promise.all([
    import('../../export/pdf/comparePdf.ts'),
    press(),
  ]);
  const pdf = await comparePdf(reading, fonts, { date: new Date(), paper: paperHere() });
  download(`${stem(reading)}.pdf`, 'application/pdf', new Uint8Array(pdf));
}

/** Offers the comparison as one picture; `pictures` are those on the stage, left to right. */
export async function savePicture(
  reading: Reading,
  pictures: readonly TakePicture[],
): Promise<void> {
  const { ruler } = await press();
  download(`${stem(reading)}.png`, 'image/png', await posterPicture(reading, pictures, ruler));
}

async function press() {
  const { readyPress } = await import('../print/printing.ts');
  return readyPress();
}

function stem({ a, b }: Reading): string {
  return compareWords.files.name(fileStem(a.plan.name), fileStem(b.plan.name));
}
