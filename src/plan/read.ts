/** Reading and writing a design document. Nothing here throws for bad input. */
import { listWords } from '#words/lists.ts';
import { refusalWords } from '#words/refusals.ts';
import { jsonFault } from './json.ts';
import { migrations } from './migrations.ts';
import type { Problem } from './problems.ts';
import { foundText, problemsOf } from './problems.ts';
import type { Plan } from './schema.ts';
import { planSchema, planVersion } from './schema.ts';

/** A plan, or the reasons why there is none. */
export type PlanReading =
  | { readonly ok: true; readonly plan: Plan }
  | { readonly ok: false; readonly problems: readonly Problem[] };

const says = refusalWords.text;

/** Longest text that is looked at. A plan takes a few thousand characters. */
export const longestText = 1_000_000;

/** Reads the text of a `.girthline.json` file. `file` is its name, for the problems. */
export function readPlan(text: string, file: string): PlanReading {
  const json = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (json.trim() === '') {
    return refused({ file, path: '', found: says.empty, allowed: says.document });
  }
  if (json.length > longestText) {
    const found = says.characters(json.length);
    return refused({ file, path: '', found, allowed: says.mostCharacters(longestText) });
  }
  const fault = jsonFault(json);
  if (fault && !/^\s*[[{]/.test(json)) return refused({ file, ...noPlan(json) });
  if (fault) return refused({ file, ...fault });
  return checkPlan(JSON.parse(json), file);
}

/** Checks a value that is already parsed, fills in what it leaves out, and migrates it. */
export function checkPlan(value: unknown, file: string): PlanReading {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    const found = foundText(value);
    return refused({ file, path: '', found, allowed: says.object });
  }
  const format: unknown = Reflect.get(value, 'format');
  if (format !== 'girthline') {
    const found = foundText(format);
    return refused({ file, path: 'format', found, allowed: '"girthline"' });
  }
  const version: unknown = Reflect.get(value, 'version');
  if (!isKnownVersion(version)) {
    const isNewer = typeof version === 'number' && version > planVersion;
    const found = isNewer ? says.version(version) : foundText(version);
    const allowed = isNewer ? says.newest(planVersion) : versionsText();
    return refused({ file, path: 'version', found, allowed });
  }
  const current = migrated(value, version);
  const reading = planSchema.safeParse(current);
  if (reading.success) return { ok: true, plan: reading.data };
  return { ok: false, problems: problemsOf(reading.error.issues, current, file) };
}

/**
 * The text of a plan: every key, in the schema's order, ending in a newline. Throws for a plan that
 * would not be read back, which no function of this room makes.
 */
export function writePlan(plan: Plan): string {
  return `${JSON.stringify(planSchema.parse(plan), null, 2)}\n`;
}

/** Of a picture, a letter or a page of the web, not where it stops being JSON but that it is no plan. */
function noPlan(text: string): Omit<Problem, 'file'> {
  const start = text.trimStart().slice(0, longestStart);
  const found = says.begins(foundText(start.length < longestStart ? start : `${start}…`));
  return { path: '', found, allowed: says.saved };
}

const longestStart = 24;

function isKnownVersion(version: unknown): version is number {
  return (
    typeof version === 'number' && (version === planVersion || migrations[version] !== undefined)
  );
}

function migrated(value: object, version: number): object {
  let document = value;
  for (let from = version; from < planVersion; from++) {
    document = migrations[from]?.(document) ?? document;
  }
  return document;
}

function versionsText(): string {
  const versions = [...Object.keys(migrations), `${planVersion}`];
  return versions.length === 1 ? `${planVersion}` : says.versions(listWords.things(versions));
}

function refused(problem: Problem): PlanReading {
  return { ok: false, problems: [problem] };
}
