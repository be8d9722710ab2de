/** What is wrong with a document, key by key, in words for the person who opens it. */
import type { z } from 'zod';
import { refusalWords } from '#words/refusals.ts';

export interface Problem {
  /** Name of the file, as the person knows it. */
  readonly file: string;
  /** Path of the key, such as `base.stake.width` or `girthLine.points[2].row`; `''` is the whole. */
  readonly path: string;
  /** What stands there. */
  readonly found: string;
  /** What may stand there. */
  readonly allowed: string;
}

/** One line: file, path, found, allowed. */
export function problemText({ file, path, found, allowed }: Problem): string {
  return refusalWords.problem(file, path || refusalWords.wholeDocument, found, allowed);
}

const says = refusalWords.found;

/** More than this many would not be read. */
const mostProblems = 20;

/** The problems that the schema found in `value`. */
export function problemsOf(
  issues: readonly z.core.$ZodIssue[],
  value: unknown,
  file: string,
): readonly Problem[] {
  const problems: Problem[] = [];
  for (const issue of issues) {
    for (const one of problemsOfIssue(issue, value)) {
      if (problems.length < mostProblems) problems.push({ file, ...one });
    }
  }
  return problems;
}

/** `['points', 2, 'row']` as `points[2].row`. */
export function pathText(path: readonly PropertyKey[]): string {
  let text = '';
  for (const key of path) {
    if (typeof key === 'number') text += `[${key}]`;
    else if (plainKey.test(String(key))) text += text ? `.${String(key)}` : String(key);
    else text += `[${shortened(String(key))}]`;
  }
  return text;
}

/** A value in a few words: short ones as they are, lists and objects by their kind only. */
export function foundText(value: unknown): string {
  if (typeof value === 'string') return shortened(value);
  if (Array.isArray(value)) return says.list(value.length);
  if (value === undefined) return says.nothing;
  if (value === null) return 'null';
  if (typeof value === 'object') return says.object;
  if (typeof value === 'function') return says.function;
  return String(value);
}

/** `text` on one line: line breaks and control characters as escapes. */
export function printable(text: string): string {
  return text.replace(/[\p{Cc}\u2028\u2029]/gu, (code) => {
    return `\\u${code.charCodeAt(0).toString(16).padStart(4, '0')}`;
  });
}

const plainKey = /^[A-Za-z0-9_-]{1,60}$/;

function problemsOfIssue(issue: z.core.$ZodIssue, value: unknown): Omit<Problem, 'file'>[] {
  const { path, message: allowed } = issue;
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => ({
      path: pathText([...path, key]),
      found: says.unknownKey,
      allowed,
    }));
  }
  return [{ path: pathText(path), found: foundOf(issue, value), allowed }];
}

function foundOf(issue: z.core.$ZodIssue, value: unknown): string {
  if (issue.code === 'custom' && typeof issue.params?.found === 'string') {
    return issue.params.found;
  }
  if (issue.code === 'invalid_key') return says.key(shortened(String(issue.path.at(-1))));
  return foundText(valueAt(value, issue.path));
}

function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
  let here = value;
  for (const key of path) {
    if (typeof here !== 'object' || here === null || !Object.hasOwn(here, key)) return undefined;
    here = Reflect.get(here, key);
  }
  return here;
}

function shortened(text: string): string {
  return printable(JSON.stringify(text.length > 60 ? `${text.slice(0, 59)}…` : text));
}
