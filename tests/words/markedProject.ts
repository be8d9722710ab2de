import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const here = join(import.meta.dirname, '../..');

/** The language of `mark.ts`, as its folder and its condition are called. */
export const madeUp = 'qaa';

/**
 * A copy of this project outside of it, with a second language put in as `docs/translating.md` says: a folder
 * beside `src/words/en` and a condition of package.json. `folder` is gone at the end.
 */
export function markedProject() {
  const folder = mkdtempSync(join(tmpdir(), 'girthline-words-'));
  for (const name of ['src', 'public', '.config', 'vite.config.ts', 'tsconfig.json']) {
    cpSync(join(here, name), join(folder, name), { recursive: true });
  }
  symlinkSync(join(here, 'node_modules'), join(folder, 'node_modules'), 'junction');
  const english = join(folder, 'src/words/en');
  const second = join(folder, 'src/words', madeUp);
  mkdirSync(second);
  cpSync(join(here, 'tests/words/mark.ts'), join(folder, 'src/words/mark.ts'));
  for (const file of readdirSync(english)) {
    const names = [...readFileSync(join(english, file), 'utf8').matchAll(/^export const (\w+)/gm)];
    writeFileSync(
      join(second, file),
      [
        `import * as english from '../en/${file}';`,
        `import { marked } from '../mark.ts';`,
        ...names.map(([, name]) => `export const ${name} = marked(english.${name});`),
        '',
      ].join('\n'),
    );
  }
  writeFileSync(join(second, 'language.ts'), `export const language = '${madeUp}';\n`);
  const settings = JSON.parse(readFileSync(join(here, 'package.json'), 'utf8'));
  settings.imports['#words/*'] = {
    [madeUp]: `./src/words/${madeUp}/*`,
    default: settings.imports['#words/*'],
  };
  writeFileSync(join(folder, 'package.json'), JSON.stringify(settings, null, 2));
  return { folder, [Symbol.dispose]: () => rmSync(folder, { recursive: true, force: true }) };
}
