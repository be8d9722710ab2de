import { expect, test } from 'vitest';
import type { Basket } from '../../src/model/basket.ts';
import { rowCount } from '../../src/plan/counts.ts';
import { demos } from '../../src/plan/demo/demos.ts';
import type { BuildUpPort, BuildUpQuestion } from '../../src/work/buildUp.ts';
import { buildUp } from '../../src/work/buildUp.ts';

const plan = demos[0].plan;
const rows = rowCount(plan);
const basket = {} as Basket;

/** A worker that answers when it is told to. */
function port() {
  const asked: BuildUpQuestion[] = [];
  const own: BuildUpPort & { asked: readonly BuildUpQuestion[]; ended: boolean } = {
    onmessage: null,
    onerror: null,
    asked,
    ended: false,
    postMessage: (question) => asked.push(question),
    terminate() {
      own.ended = true;
    },
  };
  return own;
}

function started() {
  const worker = port();
  const heard: (number | string)[] = [];
  const stop = buildUp(
    plan,
    { onRow: (row) => heard.push(row), onFailed: (reason) => heard.push(reason) },
    () => worker,
  );
  const row = (number: number) =>
    worker.onmessage?.({ data: { kind: 'row', row: number, basket } } as MessageEvent);
  return { worker, heard, stop, row };
}

test('all rows are asked for, heard in turn, and the worker is let go after the last', () => {
  const { worker, heard, row } = started();
  expect(worker.asked[0]?.rows).toBe(rows);
  for (let number = 1; number <= rows; number += 1) row(number);
  expect(heard.length).toBe(rows);
  expect(worker.ended).toBe(true);
});

test('one that is stopped is heard no more', () => {
  const { worker, heard, stop, row } = started();
  row(1);
  stop();
  row(2);
  expect(heard).toEqual([1]);
  expect(worker.ended).toBe(true);
});

test('a row that could not be settled is named', () => {
  const { worker, heard } = started();
  worker.onmessage?.({ data: { kind: 'failed', row: 3, reason: 'no shape' } } as MessageEvent);
  expect(heard).toEqual(['row 3: no shape']);
  expect(worker.ended).toBe(true);
});
