import papaparse from 'papaparse';
import { expect, test } from 'vitest';
import { rowsCsv } from '../../src/export/rowsCsv.ts';
import type { RowReading } from '../../src/model/basket.ts';
import type { Unit } from '../../src/plan/schema.ts';
import { units } from '../../src/plan/schema.ts';
import { parseLength, unitLength } from '../../src/plan/units.ts';
import { settledDemo } from './settledDemo.ts';

type Line = Readonly<Record<string, string>>;

/** The table as a spreadsheet program would read it. */
function readBack(unit: Unit): readonly Line[] {
  const { data, errors } = papaparse.parse<Line>(rowsCsv(settledDemo(unit)), {
    header: true,
    skipEmptyLines: true,
  });
  expect(errors).toEqual([]);
  return data;
}

const lengths: readonly (readonly [heading: string, key: keyof RowReading])[] = [
  ['tape girth', 'tapeGirth'],
  ['change from the row before', 'change'],
  ['change per stake gap', 'changePerGap'],
  ['length', 'length'],
  ['width', 'width'],
  ['height at the sides', 'heightSide'],
  ['height at the corners', 'heightCorner'],
  ['least gap between stakes', 'gapLeast'],
  ['most gap between stakes', 'gapMost'],
  ['wall so far', 'wall'],
  ['planned girth in the middle of the wall', 'girth'],
  ['reached girth in the middle of the wall', 'girthReached'],
];

test.each(units)('a CSV library reads the same numbers back, in %s', (unit) => {
  const basket = settledDemo(unit);
  const read = readBack(unit);
  expect(read.map((line) => Number(line['row (number)']))).toEqual(basket.rows.map((r) => r.row));
  for (const [index, row] of basket.rows.entries()) {
    for (const [heading, key] of lengths) {
      const mm = Number(read[index]?.[`${heading} (${unit})`]) * unitLength[unit];
      expect(Math.abs(mm - row[key]), `${heading}, row ${row.row}`).toBeLessThan(0.0051);
    }
    expect(Number(read[index]?.['lean outward (degrees)'])).toBeCloseTo(row.lean, 1);
  }
});

test('the tape girth to weave to is a fraction to the sixteenth', () => {
  const { rows } = settledDemo('in');
  for (const [index, line] of readBack('in').entries()) {
    const text = line['tape girth to weave to (in, to the nearest 1/16)'] ?? '';
    expect(text).toMatch(/^\d+( \d+\/(2|4|8|16))?$/);
    const read = parseLength(text, 'in');
    expect(read.ok && Math.abs(read.mm - (rows[index]?.tapeGirth ?? 0))).toBeLessThan(
      25.4 / 32 + 1e-9,
    );
  }
});

test('every heading says its unit', () => {
  for (const unit of units) {
    const [headings = ''] = rowsCsv(settledDemo(unit)).split('\r\n');
    const parsed = papaparse.parse<string[]>(headings).data[0] ?? [];
    expect(parsed.length).toBeGreaterThan(14);
    for (const heading of parsed)
      expect(heading).toMatch(/\((in|cm|mm|number|degrees|.*, (in|cm|mm)|(in|cm|mm), .*)\)$/);
  }
});

test('a band says its weaver, and every line ends in CRLF', () => {
  const text = rowsCsv(settledDemo('mm'));
  expect(text.endsWith('\r\n')).toBe(true);
  expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  const { section, width, thickness } = settledDemo('mm').plan.bands[0]?.weaver ?? {};
  const weaver = readBack('mm')[0]?.['weaver (width x thickness, mm)'];
  expect(weaver).toContain(`${section} ${width} x ${thickness}`);
});

test('every row is as long as the headings', () => {
  const lines = papaparse.parse<string[]>(rowsCsv(settledDemo('in')), {
    skipEmptyLines: true,
  }).data;
  expect(new Set(lines.map((line) => line.length)).size).toBe(1);
  expect(lines).toHaveLength(settledDemo('in').rows.length + 1);
});
