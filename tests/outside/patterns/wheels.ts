/** Published patterns on round bases. Figures in inches as published; sources in docs/agreement.md. */
import { settleBasket } from '../../../src/model/settleBasket.ts';
import { rowPitch } from '../../../src/plan/counts.ts';
import type { Pattern } from './pattern.ts';
import { cut, finishedHeight, inch, plain, reed, rows, twinedRow } from './pattern.ts';

const half = reed('flat', '1/2 in');
const two = reed('round', 'No. 2');

const wheel = { kind: 'wheel', upsett: 'rolled', centreLift: 0 } as const;

export function countryClassic(): Pattern {
  const girth = (row: number) => Math.PI * (10 + (2.5 * row) / 16) * inch;
  const plan = plain(
    {
      name: 'Country Classic Basket',
      base: {
        ...wheel,
        spokes: 16,
        stake: half,
        hub: 3 * inch,
        diameter: 10 * inch,
        centreLift: inch / 4,
      },
      bands: [rows(16, reed('flat-oval', '1/4 in')), rows(3, reed('flat', '3/8 in'))],
    },
    { '16': girth(16), '19': girth(19) },
  );
  const basket = settleBasket(plan);
  const sixteen = (basket.rows[15]?.heightSide ?? 0) + rowPitch(plan, 16) / 2;
  const high = finishedHeight(basket, inch / 2);
  const across = basket.summary.rim.length;
  return {
    number: 1,
    name: 'Country Classic Basket',
    source: 'D. Blair, Just Patterns magazine, 1994',
    reading:
      'Both sets of 8 spokes cross at the hub, 3 across; the centre is punched up 1/4. The wall opens evenly from 10 across to 12 1/2 (published: 12–13) at row 16, and so on to the rim. Rim of 1/2.',
    figures: [
      {
        what: 'height after 16 rows',
        kind: 'size',
        published: 4.25 * inch,
        predicted: sixteen,
      },
      { what: 'height', kind: 'size', published: 5.5 * inch, predicted: high },
      { what: 'across', kind: 'size', published: 13 * inch, predicted: across },
      { what: 'spoke', kind: 'cut', published: 28 * inch, predicted: cut(basket, 'spoke') },
    ],
    rules: [],
  };
}

export function fancyFeet(): Pattern {
  // Two rows flat, then four round a quarter circle, whose radius is their length × 2/π.
  const turn = (4 * twinedRow * 2) / Math.PI;
  const girth = (row: number) => {
    const wall = twinedRow * (row - 0.5);
    const up = Math.min(Math.max(0, wall - 2 * twinedRow) / turn, Math.PI / 2);
    return 2 * Math.PI * (3 * inch + Math.min(wall, 2 * twinedRow) + turn * Math.sin(up));
  };
  const points = [1, 2, 3, 4, 5, 6, 7].map((row) => [`${row}`, girth(row)] as const);
  const basket = settleBasket(
    plain(
      {
        name: 'Fancy Feet Basket',
        base: {
          kind: 'board',
          shape: 'round',
          length: 6 * inch,
          thickness: 10,
          ends: 28,
          stake: half,
          slot: inch / 4,
          upsett: 'rolled',
        },
        bands: [{ rows: 6, weave: 'twined', weaver: two }, rows(15, reed('flat', '1/4 in'))],
      },
      Object.fromEntries(points),
    ),
  );
  const at = (row: number) => basket.rows[row - 1]?.length ?? 0;
  return {
    number: 2,
    name: 'Fancy Feet Basket',
    source: 'J. Carlson (justpatterns.com)',
    reading:
      'Two twined rows lie flat round the board, four more go round a quarter circle, the wall above is upright. The slot is 1/4 deep (not published; common practice, no source).',
    figures: [
      { what: 'across after 6 rows', kind: 'size', published: 7.5 * inch, predicted: at(6) },
      { what: 'across at the rim', kind: 'size', published: 7.5 * inch, predicted: at(21) },
      {
        what: 'spoke',
        kind: 'cut',
        published: 7 * inch,
        predicted: cut(basket, 'stake'),
        because: 'the pattern leaves about 1 7/8 to tuck, the tool’s usual tuck is 2 3/4',
      },
    ],
    rules: [],
  };
}

