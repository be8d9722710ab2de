/** Writing several files so that a reader sees each one whole or not at all. */
import { mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Writes each content to its name in `folder`, which is made where it is missing. All are written
 * beside their places first and then moved there. Throws if one cannot be written; then none is.
 */
export function writeAll(
  folder: string,
  contents: Readonly<Record<string, string | Uint8Array>>,
): void {
  const made = mkdirSync(folder, { recursive: true });
  const files = Object.entries(contents).map(([name, content]) => ({
    content,
    place: join(folder, name),
    beside: join(folder, `.${name}.${process.pid}.part`),
  }));
  try {
    for (const { beside, content } of files) writeFileSync(beside, content, { flush: true });
    for (const { beside, place } of files) renameSync(beside, place);
  } catch (error) {
    for (const { beside } of files) rmSync(beside, { force: true });
    if (made !== undefined) rmSync(made, { recursive: true, force: true });
    throw error;
  }
}
