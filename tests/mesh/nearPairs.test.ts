import { expect, test } from 'vitest';
import { nearPairs } from '../../src/mesh/apart/nearPairs.ts';
import { piecesOf } from '../../src/mesh/apart/pieces.ts';
import { basketStrands } from '../../src/mesh/basketStrands.ts';
import { sweepStrands } from '../../src/mesh/sweepStrands.ts';
import { demoPlan, startBasket } from './demoBasket.ts';

const { stakes, weavers } = basketStrands(startBasket(demoPlan()), { light: true });
const strands = [...stakes, ...weavers.slice(0, 6)];
const pieces = piecesOf(strands, sweepStrands(strands));
const closed = strands.map((strand) => strand.closed);

function pairs(near: number): Set<string> {
  const found = nearPairs(pieces, closed, near);
  const names = Array.from({ length: found.length / 2 }, (_, at) =>
    found
      .slice(2 * at, 2 * at + 2)
      .sort((one, other) => one - other)
      .join(),
  );
  // each pair is told once
  expect(new Set(names).size).toBe(names.length);
  return new Set(names);
}

test('pieces that come very near each other are among those that come near', () => {
  const [near, nearer] = [pairs(0.5), pairs(0.1)];
  expect(nearer.size).toBeGreaterThan(1000);
  expect(near.size).toBeGreaterThan(nearer.size);
  expect([...nearer].filter((pair) => !near.has(pair))).toEqual([]);
});

test('thin strands in a large basket are not looked up in more cubes than there is memory for', () => {
  // a hundredth of a thin shaving: by cubes of seventy times that there would be 10¹³ of them
  const found = pairs(1e-4);
  expect(found.size).toBeGreaterThan(1000);
  const near = pairs(0.1);
  expect([...found].filter((pair) => !near.has(pair))).toEqual([]);
});
