import fc from 'fast-check';
import { expect, test } from 'vitest';
import { problemText } from '../../src/plan/problems.ts';
import { checkPlan, longestText, readPlan, writePlan } from '../../src/plan/read.ts';
import { anyPlan, matOf, tradeOblong, tradePlan } from './plans.ts';

/** The lines that refuse a text. */
function refusals(text: string): string[] {
  const reading = readPlan(text, 'trug.girthline.json');
  return reading.ok ? ['accepted'] : reading.problems.map(problemText);
}

/** The lines that refuse the trade plan after `spoil` has changed it. */
// biome-ignore lint/suspicious/noExplicitAny: these tests put in what the type forbids
function refusalsAfter(spoil: (document: any) => void): string[] {
  const document = structuredClone(tradeOblong);
  spoil(document);
  return refusals(JSON.stringify(document));
}

test('a plan that is written is read back equal', () => {
  fc.assert(
    fc.property(anyPlan, (plan) => {
      expect(readPlan(writePlan(plan), 'again')).toEqual({ ok: true, plan });
    }),
  );
});

test('a plan that is read and written again is the same text', () => {
  const text = writePlan(tradePlan());
  const reading = readPlan(text, 'again');
  expect(reading.ok && writePlan(reading.plan)).toBe(text);
});

test('the order of the keys does not change what is written', () => {
  const reversed = Object.fromEntries(Object.entries(tradePlan()).reverse());
  const reading = checkPlan(reversed, 'reversed');
  expect(reading.ok && writePlan(reading.plan)).toBe(writePlan(tradePlan()));
});

test('a written plan ends in a newline', () => {
  expect(writePlan(tradePlan()).endsWith('}\n')).toBe(true);
});

test('what may be left out gets its default', () => {
  const plan = tradePlan();
  expect(plan.notes).toBe('');
  expect(plan.display).toEqual({ unit: 'in' });
  expect(matOf(plan).corners).toEqual({ kind: 'pinned', rows: 8, hold: 0, holdRows: 0 });
  expect(plan.bands[0]).toMatchObject({ packing: 1.05, colour: 'natural' });
  expect(plan.set).toEqual({ stakes: 0.5 });
  expect(plan.girthLine.rows).toEqual({});
  expect(plan.handle).toEqual({ kind: 'none' });
  expect(plan.measured).toEqual({});
});

test('points that are out of order are put in order', () => {
  const points = [
    { row: 30, girth: 500 },
    { row: 4, girth: 510 },
    { row: 9, girth: 520 },
  ];
  const { girthLine } = tradePlan({ girthLine: { points } });
  expect(girthLine.points.map(({ row }) => row)).toEqual([4, 9, 30]);
});

test('a byte order mark before the document is passed over', () => {
  expect(readPlan(`\uFEFF${writePlan(tradePlan())}`, 'marked').ok).toBe(true);
});

test('a fixed handle holds a spread', () => {
  const bow = { rise: 150, bow: { width: 12.7, thickness: 3 }, wrap: { width: 3 } };
  const handle = { kind: 'fixed', across: 'width', spread: 90, ...bow } as const;
  expect(tradePlan({ handle }).handle).toEqual(handle);
});

test('an empty file is refused', () => {
  expect(refusals('  \n')).toEqual([
    'trug.girthline.json: the whole document: found an empty file, allowed is a design document',
  ]);
});

test('a truncated file is refused with the key where it ends', () => {
  const text = writePlan(tradePlan());
  const cut = text.slice(0, text.indexOf('12.7') + 4);
  expect(refusals(cut)).toEqual([
    'trug.girthline.json: base.stake.width: found the end of the file at line 15, column 20, ' +
      'allowed is a comma or a closing bracket',
  ]);
});

test('a plan cut short anywhere is refused', () => {
  const text = writePlan(tradePlan()).trimEnd();
  for (let end = 0; end < text.length; end++) {
    expect(readPlan(text.slice(0, end), 'cut').ok).toBe(false);
  }
});

test('a text that is no JSON is refused with the place', () => {
  expect(refusals('{"format": girthline}')).toEqual([
    'trug.girthline.json: format: found girthline at line 1, column 12, ' +
      'allowed is a number, words in double quotes, or what stands in [ ] or { }',
  ]);
});

test('a text that is no plan at all is refused in words for whoever opened it', () => {
  expect(refusals('Dear class, bring your own knives.')).toEqual([
    'trug.girthline.json: the whole document: found text that begins "Dear class, bring your o…", ' +
      'allowed is a plan saved by Girthline, which begins with {',
  ]);
});

