/** Handbooks and patterns that give rules, counts or sums. Figures in inches as published. */
import { weaverNeeds } from '../../../src/model/quantity/weavers.ts';
import { settleBasket } from '../../../src/model/settleBasket.ts';
import { baseSize } from '../../../src/plan/baseSize.ts';
import type { Weave } from '../../../src/plan/schema.ts';
import { countFit } from '../../../src/plan/weaveFacts.ts';
import type { Pattern } from './pattern.ts';
import { cut, finishedHeight, inch, mat, plain, reed, rows } from './pattern.ts';

const half = reed('flat', '1/2 in');
const two = reed('round', 'No. 2');
const four = reed('round', 'No. 4');

/** True where `weave` goes with one count of ends and not with the other. */
function goes(weave: Weave, well: number, ill: number): boolean {
  return countFit(weave, well) === 'fits' && countFit(weave, ill) !== 'fits';
}

export function lengthRules(): Pattern {
  const basket = settleBasket(
    plain({
      name: 'A base of 10 × 12',
      base: mat(10, 12, half, { length: 12 * inch, width: 10 * inch }),
      bands: [rows(12, half)],
    }),
  );
  const [need] = weaverNeeds(basket);
  return {
    number: 6,
    name: 'Rules for cutting',
    source: 'countryseat.blogspot.com, 2010',
    reading:
      '10 + 12 stakes of 1/2 flat about 1/2 apart, 12 rows of 1/2 flat; the height is the tool’s.',
    figures: [
      {
        what: 'stake: base + 2 × height + 6',
        kind: 'cut',
        published: 16 * inch + 2 * finishedHeight(basket),
        predicted: cut(basket, 'crosswise stake'),
      },
      {
        what: 'row of a 10 × 12 base',
        kind: 'cut',
        published: 48 * inch,
        predicted: need?.piece ?? 0,
      },
    ],
    rules: [],
    leftOut: 'The 185 ft a pound: it is itself the figure that the shopping list reckons with.',
  };
}

export function halfInchMat(): Pattern {
  const { gaps: _, ...base } = mat(5, 5, half, { length: 0, width: 0 });
  const plan = plain({
    name: 'Two Side Basket',
    base: { ...base, gap: inch / 2 },
    bands: [rows(1, half)],
  });
  const { length, width } = baseSize(plan.base);
  return {
    number: 13,
    name: 'Two Side Basket',
    source: 'basketpatterns.blogspot.com, 2007',
    reading: '5 stakes of 1/2 at gaps of 1/2, both ways.',
    figures: [
      { what: 'length of the base', kind: 'sum', published: 4.5 * inch, predicted: length },
      { what: 'width of the base', kind: 'sum', published: 4.5 * inch, predicted: width },
    ],
    rules: [],
    leftOut: 'A finished size: none is published.',
  };
}

export function stairBasket(): Pattern {
  const needed = (high: number) => {
    const plan = plain({
      name: 'Stair basket',
      base: mat(8, 8, half, { length: 8 * inch, width: 8 * inch }),
      bands: [{ ...rows(2 * high, half), packing: 1 }],
      allowances: { tuck: 6 * inch, splice: 4, taper: 250, waste: 0.1, usableStrand: 2400 },
    });
    return cut(settleBasket(plan), 'lengthwise stake');
  };
  return {
    number: 14,
    name: 'Stair basket',
    source: 'J. Toft, 2012',
    reading: 'Straight walls of 16 and of 8, with 6 left at each end to tuck.',
    figures: [
      { what: 'stake, whole height', kind: 'sum', published: 52 * inch, predicted: needed(16) },
      { what: 'stake, lower step', kind: 'sum', published: 36 * inch, predicted: needed(8) },
    ],
    rules: [],
    leftOut: 'The cut of 62 over the step: the tool has no stepped basket.',
  };
}

export function oblongTray(): Pattern {
  const apart = 0.75 * inch;
  const size = { length: 12 * apart + four.width, width: 8 * apart + four.width };
  const plan = plain({ name: 'Tray', base: mat(9, 13, four, size), bands: [rows(1, two)] });
  const { length, width } = baseSize(plan.base);
  return {
    number: 18,
    name: 'Oblong tray, Model 66',
    source: 'A. Gill, Practical Basketry, 1916',
    reading:
      '9 by 13 stakes of No. 4, 3/4 from middle to middle; the tool measures over the outer ones.',
    figures: [
      { what: 'length', kind: 'sum', published: 9 * inch, predicted: length },
      { what: 'width', kind: 'sum', published: 6 * inch, predicted: width },
    ],
    rules: [],
  };
}

/** Clear gap at the edge of a round board with this many stakes in its slot, mm. */
function gapAt(across: number, stake: ReturnType<typeof reed>, ends: number): number {
  const plan = plain({
    name: 'Slotted base',
    base: {
      kind: 'board',
      shape: 'round',
      length: across,
      thickness: 10,
      ends,
      stake,
      slot: 6,
      upsett: 'creased',
    },
    bands: [rows(4, two)],
  });
  return settleBasket(plan).rows[0]?.gapLeast ?? 0;
}

