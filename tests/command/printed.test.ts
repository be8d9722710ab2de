import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test, vi } from 'vitest';
import { readOptions } from '../../src/command/options.ts';
import { demos } from '../../src/plan/demo/demos.ts';
import { writePlan } from '../../src/plan/read.ts';
import { pdfInfo, pdfText } from '../export/pdf/poppler.ts';
import { runSheet, scratch } from './sheet.ts';

vi.setConfig({ testTimeout: 120_000 });

test('the PDFs take their paper, class and day from the line, and are the same every time', () => {
  using place = scratch();
  const file = place.file('plan.girthline.json', writePlan(demos[0].plan));
  const wish = ['--paper', 'a4', '--baskets', '8', '--date', '2026-03-09'];
  const [one, two] = ['one', 'two'].map((name) => {
    const out = join(place.folder, name);
    expect(runSheet(file, '--out', out, ...wish).status).toBe(0);
    return ['sheet.pdf', 'gauges.pdf'].map((pdf) => readFileSync(join(out, pdf)));
  });
  expect(one).toEqual(two);
  for (const pdf of one ?? []) {
    expect(pdfInfo(pdf).get('Page size')).toContain('A4');
    expect(pdfText(pdf)).toContain('2026-03-09');
  }
  expect(pdfText(one?.[0] ?? new Uint8Array())).toContain('Materials for a class of 8');
});

test.each([
  [['--paper', 'a5'], '--paper: found "a5", allowed is a4 or letter'],
  [['--baskets', '0'], '--baskets: found "0", allowed is a whole number from 1 to 200'],
  [['--baskets', 'ten'], '--baskets: found "ten"'],
  [['--date', '2026-02-30'], '--date: found "2026-02-30", allowed is a day as YYYY-MM-DD'],
  [['--date', 'today'], '--date: found "today"'],
])('%j is refused', (words, message) => {
  const reading = readOptions(['plan.json', '--out', 'x', ...words]);
  expect(reading).toMatchObject({ kind: 'wrong', message: expect.stringContaining(message) });
});
