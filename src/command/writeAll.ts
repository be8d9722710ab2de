/** Writing several files so that a reader sees each one whole or not at all. */
import { mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Writes each text to its name in `folder`, which is made where it is missing. All are written
 * beside their places first and then moved there. Throws if one cannot be written; then none is.
 */
export function writeAll(folder: string, texts: Readonly<Record<string, string>>): void {
  const made = mkdirSync(folder, { recursive: true });
  const files = Object.entries(texts).map(([name, text]) => ({
    text,
    place: join(folder, name),
    beside: join(folder, `.${name}.${process.pid}.part`),
  }));
  try {
    for (const { beside, text } of files) writeFileSync(beside, text, { flush: true });
    for (const { beside, place } of files) renameSync(beside, place);
  } catch (error) {
    for (const { beside } of files) rmSync(beside, { force: true });
    if (made !== undefined) rmSync(made, { recursive: true, force: true });
    throw error;
  }
}
