import { expect, test } from 'vitest';
import {
  chosenRecord,
  forgetBook,
  keptBook,
  pageOf,
  withChange,
  withNewRecord,
} from '../../src/keep/benchBook.ts';

function storeWith(text: string | null) {
  let kept = text;
  return {
    getItem: () => kept,
    setItem: (_key: string, value: string) => {
      kept = value;
    },
    removeItem: () => {
      kept = null;
    },
  };
}

test('a plan that is new to the bench starts at the row after the last one measured', () => {
  const record = chosenRecord(pageOf({}, 'Trug', { 4: 610, 9: 640 }));
  expect(record.row).toBe(10);
  expect(record.girths).toEqual({ 4: 610, 9: 640 });
});

test('what is kept is there again, row and measurements and all', () => {
  const store = storeWith(null);
  const page = withChange(pageOf({}, 'Trug', {}), {
    row: 17,
    girths: { 16: 655.5 },
    across: { 16: { length: 240 }, 9: { length: 230, width: 190 } },
    limits: { lean: 35, perGap: 1.2 },
    height: { row: 16, height: 81 },
    backOver: 6,
    added: { from: 16, rows: -2 },
    taken: [500, 510, 520],
  });
  store.setItem('girthline.bench', JSON.stringify({ Trug: page }));
  expect(keptBook(store)).toEqual({ Trug: page });
  forgetBook(store);
  expect(keptBook(store)).toEqual({});
});

test('two baskets of one plan keep apart', () => {
  const first = withChange(pageOf({}, 'Trug', {}), { row: 8, girths: { 7: 650 } });
  const both = withChange(withNewRecord(first), { row: 3 });
  expect(both.records.map(({ name, row }) => [name, row])).toEqual([
    ['Basket 1', 8],
    ['Basket 2', 3],
  ]);
  expect(chosenRecord({ ...both, chosen: '1' }).girths).toEqual({ 7: 650 });
});

test.each(['no JSON', 'null', '[1,2]', '{"Trug":{"records":[]}}'])(
  'a book of %s is an empty one',
  (text) => {
    expect(Object.keys(keptBook(storeWith(text)))).toEqual([]);
  },
);

test('of a damaged record what can be read is kept', () => {
  const text = JSON.stringify({
    Trug: {
      chosen: '1',
      records: [{ id: '1', row: 12, girths: { 5: 'x', 6: 640, q: 3 }, rim: -2 }],
    },
  });
  const record = chosenRecord(pageOf(keptBook(storeWith(text)), 'Trug', {}));
  expect(record).toMatchObject({ name: 'Basket 1', row: 12, girths: { 6: 640 }, rim: null });
});
