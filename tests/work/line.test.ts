import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { demos } from '../../src/plan/demo/demos.ts';
import { line } from '../../src/work/line.ts';
import type { Answer } from '../../src/work/question.ts';
import { ports } from './port.ts';

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

const question = (number: number) => ({ number, plan: demos[0].plan, fresh: false });

function wired() {
  const wire = ports();
  const answers: Answer[] = [];
  const onAnswer = (answer: Answer) => answers.push(answer);
  const asks = line({ start: wire.start, onAnswer, patience: 20_000 });
  return { wire, answers, asks };
}

test('no worker is started before the first question', () => {
  const { wire, asks } = wired();
  expect(wire.started).toHaveLength(0);
  asks.ask(question(1));
  expect(wire.started).toHaveLength(1);
});

test('one question is out at a time, and the newest one follows it', () => {
  const { wire, asks } = wired();
  for (const number of [1, 2, 3, 4]) asks.ask(question(number));
  expect(wire.last.asked.map(({ number }) => number)).toEqual([1]);
  wire.last.fail();
  expect(wire.last.asked.map(({ number }) => number)).toEqual([1, 4]);
  expect(wire.started).toHaveLength(1);
});

test('a worker that keeps silent is replaced and the question answered with a failure', () => {
  const { wire, answers, asks } = wired();
  asks.ask(question(1));
  asks.ask(question(2));
  vi.advanceTimersByTime(20_000);
  expect(answers).toEqual([{ kind: 'failed', number: 1, reason: 'no answer after 20 seconds' }]);
  expect(wire.started.map(({ isEnded }) => isEnded)).toEqual([true, false]);
  expect(wire.last.asked.map(({ number }) => number)).toEqual([2]);
});

test('a worker that breaks is replaced and the question answered with a failure', () => {
  const { wire, answers, asks } = wired();
  asks.ask(question(1));
  wire.last.break('out of memory');
  expect(answers).toEqual([{ kind: 'failed', number: 1, reason: 'out of memory' }]);
  asks.ask(question(2));
  expect(wire.started).toHaveLength(2);
});

test('a worker that cannot be started is a failure and not an exception', () => {
  const answers: Answer[] = [];
  const asks = line({
    start() {
      throw new Error('workers are not allowed here');
    },
    onAnswer: (answer) => answers.push(answer),
    patience: 1000,
  });
  asks.ask(question(1));
  expect(answers).toHaveLength(1);
  expect(JSON.stringify(answers)).toContain('not allowed here');
});

test('what an ended worker still says is not heard', () => {
  const { wire, answers, asks } = wired();
  asks.ask(question(1));
  const before = wire.last;
  asks.cancel();
  expect(before.isEnded).toBe(true);
  before.fail(1);
  expect(answers).toEqual([]);
});

test('cancelling leaves an idle worker alone', () => {
  const { wire, asks } = wired();
  asks.ask(question(1));
  wire.last.fail();
  asks.cancel();
  expect(wire.last.isEnded).toBe(false);
});

test('an answer in time stops the watch', () => {
  const { wire, answers, asks } = wired();
  asks.ask(question(1));
  wire.last.fail();
  vi.advanceTimersByTime(60_000);
  expect(answers).toHaveLength(1);
  expect(wire.started).toHaveLength(1);
});
