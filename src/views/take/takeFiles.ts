/** Files that were chosen or dropped: plans, and whole shelves as archives. */
import { readArchive } from '../../export/archive.ts';
import { keepState } from '../../keep/shelf/keepState.ts';
import { presentStudio } from '../../keep/useStudio.ts';
import type { Problem } from '../../plan/problems.ts';
import { problemText } from '../../plan/problems.ts';
import { longestText, readPlan } from '../../plan/read.ts';
import { refusalText } from './orTell.ts';
import type { Incoming, TakenIn } from './takeIn.ts';
import { takeInAll, takeInOne } from './takeIn.ts';
import type { Told } from './told.ts';
import { tellOnShelf } from './told.ts';

const largestArchive = 200_000_000;

/**
 * Takes files in. One plan is opened; of several, and of an archive, all go on the shelf. Rejects where
 * the shelf refuses.
 */
export async function takeFiles(files: readonly File[]): Promise<Told> {
  const { db } = keepState.getState();
  const problems: Problem[] = [];
  const incoming: Incoming[] = [];
  let hasArchive = false;
  for (const file of files) {
    try {
      const isWhole = await isArchive(file);
      hasArchive ||= isWhole;
      const read = isWhole ? readArchiveFile : readPlanFile;
      incoming.push(...(await read(file, problems)));
    } catch {
      // moved or deleted since it was chosen
      const found = 'nothing that the browser could read';
      problems.push({ file: file.name, path: '', found, allowed: 'a file that is still there' });
    }
  }
  const told = problems.map(problemText);
  const [first] = incoming;
  if (first && files.length === 1 && !hasArchive) {
    await takeInOne(first.plan);
    return { done: '', problems: told };
  }
  if (!db && incoming.length > 0) {
    const done = 'This browser has no shelf to put several plans on; open them one by one.';
    return { done, problems: told };
  }
  const done = db && incoming.length > 0 ? sum(await takeInAll(db, incoming)) : '';
  return { done, problems: told };
}

async function readPlanFile(file: File, problems: Problem[]): Promise<Incoming[]> {
  if (file.size > 4 * longestText) {
    const found = `${file.size} bytes`;
    const allowed = `at most ${4 * longestText} bytes`;
    problems.push({ file: file.name, path: '', found, allowed });
    return [];
  }
  const reading = readPlan(await file.text(), file.name);
  if (reading.ok) return [{ plan: reading.plan }];
  problems.push(...reading.problems);
  return [];
}

async function readArchiveFile(file: File, problems: Problem[]): Promise<Incoming[]> {
  if (file.size > largestArchive) {
    const found = `${file.size} bytes`;
    const allowed = `at most ${largestArchive} bytes`;
    problems.push({ file: file.name, path: '', found, allowed });
    return [];
  }
  const reading = readArchive(new Uint8Array(await file.arrayBuffer()), file.name);
  problems.push(...reading.problems);
  return [...reading.plans];
}

/** A zip archive begins with these letters, whatever it is called. */
async function isArchive(file: File): Promise<boolean> {
  if (/\.zip$/i.test(file.name)) return true;
  return (await file.slice(0, 4).text()) === 'PK\u0003\u0004';
}

function sum({ added, replaced, skipped, same, joined }: TakenIn): string {
  const parts = [
    `${added} ${added === 1 ? 'plan' : 'plans'} put on the shelf`,
    replaced > 0 && `${replaced} replaced`,
    skipped > 0 && `${skipped} left out`,
    same > 0 && `${same} there already`,
    joined > 0 && `${joined} earlier versions or bench pages added to those that were there`,
  ];
  return `${parts.filter(Boolean).join(', ')}.`;
}

/** Takes files in from the page of a plan: says there what was refused, and shows on the shelf what came. */
export async function takeFilesHere(files: readonly File[]): Promise<void> {
  const { showProblem } = presentStudio();
  try {
    const told = await takeFiles(files);
    if (told.done) {
      tellOnShelf(told);
      globalThis.location.hash = '#shelf';
      return;
    }
    const first = 'This file was not opened; your plan is as it was.';
    if (told.problems.length > 0) showProblem([first, ...told.problems].join('\n'));
  } catch (error) {
    showProblem(['Not all of this came on the shelf.', refusalText(error)].join('\n'));
  }
}
