import { spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { demos } from '../../src/plan/demo/demos.ts';
import { writePlan } from '../../src/plan/read.ts';
import type { Plan } from '../../src/plan/schema.ts';
import { pdfFonts, pdfInfo, pdfText } from '../export/pdf/poppler.ts';
import { marked, unmarked } from './mark.ts';
import { madeUp, markedProject } from './markedProject.ts';

const project = markedProject();
afterAll(() => project[Symbol.dispose]());

/** The headless command in the made-up language, chosen by its condition as Node does it. */
function sheet(...words: string[]) {
  const tsx = ['node_modules/tsx/dist/cli.mjs', `--conditions=${madeUp}`];
  const command = [...tsx, 'src/command/sheet.ts', ...words];
  return spawnSync(process.execPath, command, { cwd: project.folder, encoding: 'utf8' });
}

function fileOf(text: string): string {
  const file = join(project.folder, 'plan.girthline.json');
  writeFileSync(file, text);
  return file;
}

const made = (name: string) => readFileSync(join(project.folder, 'out', name));

const [trug] = demos;
const tray = demos.find(({ id }) => id === 'drying-tray') ?? trug;
const plans: readonly (readonly [what: string, plan: Plan])[] = [
  ['the trug', trug.plan],
  // two weavers that chase one another, and a count of ends that does not suit them
  ['a tray that cannot be woven', { ...tray.plan, oddEnd: { ...tray.plan.oddEnd, kind: 'added' } }],
];

test.each(plans)('every file made of %s in another language has that language alone', (_, plan) => {
  const file = fileOf(writePlan({ ...plan, name: '12', notes: '34' }));
  expect(sheet(file, '--out', 'out', '--baskets', '3')).toMatchObject({ status: 0, stderr: '' });
  for (const name of ['sheet.pdf', 'gauges.pdf']) {
    const text = pdfText(made(name), 'raw');
    expect(text.split('⟦').length).toBeGreaterThan(30);
    expect(unmarked(withoutPieces(text))).toBe('');
    const info = pdfInfo(made(name));
    expect(unmarked(`${info.get('Title')} ${info.get('Subject')}`)).toBe('');
    for (const font of pdfFonts(made(name))) expect(font).toMatchObject({ subset: 'yes' });
  }
  const [headings = ''] = made('rows.csv').toString().split('\r\n');
  expect(headings).toContain('⟦');
  expect(unmarked(headings)).toBe('');
  const svg = made('outlines.svg')
    .toString()
    .replace(/<style>[\s\S]*<\/style>|<[^>]*>/g, ' ');
  expect(svg).toContain('⟦');
  expect(unmarked(svg)).toBe('');
  const { cutList, findings } = JSON.parse(made('shape.json').toString());
  const told = [...cutList.map(({ part }: { part: string }) => part)];
  told.push(...findings.map(({ text }: { text: string }) => text.replace(/\{mm:[\d.]+\}/g, '')));
  expect(told.length).toBeGreaterThan(2);
  expect(unmarked(told.join(' '))).toBe('');
});

test('a plan is refused in the other language, but for keys and what stands there', () => {
  const document = JSON.parse(writePlan(trug.plan));
  const { base, bands } = document;
  const wrong = {
    ...document,
    base: { ...base, gap: 'wide', crosswise: -3, kite: 1 },
    bands: [{ ...bands[0], rows: 1e7, weave: 'plaited' }],
    handle: [],
    display: null,
  };
  const { status, stderr } = sheet(fileOf(JSON.stringify(wrong)), '--json');
  expect(status).toBe(2);
  expect(stderr.split('\n').length).toBeGreaterThan(5);
  const rest = stderr
    .replaceAll(`${project.folder}/plan.girthline.json`, '')
    .replace(/"[^"]*"/g, '')
    .replace(/⟨[\w.[\]]+⟩/g, (path) => path.replace(/[.[\]]/g, ' '));
  const left = unmarked(rest).match(/[A-Za-z]\w*/g) ?? [];
  const schema = readFileSync(
    join(import.meta.dirname, '../../docs/design-file.schema.json'),
    'utf8',
  );
  const keys = new Set([...schema.matchAll(/"(\w+)":/g)].map(([, key]) => key));
  expect(left.filter((word) => !keys.has(word)).sort()).toEqual(['kite', 'null']);
});

test('what a text takes in is no text by that, and a place in it is left free', () => {
  const words = marked({ row: (name: string) => `Row of ${name}`, place: 'By {count} rows' });
  expect(unmarked(words.row('plums'))).toBe('plums');
  expect(unmarked(words.row(words.row('3')))).toBe('');
  expect(words.place).toBe('⟦By ⟧{count}⟦ rows⟧');
  expect(unmarked('⟦Row⟧ 3 of ⟦the wall⟧')).toBe('3 of');
});

/** Names of pieces and of the crosses where they meet, as `B2` and `A1·3`. */
function withoutPieces(text: string): string {
  return text.replace(/\b[A-Z]\d(·\d)?\b/g, '');
}
