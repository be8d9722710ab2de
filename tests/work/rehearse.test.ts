import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { shapeMemory } from '../../src/model/settle/settlePlan.ts';
import { settleBasket } from '../../src/model/settleBasket.ts';
import { demos } from '../../src/plan/demo/demos.ts';
import type { Plan } from '../../src/plan/schema.ts';
import { rehearsal } from '../../src/work/rehearse.ts';

const { plan } = demos[0];

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

test('a rehearsal ends with the plan itself, and a drag from there comes to the same within 0.05 mm', () => {
  const memory = shapeMemory();
  const { positions } = settleBasket(plan, memory);
  const settled = Float64Array.from(positions);
  rehearsal().start(plan, memory);
  vi.runAllTimers();
  expect(memory.plan).toEqual(plan);
  const after = settleBasket(plan, memory).positions;
  const off = Math.max(...settled.map((at, index) => Math.abs(at - (after[index] ?? Number.NaN))));
  expect(off).toBeLessThan(0.05);
});

test('a question puts an end to it, and it goes on after the answer', () => {
  const memory = shapeMemory();
  settleBasket(plan, memory);
  const { work } = memory;
  const { start, end } = rehearsal();
  start(plan, memory);
  end();
  vi.runAllTimers();
  expect(memory.work === work).toBe(true);
  start(plan, memory);
  vi.advanceTimersToNextTimer();
  expect(memory.work === work).toBe(false);
});

test('a shape that did not come to rest is not rehearsed on: each round would be a whole settling', () => {
  const memory = shapeMemory();
  rehearsal().start(plan, memory);
  vi.runAllTimers();
  expect(memory.work === null).toBe(true);
});

test('what fails in a rehearsal ends it and is forgotten: the next settling is a cold one', () => {
  const memory = shapeMemory();
  settleBasket(plan, memory);
  const broken: Plan = { ...plan, bands: [] };
  rehearsal().start(broken, memory);
  expect(() => vi.runAllTimers()).not.toThrow();
  expect(memory).toEqual(shapeMemory());
});
