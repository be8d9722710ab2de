/** Published patterns on woven mats. Figures in inches as published; sources in docs/agreement.md. */
import { rimNeed } from '../../../src/model/quantity/rimParts.ts';
import { weaverNeeds } from '../../../src/model/quantity/weavers.ts';
import { halfWall } from '../../../src/model/read/wallThickness.ts';
import { settleBasket } from '../../../src/model/settleBasket.ts';
import { baseSize } from '../../../src/plan/baseSize.ts';
import type { Pattern } from './pattern.ts';
import { cut, finishedHeight, inch, mat, plain, reed, rows, twinedRow } from './pattern.ts';

const flat = (name: string) => reed('flat', `${name} in`);
const oval = (name: string) => reed('flat-oval', `${name} in`);

/** Of walls that come out wider than their makers let them. */
const roundsMore =
  'a hold of 0.7 leaves three tenths of each corner to the sides, which bulge by it; how sharply its maker bent the corners is not published, and the last table shows how much hangs on that';

/** A base of this many inches with `count` rows twined flat round it, mm. */
function twined(length: number, width: number, count: number) {
  const more = 2 * count * twinedRow;
  return { length: length * inch + more, width: width * inch + more };
}

export function johns(hold?: number): Pattern {
  const seven = reed('flat', 7);
  const half = [rows(3, seven), rows(1, flat('1/4')), rows(1, seven)];
  const group = [...half, rows(1, flat('1/4')), rows(1, seven), rows(1, flat('1/4'))];
  const rim = (5 / 8) * inch;
  const basket = settleBasket(
    plain({
      name: 'John’s Basket',
      base: mat(3, 7, flat('5/8'), twined(8, 2.75, 1), hold),
      bands: [...group, ...group, rows(2, seven)],
      handle: {
        kind: 'fixed',
        across: 'length',
        spread: 8 * inch,
        rise: 4 * inch,
        bow: { width: (5 / 8) * inch, thickness: 5 },
        wrap: { width: 3 },
      },
    }),
  );
  const { length, width } = basket.summary.rim;
  const [across, along] = ['crosswise stake', 'lengthwise stake'].map((part) => cut(basket, part));
  return {
    number: 3,
    name: 'John’s Basket',
    source: 'S. Moore, NC Basket Works',
    reading:
      'The handle stands in the place of the middle lengthwise stake and holds its spread of 8. One row is twined flat round the mat of 8 × 2 3/4. Straight wall, corners squared. Rim of 5/8.',
    figures: [
      { what: 'length at the top', kind: 'size', published: 8 * inch, predicted: length },
      {
        what: 'width at the top',
        kind: 'size',
        published: 4.25 * inch,
        predicted: width,
        because: roundsMore,
      },
      {
        what: 'height',
        kind: 'size',
        published: 5.75 * inch,
        predicted: finishedHeight(basket, rim),
      },
      { what: 'crosswise stake', kind: 'cut', published: 20 * inch, predicted: across ?? 0 },
      { what: 'lengthwise stake', kind: 'cut', published: 24 * inch, predicted: along ?? 0 },
    ],
    rules: [],
    leftOut: 'The fillers of 17: the tool leaves fillers in the base and cuts them to its size.',
  };
}

export function napkinBasket(): Pattern {
  const pair = [rows(1, flat('1/2')), rows(1, oval('11/64'))];
  const basket = settleBasket(
    plain({
      name: 'Harvest Napkin Basket in Square',
      base: mat(7, 7, flat('5/8'), twined(7, 7, 2)),
      bands: [...pair, ...pair, ...pair, rows(1, flat('1/2')), rows(1, flat('3/8'))],
    }),
  );
  const pieces = weaverNeeds(basket).map(({ piece }) => piece ?? 0);
  const piece = pieces.reduce((sum, one) => sum + one, 0) / pieces.length;
  const { parts, lap } = rimNeed(basket);
  const hoop = (parts.find(({ part }) => part === 'outside hoop')?.needed ?? 0) - lap + 2 * inch;
  const stake = cut(basket, 'lengthwise stake');
  return {
    number: 4,
    name: 'Harvest Napkin Basket in Square',
    source: 'The Basket Sampler',
    reading:
      'Two rows are twined flat round the mat. Seven rows begin and end with 1/2 flat. Straight wall, corners squared; the rim laps 2 as published.',
    figures: [
      { what: 'row strand', kind: 'cut', published: 35 * inch, predicted: piece },
      { what: 'rim strand', kind: 'cut', published: 35 * inch, predicted: hoop },
      { what: 'stake (19–20)', kind: 'cut', published: 19.5 * inch, predicted: stake },
    ],
    rules: [],
    leftOut: 'A finished size: none is published.',
  };
}

