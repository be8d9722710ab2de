import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { expect, test } from 'vitest';
import { readArchive, writeArchive } from '../../src/export/archive.ts';
import { demos } from '../../src/plan/demo/demos.ts';
import { problemText } from '../../src/plan/problems.ts';
import { readPlan, writePlan } from '../../src/plan/read.ts';
import { fileStem } from '../../src/views/save.ts';

const [trug, pot] = demos.map(({ plan }) => plan);
if (!trug || !pot) throw new Error('two demos expected');
const bench = { chosen: '1', records: [{ id: '1', row: 4 }] };
const versions = [
  { name: 'as taught', made: 1_700_000_000_000, plan: { ...trug, notes: 'older' } },
  { name: null, made: 1_600_000_000_000, plan: { ...trug, notes: 'oldest' } },
];

test('a shelf that is saved and opened again is the same, with versions and bench', async () => {
  const plans = [
    { plan: trug, versions, bench },
    { plan: pot, versions: [], bench: undefined },
    { plan: { ...pot, notes: 'of the same name' }, versions: [], bench: undefined },
  ];
  const { plans: read, problems } = readArchive(writeArchive(plans, fileStem), 'shelf.zip');
  expect(problems).toEqual([]);
  expect(read.map(({ file: _, ...one }) => one)).toEqual(plans);
});

test('names that no file may have do no harm in an archive, and come back', async () => {
  const names = ['../../up', 'a/b', '<img src=x onerror=alert(1)>', '', 'CON', 'Trug', 'trug'];
  const plans = names.map((name) => ({
    ...{ plan: { ...trug, name: name || ' ' }, versions: [], bench: undefined },
  }));
  const bytes = writeArchive(plans, fileStem);
  const files = Object.keys(unzipSync(bytes));
  expect(new Set(files.map((file) => file.toLowerCase())).size).toBe(names.length);
  for (const file of files)
    expect(file).toMatch(/^[^/<>\\:*?"|]+\/[^/<>\\:*?"|]+\.girthline\.json$/);
  const { plans: read } = readArchive(bytes, 'shelf.zip');
  expect(read.map(({ plan }) => plan.name)).toEqual(plans.map(({ plan }) => plan.name));
});

test('plans whose names end as the folder of versions does come back too', () => {
  const plans = ['versions', 'Trug, old versions'].map((name) => ({
    ...{ plan: { ...trug, name }, versions, bench: undefined },
  }));
  const { plans: read, problems } = readArchive(writeArchive(plans, fileStem), 'shelf.zip');
  expect(problems).toEqual([]);
  expect(read.map(({ file: _, ...one }) => one)).toEqual(plans);
});

test('a plan of the archive is a plan file like any other', () => {
  const bytes = writeArchive([{ plan: trug, versions: [], bench: undefined }], fileStem);
  const [file] = Object.values(unzipSync(bytes));
  expect(readPlan(strFromU8(file ?? new Uint8Array()), '')).toEqual({ ok: true, plan: trug });
});

test('one bad plan does not stop the others, and is told by archive, file, key, found and allowed', async () => {
  const bytes = zipSync({
    'good.girthline.json': strToU8(writePlan(trug)),
    'bad.girthline.json': strToU8(writePlan(trug).replace('"mat"', '"star"')),
    'note.txt': strToU8('Dear class'),
    'in/a/folder.json': strToU8(writePlan(pot)),
  });
  const { plans, problems } = readArchive(bytes, 'class.zip');
  expect(plans.map(({ plan }) => plan.name)).toEqual([trug.name, pot.name]);
  const lines = problems.map(problemText);
  expect(lines[0]).toMatch(
    /^class\.zip: bad\.girthline\.json: base\.kind: found "star", allowed is "mat"/,
  );
  expect(lines[1]).toMatch(/^class\.zip: note\.txt: the whole document: found text that begins/);
  expect(lines).toHaveLength(2);
});

test('a file that is no archive, or half of one, is refused and is no error', async () => {
  const whole = writeArchive([{ plan: trug, versions, bench }], fileStem);
  for (const bytes of [strToU8('PK\u0003\u0004 no zip'), new Uint8Array(0), whole.slice(0, 700)]) {
    const { plans, problems } = readArchive(bytes, 'torn.zip');
    expect(plans).toEqual([]);
    expect(problems.map(problemText)).toEqual([
      'torn.zip: the whole document: found a file that cannot be unpacked, ' +
        'allowed is a shelf saved by Girthline (zip)',
    ]);
  }
});

test('of an archive with too many files the rest is left out, and that is told', () => {
  const many = Array.from({ length: 50_001 }, (_, at) => [`${at}/bench.json`, new Uint8Array(0)]);
  const files = { 'first.json': strToU8(writePlan(trug)), ...Object.fromEntries(many) };
  const { plans, problems } = readArchive(zipSync(files, { level: 0 }), 'many.zip');
  expect(plans).toHaveLength(1);
  expect(problems.map(problemText)).toEqual([
    'many.zip: the whole document: found more files, ' +
      'allowed is at most 50000 files; the rest is left out',
  ]);
});

test('a file in an archive that is longer than any plan is not unpacked', async () => {
  const bytes = zipSync({ 'big.json': new Uint8Array(5_000_000) });
  const { plans, problems } = readArchive(bytes, 'big.zip');
  expect(plans).toEqual([]);
  expect(problems[0]).toMatchObject({ file: 'big.zip: big.json', found: '5000000 bytes' });
});
