import { expect, test, vi } from 'vitest';
import { sheetCareWords } from '#words/sheetCare.ts';
import { papers } from '../../../src/export/pdf/page/paper.ts';
import { rulerOf } from '../../../src/export/pdf/page/ruler.ts';
import { sheetPdf, sheetPreview } from '../../../src/export/pdf/sheetPdf.ts';
import { shapeJson } from '../../../src/export/shapeJson.ts';
import { settleBasket } from '../../../src/model/settleBasket.ts';
import { demos } from '../../../src/plan/demo/demos.ts';
import type { Plan } from '../../../src/plan/schema.ts';
import { formatLength, parseLength } from '../../../src/plan/units.ts';
import { settledDemo } from '../settledDemo.ts';
import { pdfFonts, pdfInfo, pdfText, testFonts } from './poppler.ts';

vi.setConfig({ testTimeout: 60_000 });

const fonts = testFonts();
const date = new Date(2026, 2, 9);
const basket = settledDemo('in');
const bytes = await sheetPdf(basket, fonts, { date, baskets: 8 });
const text = pdfText(bytes);

/** Numbers of the chart's lines: row, then the lengths in the order of the columns, as texts. */
function chartLines(read: string): ReadonlyMap<number, readonly string[]> {
  const length = String.raw`([+−]?(?:\d+ )?\d+(?:\/\d+|\.\d+)?)`;
  const first = new RegExp(String.raw`^\s+1\s+${length}\s+${length} × ${length}\s+${length}`, 'm');
  const line = new RegExp(
    String.raw`^\s+(\d+)\s+${length}\s+${length}\s+${length} × ${length}\s+${length}`,
    'gm',
  );
  const found = new Map<number, readonly string[]>();
  const one = first.exec(read);
  if (one) found.set(1, [one[1] ?? '', '', ...one.slice(2)]);
  for (const [, row = '', ...lengths] of read.matchAll(line)) {
    if (row !== '1') found.set(Number(row), lengths);
  }
  return found;
}

/** A length of the chart in mm. */
function millimetres(plan: Plan, written: string): number {
  const parsed = parseLength(written.replace('+', ''), plan.display.unit, { signed: true });
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.mm;
}

test.each(['in', 'cm', 'mm'] as const)(
  'the chart in %s reads back as the rows of shape.json, each change as its girths subtracted',
  async (unit) => {
    const own = settledDemo(unit);
    const { rows } = shapeJson(own);
    const lines = chartLines(pdfText(await sheetPdf(own, fonts, { date })));
    expect([...lines.keys()]).toEqual(rows.map(({ row }) => row));
    const grain = { in: 25.4 / 32, cm: 0.5, mm: 0.05 }[unit] + 1e-3;
    for (const row of rows) {
      const [girth, change, length, width, height] = lines.get(row.row) ?? [];
      const [before] = lines.get(row.row - 1) ?? [];
      if (before !== undefined) {
        const onPaper = millimetres(own.plan, girth ?? '') - millimetres(own.plan, before);
        expect(millimetres(own.plan, change ?? ''), `row ${row.row}`).toBeCloseTo(onPaper, 6);
      }
      const pairs: readonly (readonly [string | undefined, number])[] = [
        [girth, row.tapeGirth],
        [length, row.length],
        [width, row.width],
        [height, row.heightSide],
      ];
      for (const [written, value] of pairs) {
        if (written === '' && row.row === 1) continue;
        const off = Math.abs(millimetres(own.plan, written ?? '') - value);
        expect(off, `row ${row.row}: ${written} for ${value}`).toBeLessThanOrEqual(grain);
      }
    }
  },
);

test('the cut list reads back as that of shape.json', () => {
  for (const { part, count, length } of shapeJson(basket).cutList) {
    const name = part.charAt(0).toUpperCase() + part.slice(1);
    const line = new RegExp(`${name}\\s+${count}\\s+${formatLength(length, 'in')}\\b`);
    expect(text).toMatch(line);
  }
});

test('the weavers together are those of the summary, to the tenth of a foot', () => {
  const [, feet] = /([\d.]+) ft together, as the summary has it/.exec(text) ?? [];
  expect(Number(feet)).toBeCloseTo(basket.summary.weaverLength / 304.8, 1);
});

test('the first page has the summary of shape.json', () => {
  const { summary } = shapeJson(basket);
  const [front = ''] = text.split('\f');
  for (const length of [
    summary.height,
    summary.rim.tapeGirth,
    summary.rim.length,
    summary.rim.width,
    summary.belly.tapeGirth,
    summary.baseLength,
  ]) {
    expect(front).toContain(formatLength(length, 'in'));
  }
  expect(front).toContain('Orchard trug');
  expect(front).toContain('2026-03-09');
});

test('every page has its number, the plan’s name and the date', () => {
  const pages = text.split('\f').filter((page) => page.trim() !== '');
  expect(pages).toHaveLength(Number(pdfInfo(bytes).get('Pages')));
  pages.forEach((page, at) => {
    expect(page).toMatch(
      new RegExp(`Orchard trug · 2026-03-09\\s+Page ${at + 1} of ${pages.length}`),
    );
  });
});

test('steps come in the order of the work, and the cautions are there', () => {
  const titles = [
    'Soak',
    'Lay out and true the base',
    'Corners',
    'Weave the rows',
    'Splices',
    'Upsett',
    'Shape by the girth line',
    'End the weaving',
    'Tuck and cut',
    'Ears',
    'Rim',
    'Lash',
    'Handle',
  ];
  const places = titles.map((title, at) => text.indexOf(`${at + 1}. ${title}`));
  expect(places.every((place) => place > 0)).toBe(true);
  expect(places).toEqual([...places].sort((one, other) => one - other));
  for (const words of [
    'away from the hand',
    'dust mask',
    'Oily rags',
    'outdoors to dry',
    'no load rating',
    'Dyes',
    'Local codes and licensed practice come first',
  ]) {
    expect(text.replace(/\s+/g, ' ')).toContain(words);
  }
});

