import { expect, test } from 'vitest';
import { findings } from '../../../src/model/finding/findings.ts';
import { settleBasket } from '../../../src/model/settleBasket.ts';
import { demos } from '../../../src/plan/demo/demos.ts';
import { withLengths } from '../../../src/plan/lengthText.ts';
import { readingOf, squarePlan } from '../readings.ts';

const weaver = { section: 'flat', width: 5, thickness: 1.5 } as const;

test.each(demos)('$title can be woven as planned', ({ plan }) => {
  const found = settleBasket(plan).findings;
  expect(found.filter(({ severity }) => severity === 'stop')).toEqual([]);
  expect(found.filter(({ severity }) => severity === 'warn').length).toBeLessThan(3);
});

test('the gravest findings come first', () => {
  const reading = readingOf(squarePlan({ bands: [{ rows: 20, weave: 'continuous', weaver }] }));
  const settling = { ...reading.settling, converged: false, lastStep: 1 };
  const order = findings({ ...reading, settling }).map(({ severity }) => severity);
  const gravity = ['stop', 'warn', 'note'];
  expect(order).toContain('stop');
  expect(order).toContain('warn');
  expect(order).toEqual(order.toSorted((a, b) => gravity.indexOf(a) - gravity.indexOf(b)));
});

test('every text is a sentence once its lengths are written in', () => {
  const jump = { points: [{ row: 20, girth: 400 }], rows: { '10': 500 } };
  const bands = [{ rows: 20, weave: 'continuous', weaver }] as const;
  const found = findings(readingOf(squarePlan({ bands, girthLine: jump })));
  expect(found.length).toBeGreaterThan(2);
  for (const { text } of found) {
    expect(withLengths(text, 'in')).toMatch(/^[A-Z][^{}]*\.$/);
    expect(text).not.toMatch(/NaN|Infinity|undefined/);
  }
});