export function slottedCount(): Pattern {
  const gap = gapAt(5 * inch, reed('flat', '3/8 in'), 28);
  return {
    number: 19,
    name: 'Stakes in a slotted base',
    source: 'basketmakerscatalog.com',
    reading: 'Base 5 across, stakes of 3/8, gaps of 3/16: 28 stakes.',
    figures: [
      { what: 'gap of 28 stakes', kind: 'sum', published: (3 / 16) * inch, predicted: gap },
    ],
    rules: [
      { rule: 'one weaver goes round 27 ends and not 28', kept: goes('continuous', 27, 28) },
      { rule: 'rows that start and stop go with 28 and not 27', kept: goes('rounds', 28, 27) },
    ],
  };
}

export function stavesOnMould(): Pattern {
  const stave = { section: 'flat', width: 6, thickness: 1 } as const;
  const [fewer = 0, more = 0] = [106, 107].map((ends) => gapAt(800 / Math.PI, stave, ends));
  return {
    number: 20,
    name: 'Staves on a mould',
    source: 'argoknot.com',
    reading: '800 mm round, staves of 6 mm, 1.5 mm from one to the next.',
    figures: [{ what: 'gap of 106 staves', kind: 'sum', published: 1.5, predicted: fewer }],
    rules: [{ rule: '106 staves leave 1.5 mm and 107 do not', kept: fewer >= 1.5 && more < 1.5 }],
  };
}

export function slackAndTension(): Pattern {
  const woven = (last: number) => {
    const base = {
      kind: 'wheel',
      spokes: 12,
      stake: four,
      hub: inch,
      diameter: 6 * inch,
      upsett: 'rolled',
      centreLift: 0,
    } as const;
    const bands = [rows(30, two)];
    const basket = settleBasket(
      plain({ name: 'Girth line', base, bands }, { '30': last * Math.PI * inch }),
    );
    const [start, end] = [basket.rows[0], basket.rows.at(-1)];
    return { lean: end?.lean ?? 0, parted: (end?.gapLeast ?? 0) - (start?.gapLeast ?? 0) };
  };
  const [tense, even, slack] = [woven(5), woven(6), woven(7)];
  return {
    number: 22,
    name: 'Tension and slack',
    source: 'L. W. Turner, The Basket Maker, 1909',
    reading: 'Tension is girth taken out row by row, slack is girth let in.',
    figures: [],
    rules: [
      { rule: 'tension brings the stakes together', kept: tense.parted < 0 && tense.lean < 0 },
      { rule: 'slack lets them flare', kept: slack.parted > 0 && slack.lean > 0 },
      { rule: 'neither gives a straight wall, within 0.1°', kept: Math.abs(even.lean) < 0.1 },
    ],
  };
}

/** Rows of the table that give no figure to compare; what they ask of the count of ends is checked. */
export const withoutFigures: readonly Pattern[] = [
  {
    number: 7,
    name: 'Basket with small side handles',
    source: 'M. White, How to Make Baskets, 1902',
    reading: '8 spokes and a half one give 17 ends.',
    figures: [],
    rules: [{ rule: 'one weaver goes round 17 ends and not 16', kept: goes('continuous', 17, 16) }],
    leftOut:
      'The 7 1/4 across the top and any height: neither the rows nor the length of a weaver are published.',
  },
  {
    number: 8,
    name: 'Scrap basket',
    source: 'M. White, How to Make Baskets, 1902',
    reading: 'A bowl over a base of 5 3/4, 35 round at the widest.',
    figures: [],
    rules: [],
    leftOut: 'All of it: the girth of 35 is what a maker would type in, and no rows are published.',
  },
  {
    number: 9,
    name: 'Bye-stakes',
    source: 'L. W. Turner, The Basket Maker, 1909',
    reading: 'Twice the finished height and about 6 more.',
    figures: [],
    rules: [],
    leftOut: 'All of it: half of such a stake goes into a woven border, which the tool has not.',
  },
  {
    number: 17,
    name: 'Rush scrap basket, Model 58',
    source: 'A. Gill, Practical Basketry, 1916',
    reading: '31 stakes on a wheel of 7 1/2, flared to 12.',
    figures: [],
    rules: [{ rule: 'one weaver goes round 31 ends and not 30', kept: goes('continuous', 31, 30) }],
    leftOut:
      'The height: how wide the braided rush is, is not published. The 12 across is what a maker would type in.',
  },
  {
    number: 21,
    name: 'Tuck and truing',
    source: 'countryseat.blogspot.com, 2010; prairiewoodbasketry.com, 2016',
    reading: 'A tuck goes behind 2–3 rows; a mat is trued by its diagonals.',
    figures: [],
    rules: [],
    leftOut: 'Both: the tuck is an input, and no base of the tool can be out of square.',
  },
];
