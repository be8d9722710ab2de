/** Files that were chosen or dropped: plans, and whole shelves as archives. */
import { fileSizeWords } from '#words/fileSizes.ts';
import { keepingWords } from '#words/keeping.ts';
import { takeWords } from '#words/take.ts';
import { readArchive } from '../../export/archive.ts';
import { keepState } from '../../keep/shelf/keepState.ts';
import { presentStudio } from '../../keep/useStudio.ts';
import type { Problem } from '../../plan/problems.ts';
import { problemText } from '../../plan/problems.ts';
import { longestText, readPlan } from '../../plan/read.ts';
import { refusalText } from './orTell.ts';
import type { Incoming } from './takeIn.ts';
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
      const found = takeWords.found.unreadable;
      problems.push({ file: file.name, path: '', found, allowed: takeWords.allowed.present });
    }
  }
  const told = problems.map(problemText);
  const [first] = incoming;
  if (first && files.length === 1 && !hasArchive) {
    await takeInOne(first.plan);
    return { done: '', problems: told };
  }
  if (!db && incoming.length > 0) {
    return { done: takeWords.noShelf, problems: told };
  }
  const done = db && incoming.length > 0 ? takeWords.taken(await takeInAll(db, incoming)) : '';
  return { done, problems: told };
}

async function readPlanFile(file: File, problems: Problem[]): Promise<Incoming[]> {
  if (file.size > 4 * longestText) {
    const found = fileSizeWords.bytes(file.size);
    const allowed = fileSizeWords.atMostBytes(4 * longestText);
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
    const found = fileSizeWords.bytes(file.size);
    const allowed = fileSizeWords.atMostBytes(largestArchive);
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
    if (told.problems.length > 0) {
      showProblem([keepingWords.fileNotOpened, ...told.problems].join('\n'));
    }
  } catch (error) {
    showProblem([takeWords.notAllTaken, refusalText(error)].join('\n'));
  }
}
