import { expect, test } from 'vitest';
import { chartFrame, xOf, yOf } from '../../src/charts/chartFrame.ts';
import { freeRow, handleNear, handlesOf, keyAfterRemoval } from '../../src/charts/handles.ts';

const line = {
  points: [
    { row: 8, girth: 530 },
    { row: 18, girth: 600 },
    { row: 32, girth: 510 },
  ],
  rows: { 17: 592 },
};
const handles = handlesOf(line, 32);
const frame = chartFrame(360, 400, 32, [508, 600]);

test('a point may be moved up to the rows beside its neighbours', () => {
  expect(handles.map(({ lowest, highest }) => [lowest, highest])).toEqual([
    [1, 17],
    [9, 31],
    [19, 32],
    [17, 17],
  ]);
});

test('a press takes hold of the nearest handle in reach', () => {
  const near = handleNear(handles, frame, xOf(frame, 600) + 6, yOf(frame, 18) - 4, 20);
  expect(near?.key).toBe('point-1');
  expect(handleNear(handles, frame, frame.left, frame.top, 20)).toBeUndefined();
});

test('a new point goes into the middle of the stretch above', () => {
  expect(freeRow(line.points, 8, 32)).toBe(13);
  expect(freeRow(line.points, 0, 32)).toBe(4);
});

test('where there is no row free above, a new point goes to the highest free row', () => {
  expect(freeRow(line.points, 32, 32)).toBe(31);
  expect(freeRow([{ row: 1 }, { row: 2 }], 1, 2)).toBeNull();
});

test('after a point is removed the one below it has the focus', () => {
  const [first, second, , byHand] = handles;
  if (!first || !second || !byHand) throw new Error('four handles expected');
  expect(keyAfterRemoval(handles, second)).toBe('point-0');
  expect(keyAfterRemoval(handles, first)).toBe('point-0');
  expect(keyAfterRemoval(handles, byHand)).toBe('point-0');
  expect(keyAfterRemoval([first], first)).toBeNull();
});
