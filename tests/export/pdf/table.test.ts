import { expect, test } from 'vitest';
import { projectFonts } from '../../../src/command/printed.ts';
import { Flow } from '../../../src/export/pdf/page/flow.ts';
import { paperSize } from '../../../src/export/pdf/page/paper.ts';
import { rulerOf } from '../../../src/export/pdf/page/ruler.ts';
import { table } from '../../../src/export/pdf/page/table.ts';

const ruler = rulerOf(projectFonts());

/** Rows on each page of a table of `count` rows that begins where `used` mm of the first page are used. */
function rowsByPage(count: number, used: number): number[] {
  const flow = new Flow(ruler, paperSize.a4);
  flow.gap(used);
  const rows = Array.from({ length: count }, (_, row) => [`row ${row}`]);
  table(flow, [{ title: 'head', share: 1 }], rows, { over: { heading: 'Over' }, under: 'Under' });
  return flow
    .pages('')
    .map(
      ({ marks }) =>
        marks.filter((mark) => mark.kind === 'text' && mark.text.startsWith('row ')).length,
    );
}

test('a table that goes over a page leaves and takes over at least three rows, whatever its length', () => {
  for (let count = 40; count < 60; count += 1) {
    for (const used of [0, 100, 200, 228, 236, 250]) {
      const pages = rowsByPage(count, used).filter((rows) => rows > 0);
      expect(Math.min(...pages), `${count} rows after ${used} mm`).toBeGreaterThanOrEqual(3);
      expect(pages.reduce((sum, rows) => sum + rows, 0)).toBe(count);
    }
  }
});

test('a table that takes less than half a page is never parted', () => {
  for (let used = 0; used < 260; used += 5) {
    expect(rowsByPage(12, used).filter((rows) => rows > 0)).toEqual([12]);
  }
});
