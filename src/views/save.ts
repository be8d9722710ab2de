/** Files for the person at the page: the plan and the row chart. */
import { appWords } from '#words/app.ts';
import { rowsCsv } from '../export/rowsCsv.ts';
import { presentStudio } from '../keep/useStudio.ts';
import { writePlan } from '../plan/read.ts';
import type { Plan } from '../plan/schema.ts';

/** Offers the plan as `name.girthline.json`. */
export function savePlan(plan: Plan): void {
  download(`${fileStem(plan.name)}.girthline.json`, 'application/json', writePlan(plan));
}

/** Offers the row chart of the basket at hand as `name rows.csv`; nothing before one has settled. */
export function saveRowsNow(): void {
  const { basket } = presentStudio();
  if (!basket) return;
  download(appWords.fileName.rows(fileStem(basket.plan.name)), 'text/csv', rowsCsv(basket));
}

/** The plan's name without what a file system may not like. */
export function fileStem(name: string): string {
  const stem = name
    .replaceAll(/[\\/:*?"<>|\p{Cc}]/gu, ' ')
    .replaceAll(/\s+/g, ' ')
    .replace(/^[. ]+|[. ]+$/g, '');
  return stem.slice(0, 80) || appWords.fileName.unnamed;
}

/** Offers a file; `content` is its text or its bytes. */
export function download(name: string, type: string, content: BlobPart): void {
  const isText = typeof content === 'string';
  const blob = new Blob([content], { type: isText ? `${type};charset=utf-8` : type });
  const address = URL.createObjectURL(blob);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