test('a list instead of an object is refused', () => {
  expect(refusals('[1, 2]')).toEqual([
    'trug.girthline.json: the whole document: found a list of 2, ' +
      'allowed is an object: a design document',
  ]);
});

test('a document of another format is refused', () => {
  expect(refusals('{"format": "mesh"}')).toEqual([
    'trug.girthline.json: format: found "mesh", allowed is "girthline"',
  ]);
});

test('a newer version is refused with both versions', () => {
  expect(refusalsAfter((document) => (document.version = 7))).toEqual([
    'trug.girthline.json: version: found version 7, ' +
      'allowed is 1, the newest version that this Girthline understands',
  ]);
});

test.each([0, -1, 'one', null, undefined])('version %j is refused', (version) => {
  const [line] = refusalsAfter((document) => (document.version = version));
  expect(line).toMatch(/: version: found .*, allowed is 1$/);
});

test('a wrong type is refused with its path', () => {
  expect(refusalsAfter((document) => (document.base.stake.width = '1/2'))).toEqual([
    'trug.girthline.json: base.stake.width: found "1/2", allowed is a length from 0.5 to 60 mm',
  ]);
});

test('a number too large for a number is refused', () => {
  const text = JSON.stringify(tradeOblong).replace('"width":12.7', '"width":1e999');
  expect(refusals(text)).toEqual([
    'trug.girthline.json: base.stake.width: found Infinity, allowed is a length from 0.5 to 60 mm',
  ]);
});

test('NaN is refused in a value and in a text', () => {
  const document = { ...tradeOblong, base: { ...tradeOblong.base, centreLift: Number.NaN } };
  const reading = checkPlan(document, 'x');
  expect(reading.ok ? [] : reading.problems).toEqual([
    { file: 'x', path: 'base.centreLift', found: 'NaN', allowed: 'a length from 0 to 200 mm' },
  ]);
  const text = JSON.stringify(tradeOblong).replace('"centreLift":15', '"centreLift":NaN');
  expect(refusals(text)[0]).toMatch(/: base\.centreLift: found NaN at line 1, column \d+, /);
});

test('ten million rows are refused', () => {
  expect(refusalsAfter((document) => (document.bands[0].rows = 1e7))).toEqual([
    'trug.girthline.json: bands[0].rows: found 10000000, allowed is a whole number from 1 to 300',
  ]);
});

test('bands with too many rows between them are refused', () => {
  const [line] = refusalsAfter((document) => {
    document.bands = [0, 1].map(() => ({ ...document.bands[0], rows: 200 }));
  });
  expect(line).toMatch(/: bands: found 400 rows in all, allowed is at most 300 rows in all$/);
});

test('negative and broken counts are refused', () => {
  for (const lengthwise of [-5, 0, 1, 2.5, 61]) {
    expect(refusalsAfter((document) => (document.base.lengthwise = lengthwise))).toEqual([
      `trug.girthline.json: base.lengthwise: found ${lengthwise}, ` +
        'allowed is a whole number from 2 to 60',
    ]);
  }
});

test('more ends than 200 are refused', () => {
  const [line] = refusalsAfter((document) => {
    Object.assign(document.base, { lengthwise: 60, crosswise: 60 });
  });
  expect(line).toMatch(/: base: found 241 ends, allowed is at most 200 ends round the wall$/);
});

test('an unknown key is refused with its path', () => {
  expect(refusalsAfter((document) => (document.base.stake.weight = 3))).toEqual([
    'trug.girthline.json: base.stake.weight: found an unknown key, ' +
      'allowed is an object with the keys section, width, thickness',
  ]);
});

test('an unknown kind is refused with the kinds there are', () => {
  expect(refusalsAfter((document) => (document.base.corners.kind = 'folded'))).toEqual([
    'trug.girthline.json: base.corners.kind: found "folded", ' +
      'allowed is "pinned", "square" or "fanned"',
  ]);
  expect(refusalsAfter((document) => (document.base.kind = 'hexagon'))).toHaveLength(1);
  expect(refusalsAfter((document) => (document.handle = { kind: 'loop' }))).toHaveLength(1);
});

test('a missing key is refused with its path', () => {
  expect(refusalsAfter((document) => delete document.base.corners.rows)).toEqual([
    'trug.girthline.json: base.corners.rows: found nothing, allowed is a whole number from 0 to 300',
  ]);
});

