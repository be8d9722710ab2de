import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import papaparse from 'papaparse';
import { expect, test } from 'vitest';
import { parseLength } from '../../src/plan/units.ts';
import { runSheet, scratch } from '../command/sheet.ts';
import { fileFrom, girthOf, girthPoint, open, openedDesk, rested } from './desk.ts';

const desk = openedDesk({ width: 1440, height: 900 });

test('the row chart as a file says what the table on the screen says', async () => {
  const { page } = desk();
  const { name, text } = await fileFrom(page, 'Row chart (CSV)');
  expect(name).toBe('Orchard trug rows.csv');
  const { data, errors } = papaparse.parse<Record<string, string>>(text, {
    header: true,
    skipEmptyLines: true,
  });
  expect(errors).toEqual([]);
  expect(data).toHaveLength(await page.locator('tr[data-row]').count());
  for (const line of data.slice(0, 12)) {
    const row = page.locator(`tr[data-row="${line['row (number)']}"]`);
    const [tape, change, , across, height, lean] = await row.locator('td').allTextContents();
    expect(tape).toBe(line['tape girth to weave to (in, to the nearest 1/16)']);
    const below = page.locator(`tr[data-row="${Number(line['row (number)']) - 1}"] .row-tape`);
    if ((await below.count()) > 0) {
      const onPaper = inches(tape) - inches((await below.textContent()) ?? '');
      expect(inches(change)).toBeCloseTo(onPaper, 6);
    }
    expectInches(across?.split(' × ')[0], line['length (in)']);
    expectInches(across?.split(' × ')[1], line['width (in)']);
    expectInches(height, line['height at the sides (in)']);
    const degrees = Number(lean?.replace('−', '-').replace('°', ''));
    expect(Math.abs(degrees - Number(line['lean outward (degrees)']))).toBeLessThanOrEqual(0.501);
  }
});

test('the row chart of the page is the headless command’s, letter for letter', async () => {
  const { page } = desk();
  const point = girthPoint(page, 0);
  await point.focus();
  for (let press = 0; press < 6; press += 1) await page.keyboard.press('ArrowRight');
  await rested(page);
  const chart = await fileFrom(page, 'Row chart (CSV)');
  const plan = await fileFrom(page, 'Save as a file');
  expect(plan.name).toBe('Orchard trug.girthline.json');
  using place = scratch();
  const { status, stderr } = runSheet(place.file(plan.name, plan.text), '--out', place.out);
  expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
  expect(chart.text).toBe(readFileSync(join(place.out, 'rows.csv'), 'utf8'));
});

test('a bad file leaves the plan as it is and is told by the path of its key', async () => {
  const { page } = desk();
  const { text } = await fileFrom(page, 'Save as a file');
  const girth = await girthOf(girthPoint(page, 1));
  const name = await page.getByLabel('Name of the plan').inputValue();

  await open(page, 'star.girthline.json', text.replace('"mat"', '"star"'));
  const alert = page.getByRole('alert');
  await alert.waitFor();
  expect(await alert.textContent()).toContain('your plan is as it was');
  expect(await alert.textContent()).toMatch(/star\.girthline\.json.*base\.kind.*"star".*mat/s);

  await open(page, 'cut.girthline.json', text.slice(0, 200));
  await expect.poll(() => alert.textContent()).toContain('cut.girthline.json');

  expect(await fileFrom(page, 'Save as a file')).toMatchObject({ text });
  expect(await girthOf(girthPoint(page, 1))).toBe(girth);
  expect(await page.getByLabel('Name of the plan').inputValue()).toBe(name);
  await page.getByRole('button', { name: 'Put away' }).click();
  expect(await alert.count()).toBe(0);
});

test('a saved plan opens again, and undo goes back to the one before and says so', async () => {
  const { page } = desk();
  const { text } = await fileFrom(page, 'Save as a file');
  await open(page, 'other.girthline.json', text.replace('Orchard trug', 'Tidemill trug'));
  const name = page.getByLabel('Name of the plan');
  await expect.poll(() => name.inputValue()).toBe('Tidemill trug');
  await rested(page);
  const back = 'Undo opening “Tidemill trug”: back to “Orchard trug”';
  expect(await page.getByTitle(back).count()).toBe(1);
  await page.getByRole('button', { name: back, exact: true }).click();
  expect(await name.inputValue()).toBe('Orchard trug');
  await rested(page);
});

test('the plan is there again when the page is loaded anew', async () => {
  const { page } = desk();
  await girthPoint(page, 2).focus();
  await page.keyboard.press('ArrowLeft');
  await rested(page);
  const girth = await girthOf(girthPoint(page, 2));
  await page.reload();
  await rested(page);
  expect(await girthOf(girthPoint(page, 2))).toBe(girth);
});

/** A length on the screen, to the sixteenth, against the file's decimal inches. */
function inches(shown: string | undefined): number {
  const read = parseLength(shown ?? '', 'in', { signed: true });
  if (!read.ok) throw new Error(read.problem);
  return read.mm / 25.4;
}

function expectInches(shown: string | undefined, inFile: string | undefined): void {
  expect(Math.abs(inches(shown) - Number(inFile))).toBeLessThanOrEqual(1 / 32 + 1e-4);
}
