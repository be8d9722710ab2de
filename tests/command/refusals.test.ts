import { existsSync, readdirSync } from 'node:fs';
import { expect, test, vi } from 'vitest';
import { demos } from '../../src/plan/demo/demos.ts';
import { writePlan } from '../../src/plan/read.ts';
import { runSheet, scratch } from './sheet.ts';

/** Each test starts Node anew; a busy machine may take its time. */
vi.setConfig({ testTimeout: 120_000 });

const text = writePlan(demos[0].plan);
const last = demos[0].plan.bands.reduce((rows, band) => rows + band.rows, 0);

/** The demo's text with what stands at a path replaced; `value` is JSON as it is written. */
function withValue(path: readonly (string | number)[], value: string): string {
  const document = JSON.parse(text);
  const parent = path.slice(0, -1).reduce((inside, key) => inside[key], document);
  parent[path.at(-1) ?? ''] = '@@';
  return JSON.stringify(document).replace('"@@"', value);
}

type Case = readonly [
  what: string,
  text: string | Uint8Array,
  path: string,
  found: string,
  allowed: string,
];

const cases: readonly Case[] = [
  ['an empty file', '', '', 'an empty file', 'a design document'],
  ['a file cut short', text.trimEnd().slice(0, -1), 'measured', 'the end of the file', 'a comma'],
  ['bytes that are no text', new Uint8Array([0xff, 0xfe, 0x7b]), '', 'not UTF-8', 'UTF-8'],
  ['a list', '[]', '', 'list', 'an object'],
  ['another format', withValue(['format'], '"loom"'), 'format', '"loom"', '"girthline"'],
  ['a newer version', withValue(['version'], '7'), 'version', 'version 7', 'the newest version'],
  ['a wrong type', withValue(['base', 'gap'], '"wide"'), 'base.gap', '"wide"', 'a length from 0'],
  ['not a number', withValue(['base', 'gap'], 'NaN'), 'base.gap', 'NaN', 'a number'],
  ['an infinite number', withValue(['base', 'gap'], '1e999'), 'base.gap', '', 'a length from 0'],
  ['a negative count', withValue(['base', 'crosswise'], '-3'), 'base.crosswise', '-3', 'from 2'],
  [
    'ten million rows',
    withValue(['bands', 0, 'rows'], '10000000'),
    'bands[0].rows',
    '10000000',
    '300',
  ],
  [
    'a huge strand',
    withValue(['base', 'stake', 'width'], '1e9'),
    'base.stake.width',
    '1000000000',
    '60 mm',
  ],
  ['an unknown kind', withValue(['base', 'kind'], '"star"'), 'base.kind', '"star"', '"mat"'],
  ['an unknown key', withValue(['bow'], '1'), 'bow', '', 'name'],
  [
    'a point beyond the last row',
    withValue(['girthLine', 'points', 0, 'row'], `${last + 1}`),
    'girthLine.points[0].row',
    `${last + 1}`,
    `1 to ${last}`,
  ],
  [
    'two points on one row',
    withValue(['girthLine', 'points', 1, 'row'], `${demos[0].plan.girthLine.points[0]?.row}`),
    'girthLine.points[1].row',
    'a second point',
    'one point on a row',
  ],
];

test.each(cases)('%s is refused and nothing is written', (_what, bad, path, found, allowed) => {
  using place = scratch();
  const file = place.file('bad.girthline.json', bad);
  const { status, stdout, stderr } = runSheet(file, '--out', place.out);
  expect(stderr).toContain(file);
  expect(stderr).toContain(path || 'the whole document');
  expect(stderr).toMatch(/found .+, allowed/);
  expect(stderr).toContain(found);
  expect(stderr).toContain(allowed);
  expect(stdout).toBe('');
  expect(status).toBe(2);
  expect(readdirSync(place.folder)).toEqual(['bad.girthline.json']);
});

test('a file that is not there is refused by name', () => {
  using place = scratch();
  const { status, stderr } = runSheet(`${place.folder}/none.json`, '--out', place.out);
  expect(stderr).toContain(`${place.folder}/none.json`);
  expect(stderr).toContain('no such file');
  expect(status).toBe(2);
  expect(existsSync(place.out)).toBe(false);
});

const badLines: readonly (readonly [words: readonly string[], says: string])[] = [
  [[], 'FILE'],
  [['plan.json'], 'at least one'],
  [['plan.json', 'other.json', '--json'], 'allowed is one'],
  [['plan.json', '--json', '--time'], 'allowed is one'],
  [['plan.json', '--out', ''], '--out'],
  [['plan.json', '--outt', 'x'], '--outt'],
];

test.each(badLines)('the line %j is refused', (words, says) => {
  const { status, stdout, stderr } = runSheet(...words);
  expect(stderr).toContain(says);
  expect(stdout).toBe('');
  expect(status).toBe(2);
});

test('--help says what there is and ends well', () => {
  const { status, stdout } = runSheet('--help');
  expect(stdout).toContain('--out DIR');
  expect(status).toBe(0);
});
