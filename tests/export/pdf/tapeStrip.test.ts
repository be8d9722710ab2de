import { expect, test } from 'vitest';
import { glue, tapeStrip } from '../../../src/export/pdf/gauge/tapeStrip.ts';
import { rulerOf } from '../../../src/export/pdf/page/ruler.ts';
import { settledDemo } from '../settledDemo.ts';
import { testFonts } from './poppler.ts';

const ruler = rulerOf(testFonts());

test.each(['in', 'cm'] as const)('no number of the strip in %s lies over a glue tab', (unit) => {
  const basket = settledDemo(unit);
  // wherever the pieces end
  for (let width = 150; width < 200; width += 1.5) {
    const pieces = tapeStrip(basket, ruler, width);
    for (const { length, marks } of pieces) {
      for (const mark of marks) {
        if (mark.kind !== 'text' || mark.turn !== 0) continue;
        expect(mark.x).toBeGreaterThan(-0.5);
        const end = mark.x + ruler.width(mark.text, mark.size, mark.bold);
        expect(end, `${mark.text} with pieces of ${width} mm`).toBeLessThanOrEqual(length + 0.01);
      }
    }
    expect(pieces.length).toBe(Math.ceil((pieces.at(-1)?.from ?? 0) / (width - glue)) + 1);
  }
});
