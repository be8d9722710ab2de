/** A number that stands for one thing is the same wherever it is read. */
import { expect, test } from 'vitest';
import { projectFonts } from '../../src/command/printed.ts';
import { outlinesSvg } from '../../src/export/outlinesSvg.ts';
import { rulerOf } from '../../src/export/pdf/page/ruler.ts';
import { sheetPreview } from '../../src/export/pdf/sheetPdf.ts';
import { measures } from '../../src/model/compare/measures.ts';
import { settleBasket } from '../../src/model/settleBasket.ts';
import { capacityText } from '../../src/plan/capacity.ts';
import { demos } from '../../src/plan/demo/demos.ts';
import { measureText } from '../../src/plan/measureText.ts';
import { units } from '../../src/plan/schema.ts';
import { formatLength } from '../../src/plan/units.ts';

const ruler = rulerOf(projectFonts());
const date = new Date(2026, 2, 9);

/** All that stands on the sheet of a demo in `unit`, and the basket it is of. */
function readSheet(plan: (typeof demos)[number]['plan'], unit: (typeof units)[number]) {
  const basket = settleBasket({ ...plan, display: { unit } });
  const pages = sheetPreview(basket, ruler, { date });
  const texts = pages.flatMap(({ marks }) =>
    marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])),
  );
  return { basket, texts, length: (mm: number) => formatLength(mm, unit) };
}

test.each(demos)(
  'the height of the $title is one number in all its drawings and lists',
  ({ plan }) => {
    for (const unit of units) {
      const { basket, texts, length } = readSheet(plan, unit);
      const { height, heightWithRim } = basket.summary;
      expect(texts).toContain(`${length(height)} · ${length(heightWithRim)}`);
      expect(texts.filter((text) => text === `wall ${length(height)}`)).toHaveLength(2);
      expect(texts.join(' ')).toContain(`the wall stands ${length(height)} over the table`);
      expect(outlinesSvg(basket).split(`wall ${length(height)}<`)).toHaveLength(3);
      const compared = measures(basket, basket).find(({ name }) => name === 'Height of the wall');
      expect(measureText('length', compared?.a ?? 0, unit)).toBe(length(height));
    }
  },
);

test.each(demos)(
  'girths, sizes and capacity of the $title are the same wherever they stand',
  ({ plan }) => {
    for (const unit of units) {
      const { basket, texts, length } = readSheet(plan, unit);
      const { belly, rim, capacity, baseLength, baseWidth } = basket.summary;
      const svg = outlinesSvg(basket);
      expect(texts).toContain(length(rim.tapeGirth));
      expect(texts).toContain(`${length(belly.tapeGirth)} at row ${belly.row}`);
      expect(texts).toContain(capacityText(capacity, unit));
      for (const across of [rim.length, rim.width]) {
        expect(texts).toContain(`rim ${length(across)}`);
        expect(svg).toContain(`rim ${length(across)}<`);
      }
      expect(texts).toContain(`Side · base ${length(baseLength)} long`);
      expect(texts).toContain(`End · base ${length(baseWidth)} wide`);
      const told = measureText('capacity', capacity, unit);
      const isLarger = unit === 'in' && !capacityText(capacity, unit).endsWith('qt');
      if (!isLarger) expect(told.split(' ')[0]).toBe(capacityText(capacity, unit).split(' ')[0]);
    }
  },
);
