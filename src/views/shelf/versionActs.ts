/** What is done with an earlier version of a plan. */
import { shelfWords } from '#words/shelf.ts';
import { compareWith } from '../../keep/compareHere.ts';
import { keptHere } from '../../keep/keepHere.ts';
import { openKept } from '../../keep/openKept.ts';
import { shelfChanged } from '../../keep/shelf/keepState.ts';
import type { ShelfDb, VersionRecord } from '../../keep/shelf/records.ts';
import { broughtBack, putBy, renameVersion } from '../../keep/shelf/versions.ts';
import { presentStudio } from '../../keep/useStudio.ts';
import { limits } from '../../plan/limits.ts';
import { problemText } from '../../plan/problems.ts';
import { checkPlan } from '../../plan/read.ts';
import type { Plan } from '../../plan/schema.ts';
import { dateTimeText } from '../dates.ts';
import { orTell, Refused } from '../take/orTell.ts';

const words = shelfWords.versions;

/** Makes a version the plan again. The plan as it was is put by as a version, and undo brings it back. */
export async function bringBack(db: ShelfDb, version: VersionRecord): Promise<void> {
  await orTellBehind(words.notBroughtBack, async () => {
    const kept = planIn(version);
    await keptHere()?.keeper.flush();
    await putBy(db, version.of, null);
    await openPlanOf(version);
    const { plan, open } = presentStudio();
    open(broughtBack(kept, plan), version.of, words.bringingBack(calledIn(version)));
    globalThis.location.hash = '#plan';
  });
}

/** Opens the plan, and the version beside it. */
export async function laidBeside(version: VersionRecord): Promise<void> {
  await orTellBehind(words.notOpened, async () => {
    const kept = planIn(version);
    await openPlanOf(version);
    const name = words.nameBeside(kept.name.slice(0, 80), calledIn(version));
    compareWith({ ...kept, name: name.slice(0, limits.name.most) });
    globalThis.location.hash = '#plan';
  });
}

/** Gives a version that was put by automatically a name, so that it stays for good. */
export async function namedAnew(db: ShelfDb, version: VersionRecord): Promise<void> {
  await orTellBehind(words.notNamed, async () => {
    await renameVersion(db, version.number, words.asOf(dayOf(version)));
    shelfChanged();
  });
}

function calledIn(version: VersionRecord): string {
  return version.name ?? words.ofDay(dayOf(version));
}

function dayOf({ made }: VersionRecord): string {
  return dateTimeText(made);
}

/** As `orTell`; the dialog of versions makes way for what the shelf says. */
async function orTellBehind(failed: string, act: () => Promise<void>): Promise<void> {
  if (!(await orTell(failed, act))) globalThis.location.hash = '#shelf';
}

/** The plan of a version. Throws `Refused` where this version of Girthline cannot read it. */
function planIn(version: VersionRecord): Plan {
  const reading = checkPlan(version.plan, words.thisVersion);
  if (!reading.ok) throw new Refused(reading.problems.map(problemText));
  return reading.plan;
}

/** Opens the plan that a version is of. Throws `Refused` where it cannot be opened. */
async function openPlanOf(version: VersionRecord): Promise<void> {
  const problem = await openKept(version.of);
  if (problem) throw new Refused(problem.split('\n'));
}
