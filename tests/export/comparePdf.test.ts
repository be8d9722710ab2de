import { PDFDocument } from 'pdf-lib';
import { expect, test } from 'vitest';
import { projectFonts } from '../../src/command/printed.ts';
import type { ComparedBaskets } from '../../src/export/compareCsv.ts';
import { comparePage } from '../../src/export/pdf/compare/comparePage.ts';
import { comparePoster } from '../../src/export/pdf/compare/comparePoster.ts';
import { girthLines } from '../../src/export/pdf/compare/girthLines.ts';
import { comparePdf } from '../../src/export/pdf/comparePdf.ts';
import type { Mark } from '../../src/export/pdf/page/mark.ts';
import { papers } from '../../src/export/pdf/page/paper.ts';
import { rulerOf } from '../../src/export/pdf/page/ruler.ts';
import { differences } from '../../src/model/compare/differences.ts';
import { measures } from '../../src/model/compare/measures.ts';
import { changeBands } from '../../src/plan/rescale.ts';
import type { Plan } from '../../src/plan/schema.ts';
import { formatLength, parseLength } from '../../src/plan/units.ts';
import { basketOf, flared, jar, trug } from '../model/compare/baskets.ts';

const fonts = projectFonts();
const ruler = rulerOf(fonts);
const [low] = trug.bands;
const high: Plan = changeBands(trug, low ? [{ ...low, rows: 110 }] : trug.bands);

function compared(other: Plan, by: 'row' | 'height'): ComparedBaskets {
  const [a, b] = [basketOf(trug), basketOf(other)];
  return { a, b, differences: differences(a, b, by, 'in'), measures: measures(a, b) };
}

test('the comparison is one page with real text', async () => {
  const wish = { date: new Date('2026-03-09T10:00:00Z') };
  const bytes = await comparePdf(compared(flared, 'row'), fonts, wish);
  const file = await PDFDocument.load(bytes);
  expect(file.getPageCount()).toBe(1);
  expect(file.getTitle()).toBe('Orchard trug and Orchard trug');
  expect(await comparePdf(compared(flared, 'row'), fonts, wish)).toEqual(bytes);
});

test.each(papers)('on %s nothing leaves the page, whatever is compared', (paper) => {
  for (const other of [flared, jar, high]) {
    for (const by of ['row', 'height'] as const) {
      const { width, height, marks } = comparePage(compared(other, by), ruler, paper, '2026-03-09');
      for (const [x, y] of placesOf(marks)) {
        expect(x).toBeGreaterThan(5);
        expect(x).toBeLessThan(width - 5);
        expect(y).toBeGreaterThan(5);
        expect(y).toBeLessThan(height - 5);
      }
    }
  }
});

test('every row is printed with the difference of the two girths beside it', () => {
  const reading = compared(flared, 'row');
  const { marks } = comparePage(reading, ruler, 'letter', '2026-03-09');
  const texts = marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
  const bare = { withUnit: false };
  for (const { place, a, b } of reading.differences.places) {
    const line = [`${place}`, formatLength(a, 'in', bare), formatLength(b, 'in', bare)];
    const [found = -1, ...others] = placesIn(texts, line);
    expect(others).toEqual([]);
    const read = [2, 1].map((at) => parseLength(texts[found + at] ?? '', 'in'));
    const change = parseLength(texts[found + 3] ?? '', 'in', { signed: true });
    const [greater, less] = read.map((one) => (one.ok ? one.mm : Number.NaN));
    expect(change.ok && change.mm).toBeCloseTo((greater ?? 0) - (less ?? 0), 6);
  }
});

test('the axes of the girth lines name their unit, and their numbers are round and evenly spaced', () => {
  for (const by of ['row', 'height'] as const) {
    const { differences: read } = compared(jar, by);
    const marks = girthLines(read, 'in', ruler, [15, 20, 80, 70]);
    const written = marks.flatMap((mark) => (mark.kind === 'text' ? [mark] : []));
    const texts = written.map(({ text }) => text);
    expect(texts).toContain('tape girth, in');
    expect(texts).toContain(by === 'row' ? 'row' : 'height over the table, in');
    // the numbers under the plot stand on one line
    const lowest = Math.max(...written.filter(({ text }) => /^\d+$/.test(text)).map(({ y }) => y));
    const girths = written.filter(({ y, text }) => y === lowest && /^\d/.test(text));
    const numbers = girths.map(({ text }) => Number(text));
    const steps = new Set(numbers.slice(1).map((girth, at) => girth - (numbers[at] ?? 0)));
    expect(numbers.length).toBeGreaterThanOrEqual(3);
    expect([...steps]).toHaveLength(1);
    expect(numbers.every(Number.isInteger)).toBe(true);
  }
});

test('under each outline stand base, rim and wall of both plans, as the summary has them', () => {
  const reading = compared(flared, 'row');
  const { marks } = comparePage(reading, ruler, 'letter', '2026-03-09');
  const texts = marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
  for (const [letter, { summary }] of [
    ['A', reading.a],
    ['B', reading.b],
  ] as const) {
    const length = (mm: number) => formatLength(mm, 'in');
    const wall = length(summary.height);
    for (const [base, rim] of [
      [summary.baseLength, summary.rim.length],
      [summary.baseWidth, summary.rim.width],
    ] as const) {
      expect(texts).toContain(
        `${letter}: base ${length(base)}, rim ${length(rim)}, wall ${wall} high`,
      );
    }
  }
});

test('the picture has a place for the stage, or the outlines where there is none', () => {
  const reading = compared(jar, 'height');
  const withStage = comparePoster(reading, ruler, 1.8, '2026-03-09');
  const without = comparePoster(reading, ruler, null, '2026-03-09');
  expect(withStage.pictures).not.toBeNull();
  expect(without.pictures).toBeNull();
  expect(without.marks.length).toBeGreaterThan(withStage.marks.length);
});

/** Where `line` stands in `texts`, one after the other. */
function placesIn(texts: readonly string[], line: readonly string[]): number[] {
  return texts.flatMap((_, at) => (line.every((text, k) => texts[at + k] === text) ? [at] : []));
}

/** Ends of every line and text, x and y, mm. */
function placesOf(marks: readonly Mark[]): (readonly [number, number])[] {
  return marks.flatMap((mark) => {
    if (mark.kind === 'line') {
      const { points } = mark;
      return points.flatMap((x, at) => (at % 2 === 0 ? [[x, points[at + 1] ?? 0] as const] : []));
    }
    const long = ruler.width(mark.text, mark.size, mark.bold);
    return [[mark.x, mark.y] as const, [mark.x + long, mark.y] as const];
  });
}
