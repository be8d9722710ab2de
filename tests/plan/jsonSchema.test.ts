import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { baseKinds } from '../../src/plan/base.ts';
import { jsonSchemaText } from '../../src/plan/jsonSchema.ts';
import { checkPlan, readPlan } from '../../src/plan/read.ts';
import { tradeOblong } from './plans.ts';

const file = new URL('../../docs/design-file.schema.json', import.meta.url);

test('docs/design-file.schema.json is written from the schema in the code', () => {
  const remedy = 'docs/design-file.schema.json is out of date: run `npm run docs:schema`';
  expect(readFileSync(file, 'utf8') === jsonSchemaText(), remedy).toBe(true);
});

test('docs/design-file.md names every key of the document', () => {
  const text = readFileSync(new URL('../../docs/design-file.md', import.meta.url), 'utf8');
  for (const key of keysIn(JSON.parse(jsonSchemaText()))) {
    expect(text.includes(`\`${key}\``), `the key ${key} is missing`).toBe(true);
  }
});

/** Every property name in a JSON Schema. */
function keysIn(schema: unknown): string[] {
  if (typeof schema !== 'object' || schema === null) return [];
  return Object.entries(schema).flatMap(([key, value]) =>
    key === 'properties'
      ? [...Object.keys(value as object), ...Object.values(value as object).flatMap(keysIn)]
      : keysIn(value),
  );
}

test('the example in docs/design-file.md is a plan', () => {
  const text = readFileSync(new URL('../../docs/design-file.md', import.meta.url), 'utf8');
  const example = /```json\n(.*?)```/s.exec(text)?.[1] ?? '';
  expect(readPlan(example, 'docs/design-file.md')).toMatchObject({ ok: true });
});

test('each kind of base has an example in docs/design-file.md that is one', () => {
  const text = readFileSync(new URL('../../docs/design-file.md', import.meta.url), 'utf8');
  const examples = [...text.matchAll(/```json\n(.*?)```/gs)].map(([, json = '']) =>
    JSON.parse(json),
  );
  const bases = examples.map((example) => example.base ?? example);
  expect(bases.map(({ kind }) => kind).sort()).toEqual([...baseKinds].sort());
  for (const base of bases) {
    expect(checkPlan({ ...tradeOblong, base }, 'docs/design-file.md')).toMatchObject({ ok: true });
  }
});
