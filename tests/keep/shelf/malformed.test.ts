import fc from 'fast-check';
import { strToU8, zipSync } from 'fflate';
import { expect, test } from 'vitest';
import { readArchive } from '../../../src/export/archive.ts';
import { addPlans } from '../../../src/keep/shelf/shelfPlans.ts';
import { problemText } from '../../../src/plan/problems.ts';
import { readPlan, writePlan } from '../../../src/plan/read.ts';
import { anyDocument, tradePlan } from '../../plan/plans.ts';
import { emptyShelf, wholeShelf } from './shelfDesk.ts';

/** Paths to everything inside a document, but for keys that take any words or none. */
function pathsOf(value: unknown, path: readonly string[] = []): (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return path.length ? [path] : [];
  const inner = Object.entries(value).flatMap(([key, one]) => pathsOf(one, [...path, key]));
  return path.length ? [path, ...inner] : inner;
}

const takesWords = new Set(['name', 'notes', 'filler', 'colour']);
const neverAllowed = fc.constantFrom<unknown>(-1, -1e-9, 1e9, 1e308, null, true, [[]], 'no such');

/** A document with one value that no key allows. */
const oneWrong = fc.tuple(anyDocument, fc.nat(), neverAllowed).map(([document, pick, value]) => {
  const copy = structuredClone(document);
  const paths = pathsOf(copy).filter((path) => !takesWords.has(path.at(-1) ?? ''));
  const path = paths[pick % paths.length] ?? [];
  let holder: object = copy;
  for (const step of path.slice(0, -1)) holder = Reflect.get(holder, step);
  Reflect.set(holder, path.at(-1) ?? '', value);
  return JSON.stringify(copy);
});

const required = ['format', 'version', 'name', 'base', 'bands', 'girthLine'];
const oneLess = fc.tuple(anyDocument, fc.constantFrom(...required)).map(([document, key]) => {
  return JSON.stringify({ ...document, [key]: undefined });
});
const oneMore = fc
  .tuple(anyDocument, fc.stringMatching(/^x[a-z]{1,9}$/), fc.jsonValue())
  .map(([document, key, value]) => JSON.stringify({ ...document, [key]: value }));
const newer = fc.tuple(anyDocument, fc.integer({ min: 2 })).map(([document, version]) => {
  return JSON.stringify({ ...document, version });
});

const whole = writePlan(tradePlan()).trimEnd();
const cutShort = fc.nat({ max: whole.length - 1 }).map((end) => whole.slice(0, end));
const spoilt = fc
  .tuple(fc.nat({ max: whole.length - 1 }), fc.nat({ max: 31 }))
  .map(([at, code]) => {
    return whole.slice(0, at) + String.fromCharCode(code % 9) + whole.slice(at);
  });

const malformed = fc.oneof(
  { arbitrary: oneWrong, weight: 6 },
  { arbitrary: oneLess, weight: 2 },
  { arbitrary: oneMore, weight: 2 },
  { arbitrary: newer, weight: 1 },
  { arbitrary: fc.json(), weight: 2 },
  { arbitrary: fc.string({ unit: 'binary' }), weight: 1 },
  { arbitrary: cutShort, weight: 2 },
  { arbitrary: spoilt, weight: 2 },
);

test('10,000 malformed documents are all refused with a path, and what is on the shelf stays as it is', async () => {
  const db = await emptyShelf();
  await addPlans(db, [{ plan: tradePlan(), versions: [], page: undefined }]);
  const before = await wholeShelf(db);
  expect(before.plans).toHaveLength(1);
  const texts = fc.sample(malformed, { numRuns: 10_000, seed: 8 });
  expect(texts).toHaveLength(10_000);
  for (let at = 0; at < texts.length; at += 500) {
    const some = texts.slice(at, at + 500);
    const files = some.map((text, index) => [`${at + index}.girthline.json`, strToU8(text)]);
    const { plans, problems } = readArchive(zipSync(Object.fromEntries(files)), 'shelf.zip');
    await addPlans(
      db,
      plans.map(({ plan }) => ({ plan, versions: [], page: undefined })),
    );
    const refused = new Set(problems.map(({ file }) => file));
    expect(refused.size).toBe(some.length);
    for (const problem of problems) {
      expect(problemText(problem)).toMatch(
        /^shelf\.zip: \d+\.girthline\.json: .+: found .+, allowed is .+$/su,
      );
    }
  }
  expect(await wholeShelf(db)).toEqual(before);
});

test('what the documents were before they were spoilt would have been taken', () => {
  fc.assert(
    fc.property(anyDocument, (document) => {
      expect(readPlan(JSON.stringify(document), 'good').ok).toBe(true);
    }),
  );
});
