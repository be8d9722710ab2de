/** The whole shelf as one file. */
import { shelfWords } from '#words/shelf.ts';
import { writeArchive } from '../../export/archive.ts';
import { keptHere } from '../../keep/keepHere.ts';
import { keepState } from '../../keep/shelf/keepState.ts';
import { wholeShelf } from '../../keep/shelf/shelfPlans.ts';
import { download, fileStem } from '../save.ts';

/** Offers all plans with their versions and their bench as `Girthline shelf DATE.zip`. */
export async function saveShelf(): Promise<void> {
  const { db } = keepState.getState();
  if (!db) return;
  await keptHere()?.keeper.flush();
  const plans = await wholeShelf(db);
  const bytes = writeArchive(plans, fileStem);
  const day = new Date().toISOString().slice(0, 10);
  download(shelfWords.fileName(day), 'application/zip', bytes);
}
