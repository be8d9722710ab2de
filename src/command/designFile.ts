/** Reading a design document from the disk. */
import { readFileSync, statSync } from 'node:fs';
import { commandWords } from '#words/command.ts';
import { fileSizeWords } from '#words/fileSizes.ts';
import { problemText } from '../plan/problems.ts';
import { longestText, readPlan } from '../plan/read.ts';
import type { Plan } from '../plan/schema.ts';

const says = commandWords.file;
const { bytes, atMostBytes } = fileSizeWords;

/** A plan, or the lines that say why there is none. */
export type DesignReading =
  | { readonly ok: true; readonly plan: Plan }
  | { readonly ok: false; readonly messages: readonly string[] };

/** A character of the text is at most four bytes of the file. */
const largestFile = 4 * longestText;

/** The plan in the file at `path`. */
export function readDesign(path: string): DesignReading {
  const text = textOf(path);
  if (typeof text !== 'string') return { ok: false, messages: [text.message] };
  const reading = readPlan(text, path);
  if (reading.ok) return reading;
  return { ok: false, messages: reading.problems.map(problemText) };
}

function textOf(path: string): string | { readonly message: string } {
  const refused = (found: string, allowed: string) => ({
    message: problemText({ file: path, path: '', found, allowed }),
  });
  try {
    const { size } = statSync(path);
    if (size > largestFile) return refused(bytes(size), atMostBytes(largestFile));
    return new TextDecoder('utf-8', { fatal: true }).decode(readFileSync(path));
  } catch (error) {
    const isEncoding = error instanceof TypeError;
    if (isEncoding) return refused(says.notUtf8, says.utf8);
    return refused(reason(error), says.readable);
  }
}

function reason(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  if (code === 'ENOENT') return says.missing;
  if (code === 'EISDIR') return says.folder;
  if (code === 'EACCES') return says.forbidden;
  return error instanceof Error ? error.message : String(error);
}