export function biscuitBasket(): Pattern {
  const quarter = rows(1, flat('1/4'));
  const basket = settleBasket(
    plain({
      name: 'Biscuit Basket',
      base: {
        kind: 'oval',
        lengthwise: 3,
        crosswise: 5,
        stake: flat('1/2'),
        gap: inch / 2,
        border: 2.25 * inch,
        fanned: 1,
        upsett: 'rolled',
        centreLift: 0,
      },
      bands: [
        rows(5, oval('1/4')),
        quarter,
        rows(1, flat('1')),
        quarter,
        rows(4, oval('1/4')),
        rows(1, flat('3/8')),
      ],
    }),
  );
  const [across, along] = ['crosswise stake', 'lengthwise stake'].map((part) => cut(basket, part));
  // A diagonal is two ends that fan out from crossings of the mat, 4 × 2 in apart.
  const diagonal = 2 * cut(basket, 'corner stake') + Math.hypot(4, 2) * inch;
  return {
    number: 5,
    name: 'Biscuit Basket',
    source: 'The Woven Reed, 1987 (justpatterns.com)',
    reading:
      'Gaps of 1/2, with which a border of even width makes 7 × 9 of 3 + 5 stakes. A diagonal is two ends fanned at the corners and the way between them through the mat. Straight wall.',
    figures: [
      { what: 'crosswise stake', kind: 'cut', published: 21 * inch, predicted: across ?? 0 },
      { what: 'lengthwise stake', kind: 'cut', published: 21 * inch, predicted: along ?? 0 },
      { what: 'diagonal stake', kind: 'cut', published: 26 * inch, predicted: diagonal },
    ],
    rules: [
      {
        rule: 'diagonal stakes are cut longer than the others',
        kept: diagonal > Math.max(across ?? 0, along ?? 0),
      },
    ],
    leftOut: 'A finished size: none is published.',
  };
}

export function berryBasket(hold?: number): Pattern {
  const basket = settleBasket(
    plain({
      name: 'Berry Basket',
      base: mat(5, 5, flat('5/8'), twined(6, 6, 0), hold),
      bands: [rows(6, flat('1/2')), rows(14, oval('1/4'))],
    }),
  );
  const { length, width } = basket.summary.rim;
  const stake = cut(basket, 'lengthwise stake');
  return {
    number: 11,
    name: 'Berry Basket',
    source: 'W.H. Baskets, 2017',
    reading:
      'Sides “not drawn in” is straight. The basket stays 6 × 6, so its corners count as squared, with the one hold, which lets them round by three tenths. No rim is named and none is counted.',
    figures: [
      {
        what: 'length',
        kind: 'size',
        published: 6 * inch,
        predicted: length,
        because: roundsMore,
      },
      {
        what: 'width',
        kind: 'size',
        published: 6 * inch,
        predicted: width,
        because: roundsMore,
      },
      { what: 'height', kind: 'size', published: 7 * inch, predicted: finishedHeight(basket) },
      { what: 'stake', kind: 'cut', published: 26 * inch, predicted: stake },
    ],
    rules: [],
  };
}

export function dividedBasket(hold?: number): Pattern {
  const basket = settleBasket(
    plain({
      name: 'Divided Basket',
      base: mat(11, 11, flat('1/2'), twined(10.25, 10.25, 0), hold),
      bands: [rows(10, flat('1/2'))],
    }),
  );
  const inside = basket.rows.map(
    ({ length, width, row }) => Math.min(length, width) - 4 * halfWall(basket.plan, row),
  );
  const base = baseSize(basket.plan.base).length;
  return {
    number: 12,
    name: 'Divided Basket',
    source: 'basketpatterns.blogspot.com, 2007',
    reading:
      'The mat of 10 is 10 1/4 once a row is twined round it; corners squared, straight. The rows are not counted: 10 of 1/2 are what stakes of 26 leave, so that no stake is compared.',
    figures: [
      {
        what: 'base with one twined row',
        kind: 'sum',
        published: base,
        predicted: twined(10, 10, 1).length,
      },
      {
        what: 'inside, for dividers',
        kind: 'size',
        published: 10.125 * inch,
        predicted: Math.min(...inside),
      },
    ],
    rules: [],
    leftOut: 'A height: none is published.',
  };
}
