import { expect, test } from 'vitest';
import type { Bench } from '../../../src/model/replan/atTheBench.ts';
import { atTheBench } from '../../../src/model/replan/atTheBench.ts';
import { findingsAhead } from '../../../src/model/replan/coming.ts';
import { packingFactor, rowsToHeight, topOfRow } from '../../../src/model/replan/height.ts';
import { tapeOver } from '../../../src/model/replan/woven.ts';
import { shapeMemory } from '../../../src/model/settle/settlePlan.ts';
import { settleBasket } from '../../../src/model/settleBasket.ts';
import { basket, last, plan, planned } from './demo.ts';

const fresh: Bench = {
  plan,
  done: 0,
  measured: {},
  backOver: null,
  keepsBelly: true,
  rim: null,
  limits: null,
  added: null,
  taken: null,
  packing: 1,
  over: tapeOver(basket.rows),
  plannedOver: tapeOver(basket.rows),
};
const tapeAt = (row: number) => basket.rows[row - 1]?.tapeGirth ?? Number.NaN;

test('an untouched basket is woven to its plan', () => {
  const { course, replan, isTaken } = atTheBench({ ...fresh, done: 7 });
  expect(isTaken).toBe(false);
  expect([...course]).toEqual([...planned]);
  expect([...replan.girths]).toEqual([...planned]);
});

test('the belly that is aimed at is the belly of the settled plan, whatever is measured', () => {
  const { belly } = basket.summary;
  // the row that is widest in the middle of the wall is another one
  expect(planned.indexOf(Math.max(...planned))).not.toBe(belly.row);
  const measured = { 12: tapeAt(12) + 28.6 };
  for (const woven of [{}, { done: 12, measured }, { done: belly.row - 1 }]) {
    expect(atTheBench({ ...fresh, ...woven }).belly).toBe(belly.row);
  }
  expect(atTheBench({ ...fresh, done: belly.row }).belly).toBeNull();
});

test('the basket on the table measures what was measured, and its rim what was planned', () => {
  const measured = { 4: 0.985 * tapeAt(4), 10: 0.975 * tapeAt(10), 16: 0.97 * tapeAt(16) };
  const memory = shapeMemory();
  let over = fresh.over;
  let table = basket;
  for (let round = 0; round < 4; round++) {
    table = settleBasket(atTheBench({ ...fresh, done: 16, measured, over }).table, memory);
    over = tapeOver(table.rows);
  }
  for (const [row, girth] of Object.entries(measured)) {
    expect(Math.abs((table.rows[Number(row) - 1]?.tapeGirth ?? 0) - girth)).toBeLessThan(0.5);
  }
  expect(Math.abs(table.summary.rim.tapeGirth - basket.summary.rim.tapeGirth)).toBeLessThan(1);
});

test('what was taken over is woven to, and stays when a row more is done', () => {
  const measured = { 16: 0.97 * tapeAt(16) };
  const first = atTheBench({ ...fresh, done: 16, measured });
  const taken = [...first.replan.girths];
  const next = atTheBench({ ...fresh, done: 17, measured, taken });
  expect(next.isTaken).toBe(true);
  expect(next.course[17]).toBeCloseTo(taken[17] ?? 0, 9);
  expect(next.replan.rim.reached).toBeCloseTo(planned[last] ?? 0, 6);
});

test('rows added after row 20 leave the rows up to there as they were, and the rim too', () => {
  const added = { from: 20, rows: 3 };
  const { planned: longer, laid } = atTheBench({ ...fresh, done: 20, added });
  expect(longer).toHaveLength(last + 4);
  expect([...longer.slice(0, 21)]).toEqual([...planned.slice(0, 21)]);
  expect(longer[last + 3]).toBeCloseTo(planned[last] ?? 0, 6);
  expect(laid.bands.at(-1)?.rows).toBe((plan.bands.at(-1)?.rows ?? 0) + 3);
});

test('a measured height gives the packing, and the settled basket stands as high', () => {
  const height = topOfRow(basket, 20) + 6;
  const packing = packingFactor(basket, 20, height);
  expect(packing).toBeGreaterThan(1);
  const table = settleBasket(atTheBench({ ...fresh, done: 20, packing }).table);
  expect(Math.abs(topOfRow(table, 20) - height)).toBeLessThan(1);
});

test('a wanted height takes so many rows more, none where the basket has it', () => {
  expect(rowsToHeight(basket, basket.summary.height)).toBe(0);
  const rows = rowsToHeight(basket, basket.summary.height + 20);
  const table = settleBasket(atTheBench({ ...fresh, added: { from: 0, rows } }).table);
  expect(Math.abs(table.summary.height - basket.summary.height - 20)).toBeLessThan(4);
});

test('gaps that close below the width of the strand are foretold with their first row', () => {
  const { table } = atTheBench({ ...fresh, done: 10, rim: 0.68 * tapeAt(last) });
  const ahead = findingsAhead(settleBasket(table), 10).find(({ kind }) => kind === 'gaps-narrow');
  expect(ahead?.row).toBeGreaterThan(10);
  expect(ahead?.text).toContain(`row ${ahead?.row}`);
  expect(findingsAhead(basket, 10).some(({ kind }) => kind === 'gaps-narrow')).toBe(false);
});

test('a limit that is set holds in every row to come, and the usual ones where none is', () => {
  const measured = { 12: 0.9 * tapeAt(12) };
  const limits = { lean: 85, perGap: 0.4 };
  const changes = (bench: Partial<Bench>) => {
    const { replan, planned: own } = atTheBench({ ...fresh, done: 12, measured, ...bench });
    const rows = Array.from({ length: last - 12 }, (_, index) => 13 + index);
    return rows.map((row) => ({
      change: Math.abs((replan.girths[row] ?? 0) - (replan.girths[row - 1] ?? 0)),
      own: Math.abs((own[row] ?? 0) - (own[row - 1] ?? 0)),
    }));
  };
  const most = limits.perGap * basket.summary.ends;
  for (const { change, own } of changes({ limits })) {
    expect(change).toBeLessThanOrEqual(Math.max(most, own) + 1e-6);
  }
  const usual = Math.max(...changes({}).map(({ change }) => change));
  expect(usual).toBeGreaterThan(most);
  expect(Math.max(...changes({ limits: null }).map(({ change }) => change))).toBe(usual);
});
