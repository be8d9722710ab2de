import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { demos } from '../../src/plan/demo/demos.ts';
import type { Plan } from '../../src/plan/schema.ts';
import type { SettleResult } from '../../src/work/caller.ts';
import { settler } from '../../src/work/caller.ts';
import { ports } from './port.ts';

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

const plan = (name: string): Plan => ({ ...demos[0].plan, name });
const warmly = { polish: false };

function wired() {
  const wire = ports();
  const heard: SettleResult[] = [];
  const asks = settler((result) => heard.push(result), {
    startWorker: wire.start,
    pause: 250,
    patience: 20_000,
  });
  return { wire, heard, asks, names: () => heard.map((result) => result.plan.name) };
}

test('of the edits that come while one is settled only the newest is settled', () => {
  const { wire, asks, names } = wired();
  for (const name of ['a', 'b', 'c']) asks.settle(plan(name), warmly);
  const port = wire.last;
  port.fail();
  port.fail();
  expect(port.asked.map((question) => question.plan.name)).toEqual(['a', 'c']);
  expect(names()).toEqual(['a', 'c']);
});

test('a plan is answered with itself and not with a copy', () => {
  const { wire, heard, asks } = wired();
  const asked = plan('a');
  asks.settle(asked, warmly);
  wire.last.fail();
  expect(heard[0]?.plan).toBe(asked);
});

test('when edits pause, the last one is settled cold by a second worker', () => {
  const { wire, heard, asks } = wired();
  asks.settle(plan('a'), warmly);
  wire.last.fail();
  vi.advanceTimersByTime(249);
  expect(wire.started).toHaveLength(1);
  vi.advanceTimersByTime(1);
  expect(wire.started).toHaveLength(2);
  expect(wire.last.last).toMatchObject({ fresh: true, plan: { name: 'a' } });
  wire.last.fail();
  expect(heard.map(({ polished }) => polished)).toEqual([false, true]);
});

test('an edit in the pause puts the cold settling off', () => {
  const { wire, asks } = wired();
  for (const name of ['a', 'b', 'c', 'd']) {
    asks.settle(plan(name), warmly);
    wire.last.fail();
    vi.advanceTimersByTime(200);
  }
  expect(wire.started).toHaveLength(1);
});

test('an edit ends the cold settling, which is not heard any more', () => {
  const { wire, asks, names } = wired();
  asks.settle(plan('a'), warmly);
  wire.last.fail();
  vi.advanceTimersByTime(250);
  const cold = wire.last;
  asks.settle(plan('b'), warmly);
  expect(cold.isEnded).toBe(true);
  cold.fail();
  expect(names()).toEqual(['a']);
});

test('a plan to polish is settled cold at once, and once', () => {
  const { wire, heard, asks } = wired();
  asks.settle(plan('a'), { polish: true });
  expect(wire.last.last.fresh).toBe(true);
  wire.last.fail();
  vi.advanceTimersByTime(10_000);
  expect(heard.map(({ polished }) => polished)).toEqual([true]);
  expect(wire.started).toHaveLength(1);
});

test('a plan to polish does not wait for the one that is being settled', () => {
  const { wire, asks, names } = wired();
  asks.settle(plan('a'), warmly);
  const before = wire.last;
  asks.settle(plan('b'), { polish: true });
  expect(before.isEnded).toBe(true);
  wire.last.fail();
  expect(names()).toEqual(['b']);
});

test('after disposing nothing is heard and every worker is ended', () => {
  const { wire, heard, asks } = wired();
  asks.settle(plan('a'), warmly);
  asks.dispose();
  wire.last.fail(1);
  vi.advanceTimersByTime(30_000);
  expect(heard).toEqual([]);
  expect(wire.started.every(({ isEnded }) => isEnded)).toBe(true);
});
