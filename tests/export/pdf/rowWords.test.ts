import { expect, test } from 'vitest';
import { rowStepWords } from '#words/rowSteps.ts';
import { rowWords } from '../../../src/export/pdf/sheet/rowWords.ts';
import { quantities } from '../../../src/model/quantity/quantities.ts';
import { settleBasket } from '../../../src/model/settleBasket.ts';
import { demos } from '../../../src/plan/demo/demos.ts';
import { units } from '../../../src/plan/schema.ts';
import { shownChange } from '../../../src/plan/units.ts';

const signs = { [rowStepWords.letOut]: 1, [rowStepWords.pullIn]: -1, [rowStepWords.keep]: 0 };

test.each(demos.map(({ title, plan }) => ({ title, plan })))(
  '$title: where the sheet says let out, pull in or keep, the change beside it is +, − or 0',
  ({ plan }) => {
    const settled = settleBasket(plan);
    let said = 0;
    for (const unit of units) {
      const basket = { ...settled, plan: { ...plan, display: { unit } } };
      for (const [row, text] of rowWords(basket, quantities(basket))) {
        for (const [word, sign] of Object.entries(signs)) {
          if (!text.toLowerCase().split('; ').includes(word)) continue;
          const [before, here] = [basket.rows[row - 2], basket.rows[row - 1]];
          const change = shownChange(before?.tapeGirth ?? 0, here?.tapeGirth ?? 0, unit);
          expect(Math.sign(change), `row ${row}: ${text}, ${change} mm`).toBe(sign);
          said += 1;
        }
      }
    }
    expect(said).toBeGreaterThan(plan.girthLine.points.length > 1 ? 0 : -1);
  },
);

test('where a computed splice comes shortly before another weaver, the sheet says so', () => {
  const basket = settleBasket(demos[0].plan);
  const needs = quantities(basket);
  expect(needs.weavers[0]).toMatchObject({ last: 20 });
  expect(needs.weavers[0]?.spliceRows).toContain(20);
  const words = rowWords(basket, needs);
  expect(words.get(20)).toBe('New weaver about here, a short one: row 21 takes another');
  const first = needs.weavers[0]?.spliceRows[0] ?? 0;
  expect(words.get(first)).toMatch(/new weaver about here(;|$)/i);
});
