import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const project = fileURLToPath(new URL('../..', import.meta.url));

/** Runs the headless command as a person does, and gives back what it said. */
export function runSheet(...words: string[]) {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ['node_modules/tsx/dist/cli.mjs', 'src/command/sheet.ts', ...words],
    { cwd: project, encoding: 'utf8', maxBuffer: 64_000_000 },
  );
  return { status, stdout, stderr };
}

/** A folder for one test, gone afterwards; `file` writes a text into it and gives its path. */
export function scratch() {
  const folder = mkdtempSync(join(tmpdir(), 'girthline-sheet-'));
  return {
    folder,
    out: join(folder, 'not', 'there', 'yet'),
    file(name: string, text: string | Uint8Array) {
      const path = join(folder, name);
      writeFileSync(path, text);
      return path;
    },
    [Symbol.dispose]: () => rmSync(folder, { recursive: true, force: true }),
  };
}
