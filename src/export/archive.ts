/** The whole shelf as one zip archive: a folder for each plan, with its versions and its bench. */
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { archiveWords } from '#words/archive.ts';
import { fileSizeWords } from '#words/fileSizes.ts';
import { limits } from '../plan/limits.ts';
import type { Problem } from '../plan/problems.ts';
import { longestText, readPlan, writePlan } from '../plan/read.ts';
import type { Plan } from '../plan/schema.ts';

export interface ArchivedVersion {
  readonly name: string | null;
  /** ms since 1970. */
  readonly made: number;
  readonly plan: Plan;
}

export interface ArchivedPlan {
  readonly plan: Plan;
  readonly versions: readonly ArchivedVersion[];
  /** What is kept of its bench, to be read by whoever keeps it; undefined for none. */
  readonly bench: unknown;
  /** Name of its file in the archive. */
  readonly file: string;
}

export interface ArchiveReading {
  readonly plans: readonly ArchivedPlan[];
  /** What is wrong with files of the archive; they are left out and the others are not. */
  readonly problems: readonly Problem[];
}

const ending = '.girthline.json';
const listName = 'versions.json';
const versionsName = 'versions/';
const benchName = 'bench.json';

/** More files than this, or longer ones than any plan is, are not unpacked. */
const mostFiles = 50_000;

/** The archive's bytes. `stemOf` makes a plan's name one that a file can have. */
export function writeArchive(
  plans: readonly Omit<ArchivedPlan, 'file'>[],
  stemOf: (name: string) => string,
): Uint8Array<ArrayBuffer> {
  const files: Record<string, Uint8Array> = {};
  const taken = new Set<string>();
  for (const { plan, versions, bench } of plans) {
    const folder = freeName(stemOf(plan.name), taken);
    files[`${folder}/${stemOf(plan.name)}${ending}`] = strToU8(writePlan(plan));
    if (bench !== undefined) files[`${folder}/${benchName}`] = strToU8(JSON.stringify(bench));
    if (versions.length === 0) continue;
    const list = versions.map(({ name, made }, at) => ({ file: `${at + 1}${ending}`, name, made }));
    files[`${folder}/${listName}`] = strToU8(JSON.stringify(list, null, 2));
    for (const [at, version] of versions.entries()) {
      files[`${folder}/${versionsName}${at + 1}${ending}`] = strToU8(writePlan(version.plan));
    }
  }
  return new Uint8Array(zipSync(files, { level: 6 }));
}

/** The plans of an archive. One that cannot be read does not stop the others. */
export function readArchive(bytes: Uint8Array, archive: string): ArchiveReading {
  const problems: Problem[] = [];
  const files = unpacked(bytes, archive, problems);
  const plans: ArchivedPlan[] = [];
  for (const [path, content] of files) {
    const folder = path.slice(0, path.lastIndexOf('/') + 1);
    const isVersion = isOfVersions(folder, files);
    const isBeside = path === folder + listName || path === folder + benchName;
    if (isVersion || isBeside) continue;
    const reading = readPlan(strFromU8(content), `${archive}: ${path}`);
    if (!reading.ok) {
      problems.push(...reading.problems);
      continue;
    }
    const versions = versionsIn(folder, files, archive, problems);
    const bench = jsonIn(files.get(folder + benchName));
    plans.push({ plan: reading.plan, versions, bench, file: path });
  }
  return { plans, problems };
}

/** True for the folder that holds a plan's versions: beside it lies their list. */
function isOfVersions(folder: string, files: ReadonlyMap<string, Uint8Array>): boolean {
  const above = folder.slice(0, -versionsName.length);
  const isInside = above === '' || above.endsWith('/');
  return folder.endsWith(versionsName) && isInside && files.has(above + listName);
}

function versionsIn(
  folder: string,
  files: ReadonlyMap<string, Uint8Array>,
  archive: string,
  problems: Problem[],
): ArchivedVersion[] {
  const list = jsonIn(files.get(folder + listName));
  if (!Array.isArray(list)) return [];
  return list.flatMap((one: { file?: unknown; name?: unknown; made?: unknown } | null) => {
    const path = `${folder}${versionsName}${one?.file}`;
    const content = files.get(path);
    if (!content) return [];
    const reading = readPlan(strFromU8(content), `${archive}: ${path}`);
    if (!reading.ok) {
      problems.push(...reading.problems);
      return [];
    }
    const name = typeof one?.name === 'string' ? one.name.slice(0, limits.name.most) : null;
    const made = typeof one?.made === 'number' && one.made >= 0 ? one.made : 0;
    return [{ name, made, plan: reading.plan }];
  });
}

function unpacked(
  bytes: Uint8Array,
  archive: string,
  problems: Problem[],
): ReadonlyMap<string, Uint8Array> {
  let seen = 0;
  const isTaken = ({ name, originalSize }: { name: string; originalSize: number }) => {
    if (name.endsWith('/')) return false;
    seen += 1;
    const found = fileSizeWords.bytes(originalSize);
    const allowed = fileSizeWords.atMostBytes(4 * longestText);
    const isSmall = originalSize <= 4 * longestText;
    if (!isSmall) problems.push({ file: `${archive}: ${name}`, path: '', found, allowed });
    if (seen === mostFiles + 1) {
      const most = archiveWords.atMostFiles(mostFiles);
      problems.push({ file: archive, path: '', found: archiveWords.moreFiles, allowed: most });
    }
    return isSmall && seen <= mostFiles;
  };
  try {
    // not in a worker: fflate makes its own out of text, which the page's policy forbids
    return new Map(Object.entries(unzipSync(bytes, { filter: isTaken })));
  } catch {
    const { notUnpacked: found, archive: allowed } = archiveWords;
    problems.push({ file: archive, path: '', found, allowed });
    return new Map();
  }
}

function jsonIn(content: Uint8Array | undefined): unknown {
  try {
    return content && JSON.parse(strFromU8(content));
  } catch {
    return undefined;
  }
}

/** `name`, or with a number behind it if that is taken. Names that differ in capitals only are one. */
function freeName(name: string, taken: Set<string>): string {
  for (let number = 1; ; number += 1) {
    const free = number === 1 ? name : `${name} ${number}`;
    if (taken.has(free.toLowerCase())) continue;
    taken.add(free.toLowerCase());
    return free;
  }
}