export function snowLady(): Pattern {
  const basket = settleBasket(
    plain({
      name: 'The Snow Lady',
      base: { ...wheel, spokes: 8, stake: half, hub: 3.5 * inch, diameter: 5.75 * inch },
      bands: [rows(17, reed('flat', 7))],
    }),
  );
  const across = basket.summary.rim.length;
  return {
    number: 10,
    name: 'The Snow Lady',
    source: 'NC Basket Works',
    reading: '“Near vertical” is straight. No rim is named and none is counted.',
    figures: [
      { what: 'height', kind: 'size', published: 5 * inch, predicted: finishedHeight(basket) },
      { what: 'across the top', kind: 'size', published: 6 * inch, predicted: across },
      { what: 'spoke', kind: 'cut', published: 22 * inch, predicted: cut(basket, 'spoke') },
    ],
    rules: [],
  };
}

export function pencilBasket(): Pattern {
  // As many rows of No. 2 as 3 1/2 holds.
  const count = Math.round((3.5 * inch) / (two.width * 1.05));
  const basket = settleBasket(
    plain({
      name: 'Pencil basket, Model 4',
      base: {
        ...wheel,
        spokes: 6,
        stake: reed('round', 'No. 4'),
        hub: inch / 2,
        diameter: 2.75 * inch,
        upsett: 'creased',
      },
      oddEnd: { kind: 'added', at: 'corner' },
      bands: [{ rows: count, weave: 'continuous', weaver: two }],
    }),
  );
  const [foot, top] = [basket.rows[0]?.length ?? 0, basket.summary.rim.length];
  return {
    number: 15,
    name: 'Pencil basket, Model 4',
    source: 'A. Gill, Practical Basketry, 1916',
    reading: `The sharp turn is a crease. The published height of 3 1/2 is ${count} rows of No. 2, so that no height is compared. The half spoke is an added end.`,
    figures: [
      { what: 'across the top', kind: 'size', published: 2.75 * inch, predicted: top },
      { what: 'spoke', kind: 'cut', published: 15 * inch, predicted: cut(basket, 'spoke') },
      {
        what: 'half spoke',
        kind: 'cut',
        published: 8 * inch,
        predicted: cut(basket, 'added stake'),
      },
    ],
    rules: [
      {
        rule: 'it is as wide at the top as at the foot, within 1 %',
        kept: Math.abs(top / foot - 1) < 0.01,
      },
      { rule: '13 ends go with one weaver that goes round and round', kept: goes(basket) },
    ],
  };
}

/** True where nothing is said about the count of ends. */
function goes({ findings }: ReturnType<typeof settleBasket>): boolean {
  return findings.every(({ kind }) => kind !== 'count-of-ends');
}

export function jardiniere(): Pattern {
  const double = { section: 'flat', width: 2 * two.width, thickness: two.thickness } as const;
  const plan = plain({
    name: 'Jardiniere No. 2, Model 30',
    base: { ...wheel, spokes: 8, stake: double, hub: inch, diameter: 5 * inch },
    oddEnd: { kind: 'added', at: 'corner' },
    bands: [
      { rows: 3, weave: 'continuous', weaver: { ...double, width: 3 * two.width } },
      { rows: 30, weave: 'continuous', weaver: double },
    ],
  });
  const basket = settleBasket(plan);
  const eighteen = (basket.rows[17]?.heightSide ?? 0) + rowPitch(plan, 18) / 2;
  return {
    number: 16,
    name: 'Jardiniere No. 2, Model 30',
    source: 'A. Gill, Practical Basketry, 1916',
    reading:
      'A pair of side stakes is one stake twice as wide and goes on from a spoke; a double row is two strands of No. 2 side by side, a triple one three. How far the last 15 rows are drawn in is not published: straight.',
    figures: [
      {
        what: 'height of 15 double rows',
        kind: 'sum',
        published: 2.25 * inch,
        predicted: 15 * rowPitch(plan, 10),
      },
      { what: 'height after 18 rows', kind: 'size', published: 3 * inch, predicted: eighteen },
      { what: 'height', kind: 'size', published: 5.25 * inch, predicted: finishedHeight(basket) },
    ],
    rules: [{ rule: '17 pairs go with one weaver that goes round and round', kept: goes(basket) }],
    leftOut: 'The side stakes of 17: they are pushed into the base, and their border is woven.',
  };
}