test('a long chart repeats its headings on every page and cuts no row', async () => {
  const plan = basket.plan;
  const [band] = plan.bands;
  if (!band) throw new Error('the demo has a band');
  const long = {
    ...plan,
    bands: [{ ...band, rows: 90 }],
    girthLine: { ...plan.girthLine, points: [{ row: 90, girth: 700 }] },
  };
  const read = pdfText(await sheetPdf(settleBasket(long), fonts, { date }));
  const charts = read.split('\f').filter((page) => page.includes('As woven'));
  expect(charts).toHaveLength(3);
  expect([...chartLines(read).keys()]).toEqual(Array.from({ length: 90 }, (_, at) => at + 1));
});

test('paper is Letter for inches and A4 for the rest, or as asked', async () => {
  const size = (file: Uint8Array) => pdfInfo(file).get('Page size');
  expect(size(bytes)).toContain('letter');
  expect(size(await sheetPdf(settledDemo('cm'), fonts, { date }))).toContain('A4');
  expect(size(await sheetPdf(basket, fonts, { date, paper: 'a4' }))).toContain('A4');
});

test('fonts are embedded, subset and readable, and the file is small', () => {
  const found = pdfFonts(bytes);
  expect(found).toHaveLength(2);
  for (const font of found) {
    expect(font).toMatchObject({ embedded: 'yes', subset: 'yes', unicode: 'yes' });
  }
  expect(bytes.length).toBeLessThan(1_000_000);
  expect(pdfInfo(bytes).get('Title')).toBe('Orchard trug');
});

test('the same basket and date give the same bytes', async () => {
  expect(await sheetPdf(basket, fonts, { date, baskets: 8 })).toEqual(bytes);
});

test('a name in any letters is drawn as far as the font goes', async () => {
  const plan = { ...basket.plan, name: 'Košík Καλάθι Корзина 籠\n\u0007' };
  const read = pdfText(await sheetPdf({ ...basket, plan }, fonts, { date }));
  expect(read).toContain('Košík Καλάθι Корзина □');
});

test.each(papers)(
  'on %s every page of every demo’s sheet is filled to more than a third',
  (paper) => {
    for (const { plan } of demos) {
      const own = settleBasket(plan);
      for (const baskets of [1, 8]) {
        const pages = sheetPreview(own, rulerOf(fonts), { date, paper, baskets });
        expect(pages.length, plan.name).toBeLessThanOrEqual(5);
        pages.forEach(({ marks, height }, at) => {
          // without the foot line and its two texts
          const ends = marks
            .slice(0, -3)
            .flatMap((mark) =>
              mark.kind === 'text' ? [mark.y] : mark.points.filter((_, place) => place % 2 === 1),
            );
          const lowest = ends.reduce((most, y) => Math.max(most, y), 0);
          expect(lowest / height, `${plan.name}, page ${at + 1}`).toBeGreaterThan(1 / 3);
        });
      }
    }
  },
);

test('the note of the cut list stays on its page', () => {
  for (const paper of papers) {
    for (const { plan } of demos) {
      const pages = sheetPreview(settleBasket(plan), rulerOf(fonts), { date, paper });
      const has = (start: string) =>
        pages.findIndex(({ marks }) =>
          marks.some((mark) => mark.kind === 'text' && mark.text.startsWith(start)),
        );
      expect(has('Cut lengths are rounded up'), plan.name).toBe(has('Cut list'));
    }
  }
});

test.each(demos)(
  'the sheet of the $title has every caution, and its steps name those that it needs',
  async ({ plan }) => {
    const file = await sheetPdf(settleBasket(plan), fonts, { date });
    const read = pdfText(file).replace(/\s+/g, ' ');
    for (const caution of sheetCareWords.cautions) expect(read).toContain(caution);
    expect(read).toContain('Take care');
    const isDyed = plan.bands.some(({ colour }) => colour !== 'natural');
    expect(read.includes('see Dyes under Take care')).toBe(isDyed);
    expect(read.includes('see Handle under Take care')).toBe(plan.handle.kind !== 'none');
    expect(file.length).toBeLessThan(1_000_000);
  },
);

test('a plan without dyed strand and without a handle is not sent to their cautions', () => {
  const bands = basket.plan.bands.map((band) => ({ ...band, colour: 'natural' as const }));
  const plain = { ...basket.plan, bands, handle: { kind: 'none' as const } };
  const pages = sheetPreview(settleBasket(plain), rulerOf(fonts), { date });
  const texts = pages.flatMap(({ marks }) =>
    marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])),
  );
  expect(texts.join(' ')).not.toMatch(/see (Dyes|Handle) under/);
  expect(texts.join(' ')).toContain('Local codes and licensed practice come first');
});

test('what was measured at the bench stands in the chart, as woven', async () => {
  const measured = { 5: 25.4 * 25.125, 9: 25.4 * 26.375 };
  const own = { ...basket, plan: { ...basket.plan, measured } };
  const lines = pdfText(await sheetPdf(own, fonts, { date })).split('\n');
  expect(lines.filter((line) => /^\s+5\s.* 25 1\/8\b/.test(line))).toHaveLength(1);
  expect(lines.filter((line) => /^\s+9\s.* 26 3\/8\b/.test(line))).toHaveLength(1);
});
