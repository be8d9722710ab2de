import fc from 'fast-check';
import { expect, test } from 'vitest';
import { jsonFault } from '../../src/plan/json.ts';
import { problemText } from '../../src/plan/problems.ts';
import type { PlanReading } from '../../src/plan/read.ts';
import { checkPlan, readPlan, writePlan } from '../../src/plan/read.ts';
import { anyDocument, anyMatDocument, tradePlan } from './plans.ts';

const anything = fc.anything({
  withBigInt: true,
  withDate: true,
  withMap: true,
  withNullPrototype: true,
  withObjectString: true,
  withSet: true,
  withSparseArray: true,
  withTypedArray: true,
});

/** Values that no key of a plan allows, but for texts of any kind and an empty `girthLine.rows`. */
const wrong = fc.oneof(
  fc.constantFrom(Number.NaN, Number.POSITIVE_INFINITY, -1, -1e-9, 1e9, 1e308, null, true, []),
  fc.constantFrom({}, 'nothing of the kind 1', [[]], Symbol('x'), () => 0, 10n),
);

function expectRefusal(reading: PlanReading): void {
  expect(reading.ok).toBe(false);
  if (reading.ok) return;
  expect(reading.problems.length).toBeGreaterThan(0);
  expect(reading.problems.length).toBeLessThanOrEqual(20);
  for (const problem of reading.problems) {
    expect(problem.found).not.toBe('');
    expect(problem.allowed).not.toBe('');
    expect(problemText(problem)).toMatch(/^bad: .+: found \P{Cc}+, allowed is \P{Cc}+$/u);
    expect(problemText(problem).length).toBeLessThan(500);
  }
}

/** Every path to a value inside `value`. */
function pathsOf(value: unknown, path: readonly string[] = []): (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [path];
  const inner = Object.entries(value).flatMap(([key, one]) => pathsOf(one, [...path, key]));
  return path.length ? [path, ...inner] : inner;
}

function place(root: unknown, path: readonly string[]): { holder: object; key: string } {
  let holder = root as object;
  for (const step of path.slice(0, -1)) holder = Reflect.get(holder, step);
  return { holder, key: path.at(-1) ?? '' };
}

function valueAt(root: unknown, path: readonly string[]): unknown {
  const { holder, key } = place(root, path);
  return Reflect.get(holder, key);
}

/** `girthLine.points.2.row` as the refusal writes it. */
function written(path: readonly string[]): string {
  const isIndex = (i: number) => path[i - 1] === 'points' || path[i - 1] === 'bands';
  return path
    .map((key, i) => (isIndex(i) ? `[${key}]` : `.${key}`))
    .join('')
    .slice(1);
}

test('2,000 plans with one wrong value are refused at that key', () => {
  const free = new Set(['notes', 'name', 'filler', 'colour']);
  const spoilt = fc.tuple(anyDocument, fc.nat(), wrong).map(([document, pick, value]) => {
    const copy = structuredClone(document);
    const paths = pathsOf(copy).filter((path) => !free.has(path.at(-1) ?? ''));
    const path = paths[pick % paths.length] ?? [];
    const { holder, key } = place(copy, path);
    Reflect.set(holder, key, value);
    return { copy, path, isEmptyRows: key === 'rows' && path[0] === 'girthLine' };
  });
  fc.assert(
    fc.property(spoilt, ({ copy, path, isEmptyRows }) => {
      const reading = checkPlan(copy, 'bad');
      if (isEmptyRows && reading.ok) return;
      expectRefusal(reading);
      const paths = reading.ok ? [] : reading.problems.map((problem) => problem.path);
      expect(paths.some((found) => found.startsWith(written(path)))).toBe(true);
    }),
    { numRuns: 2000 },
  );
});

test('1,000 plans with a key that there is not are refused at that key', () => {
  const spoilt = fc.tuple(anyDocument, fc.nat(), fc.stringMatching(/^x[a-z]{1,9}$/), anything);
  fc.assert(
    fc.property(spoilt, ([document, pick, key, value]) => {
      const copy = structuredClone(document);
      const objects = [copy, ...pathsOf(copy).map((path) => valueAt(copy, path))].filter(
        (one) => typeof one === 'object' && one !== null && !Array.isArray(one),
      );
      Reflect.set(objects[pick % objects.length] as object, key, value);
      const reading = checkPlan(copy, 'bad');
      expectRefusal(reading);
      expect(!reading.ok && reading.problems.some(({ path }) => path.endsWith(key))).toBe(true);
    }),
    { numRuns: 1000 },
  );
});

test('1,000 plans with a required key left out are refused', () => {
  const required = ['format', 'version', 'name', 'base', 'bands', 'girthLine'];
  const inBase = ['kind', 'lengthwise', 'crosswise', 'stake', 'corners', 'upsett', 'centreLift'];
  fc.assert(
    fc.property(anyMatDocument, fc.constantFrom(...required, ...inBase), (document, key) => {
      const copy = structuredClone(document);
      const isInBase = inBase.includes(key);
      Reflect.deleteProperty(isInBase ? copy.base : copy, key);
      const reading = checkPlan(copy, 'bad');
      expectRefusal(reading);
      expect(!reading.ok && reading.problems[0]?.path).toBe(isInBase ? `base.${key}` : key);
    }),
    { numRuns: 1000 },
  );
});

test('1,000 values of any kind are refused', () => {
  fc.assert(
    fc.property(anything, (value) => expectRefusal(checkPlan(value, 'bad'))),
    { numRuns: 1000 },
  );
});

test('1,000 values of any kind in the dress of a plan are refused', () => {
  fc.assert(
    fc.property(anything, anything, anything, (base, bands, girthLine) => {
      const dressed = { format: 'girthline', version: 1, name: 'x', base, bands, girthLine };
      expectRefusal(checkPlan(dressed, 'bad'));
    }),
    { numRuns: 1000 },
  );
});

test('1,000 texts of any kind are refused', () => {
  fc.assert(
    fc.property(fc.oneof(fc.string({ unit: 'binary' }), fc.json()), (text) => {
      expectRefusal(readPlan(text, 'bad'));
    }),
    { numRuns: 1000 },
  );
});

/** A written plan with one character taken out, put in, or changed. */
const typo = fc
  .tuple(
    fc.nat(),
    fc.constantFrom(0, 1),
    fc.constantFrom(
      '',
      '"',
      '{',
      '}',
      '[',
      ']',
      ',',
      ':',
      '\\',
      '-',
      'e',
      '0',
      '\n',
      '\u0000',
      '1e999',
    ),
  )
  .map(([pick, taken, put]) => {
    const text = writePlan(tradePlan());
    const at = pick % text.length;
    return text.slice(0, at) + put + text.slice(at + taken);
  });

test('a plan with a slip in its text is read or refused, and never throws', () => {
  fc.assert(
    fc.property(typo, (text) => {
      const reading = readPlan(text, 'bad');
      if (!reading.ok) expectRefusal(reading);
    }),
    { numRuns: 3000 },
  );
});

test('what is not JSON is a fault, and what is JSON is none', () => {
  const texts = fc.oneof(typo, fc.json({ maxDepth: 4 }), fc.string());
  fc.assert(
    fc.property(texts, (text) => {
      const fault = jsonFault(text);
      // A key given twice or named __proto__ is JSON, and refused all the same.
      if (fault && /^every key once|a key of the design/.test(fault.allowed)) return;
      expect(fault === undefined).toBe(isJson(text));
    }),
    { numRuns: 3000 },
  );
});

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}
