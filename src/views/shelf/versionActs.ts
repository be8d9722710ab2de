/** What is done with an earlier version of a plan. */
import { compareWith } from '../../keep/compareHere.ts';
import { keptHere } from '../../keep/keepHere.ts';
import { openKept } from '../../keep/openKept.ts';
import { shelfChanged } from '../../keep/shelf/keepState.ts';
import type { ShelfDb, VersionRecord } from '../../keep/shelf/records.ts';
import { broughtBack, putBy, renameVersion } from '../../keep/shelf/versions.ts';
import { presentStudio } from '../../keep/useStudio.ts';
import { problemText } from '../../plan/problems.ts';
import { checkPlan } from '../../plan/read.ts';
import { tellOnShelf } from '../take/told.ts';

/** Makes a version the plan again. The plan as it was is put by as a version, and undo brings it back. */
export async function bringBack(db: ShelfDb, version: VersionRecord): Promise<void> {
  if (!isReadable(version)) return;
  await keptHere()?.keeper.flush();
  await putBy(db, version.of, null);
  const problem = await openKept(version.of);
  if (problem) return;
  const { plan, open } = presentStudio();
  open(broughtBack(version.plan, plan), version.of, `bringing back ${calledIn(version)}`);
  globalThis.location.hash = '#plan';
}

/** Opens the plan, and the version beside it. */
export async function laidBeside(version: VersionRecord): Promise<void> {
  if (!isReadable(version)) return;
  const problem = await openKept(version.of);
  if (problem) return;
  const name = `${version.plan.name.slice(0, 80)}, ${calledIn(version)}`.slice(0, 120);
  compareWith({ ...version.plan, name });
  globalThis.location.hash = '#plan';
}

/** Gives a version that was put by automatically a name, so that it stays for good. */
export async function namedAnew(db: ShelfDb, version: VersionRecord): Promise<void> {
  await renameVersion(db, version.number, `as of ${dayOf(version)}`);
  shelfChanged();
}

function calledIn(version: VersionRecord): string {
  return version.name ?? `version of ${dayOf(version)}`;
}

function dayOf({ made }: VersionRecord): string {
  return new Date(made).toLocaleString([], { dateStyle: 'medium', timeStyle: 'short' });
}

function isReadable(version: VersionRecord): boolean {
  const reading = checkPlan(version.plan, 'this version');
  if (!reading.ok) {
    tellOnShelf({ done: 'It was not opened.', problems: reading.problems.map(problemText) });
  }
  return reading.ok;
}