test('gap and gaps together are refused, and so is neither', () => {
  const gaps = { lengthwise: 5, crosswise: 5 };
  const [both] = refusalsAfter((document) => (document.base.gaps = gaps));
  expect(both).toMatch(/: base\.gap: found both of them, allowed is exactly one of/);
  const [neither] = refusalsAfter((document) => delete document.base.gap);
  expect(neither).toMatch(/: base\.gap: found neither of the two, allowed is exactly one of/);
});

test('a gap of zero is a gap', () => {
  expect(refusalsAfter((document) => (document.base.gap = 0))).toEqual(['accepted']);
});

test('rows of a square corner are refused unless they are zero', () => {
  const square = { kind: 'square', rows: 3 };
  const [line] = refusalsAfter((document) => (document.base.corners = square));
  expect(line).toMatch(/: base\.corners\.rows: found 3, allowed is 0, or left out/);
  expect(matOf(tradePlan()).corners.rows).toBe(8);
});

test('a centre pushed in by more than half the base is refused', () => {
  const [line] = refusalsAfter((document) => (document.base.centreLift = 60));
  expect(line).toMatch(/: base\.centreLift: found 60, .*half of the shorter side.* 44\.5 mm$/);
});

test('two points on one row are refused at the second as it stands in the file', () => {
  const points = [30, 4, 30].map((row) => ({ row, girth: 500 }));
  expect(refusalsAfter((document) => (document.girthLine.points = points))).toEqual([
    'trug.girthline.json: girthLine.points[2].row: found a second point on row 30, ' +
      'allowed is one point on a row',
  ]);
});

test('a point beyond the last row is refused', () => {
  const points = [{ row: 33, girth: 500 }];
  expect(refusalsAfter((document) => (document.girthLine.points = points))).toEqual([
    'trug.girthline.json: girthLine.points[0].row: found 33, ' +
      'allowed is a row from 1 to 32, the last row',
  ]);
});

test('a point on row 0 is refused, since row 0 is the base', () => {
  const points = [{ row: 0, girth: 500 }];
  const [line] = refusalsAfter((document) => (document.girthLine.points = points));
  expect(line).toMatch(/: girthLine\.points\[0\]\.row: found 0, allowed is a whole number from 1/);
});

test('a row set by hand must be a row that there is', () => {
  const [beyond] = refusalsAfter((document) => (document.girthLine.rows = { 33: 500 }));
  expect(beyond).toMatch(/: girthLine\.rows\.33: found row 33, allowed is a row from 1 to 32/);
  for (const key of ['0', '-1', '1.5', '07', 'last']) {
    const [line] = refusalsAfter((document) => (document.girthLine.rows = { [key]: 500 }));
    expect(line).toContain(`found the key "${key}", allowed is a row number as its key`);
  }
});

test('a measured row beyond the last is refused', () => {
  const [line] = refusalsAfter((document) => (document.measured = { 40: 500 }));
  expect(line).toMatch(/: measured\.40: found row 40, /);
});

test('a key given twice is refused', () => {
  const text = JSON.stringify(tradeOblong).replace('"gap":6.35', '"gap":6.35,"gap":7');
  expect(refusals(text)).toEqual([
    'trug.girthline.json: base.gap: found this key a second time, allowed is every key once',
  ]);
});

test('a key named __proto__ is refused wherever it stands', () => {
  const text = JSON.stringify(tradeOblong);
  for (const spoilt of [
    text.replace('{', '{"__proto__":{"name":"x"},'),
    text.replace('"points"', '"rows":{"__proto__":500},"points"'),
    text.replace('"lengthwise"', '"\\u005f_proto__":1,"lengthwise"'),
  ]) {
    expect(refusals(spoilt)[0]).toMatch(/__proto__: found an unknown key, /);
  }
});

test('nesting without end is refused', () => {
  const deep = '['.repeat(400_000);
  expect(refusals(deep)[0]).toMatch(/found nesting without end, allowed is at most 32 levels/);
  expect(refusals(`${'{"a":'.repeat(100_000)}1`)[0]).toMatch(/nesting without end/);
});

test('a file too long to be a plan is refused', () => {
  expect(refusals(' '.repeat(9) + '1'.repeat(longestText))[0]).toMatch(
    /found 1000009 characters, allowed is at most 1000000 characters$/,
  );
});

test('one text as long as a file may be is read to its end', () => {
  const text = `{"format":"${'x'.repeat(longestText - 20)}"}`;
  expect(refusals(text)[0]).toMatch(/: format: found "xxx.*…", allowed is "girthline"$/);
  expect(refusals(text.slice(0, -2))[0]).toMatch(/: format: found "x.* at line 1, column 11, /);
});
