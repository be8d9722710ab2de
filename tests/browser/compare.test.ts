import { readFile } from 'node:fs/promises';
import papaparse from 'papaparse';
import { PDFDocument } from 'pdf-lib';
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { parseLength } from '../../src/plan/units.ts';
import { drag, fileFrom, girthOf, girthPoint, openedDesk, patience } from './desk.ts';

const desk = openedDesk({ width: 1440, height: 900, reducedMotion: 'reduce' });

test('the plan is copied, its flare changed, the difference read, saved and printed', async () => {
  const { page } = desk();
  await page.getByRole('button', { name: 'Compare', exact: true }).click();
  await bothRested(page);
  const names = page.getByLabel('Name of the plan');
  expect(await names.nth(0).inputValue()).toBe('Orchard trug');
  expect(await names.nth(1).inputValue()).toBe('Orchard trug, second');
  expect(await measureOf(page, 'Rim, tape girth')).toBe(0);

  const rim = girthPoint(page, 2);
  await rim.focus();
  for (let press = 0; press < 4; press += 1) await page.keyboard.press('Shift+ArrowRight');
  await bothRested(page);
  const [a, b, difference] = await rowOf(page, 32);
  expect(difference).toBeGreaterThan(25.4);
  expect(b - a).toBeCloseTo(difference, 6);
  expect(await page.locator('tr[data-most=true]').getAttribute('data-row')).toBe('32');
  expect(await page.locator('.compare-most').textContent()).toContain('most apart, row 32');
  expect(await measureOf(page, 'Rim, tape girth')).toBeCloseTo(difference, 6);

  const { name, text } = await fileFrom(page, 'Save CSV');
  expect(name).toBe('Orchard trug and Orchard trug, second compared.csv');
  const { data } = papaparse.parse<Record<string, string>>(text, { header: true });
  const line = data.find(({ part, figure }) => part === 'tape girth of row' && figure === '32');
  // of the girths before each was rounded to the sixteenth
  const exact = Number(line?.['difference (B less A)']) * 25.4;
  expect(Math.abs(exact - difference)).toBeLessThanOrEqual(25.4 / 16 + 0.01);

  const pdf = await PDFDocument.load(await bytesFrom(page, 'Save page (PDF)'));
  expect(pdf.getPageCount()).toBe(1);
  const png = await bytesFrom(page, 'Save PNG');
  expect(png.subarray(1, 4).toString()).toBe('PNG');
  expect(png.readUInt32BE(16)).toBe(1920);
});

test('undo goes back in the plan it belongs to, and the other stays', async () => {
  const { page } = desk();
  await page.getByLabel('Edit A').check();
  const girth = await girthOf(girthPoint(page, 1));
  await girthPoint(page, 1).focus();
  await page.keyboard.press('ArrowLeft');
  expect(await girthOf(girthPoint(page, 1))).not.toBe(girth);
  await page.getByRole('button', { name: 'Undo in plan A' }).click();
  expect(await girthOf(girthPoint(page, 1))).toBe(girth);
  await bothRested(page);
  expect(await measureOf(page, 'Rim, tape girth')).toBeGreaterThan(25.4);
  await page.getByRole('button', { name: 'Undo in plan B' }).click();
  await bothRested(page);
  expect(await measureOf(page, 'Rim, tape girth')).toBe(0);
  await page.getByRole('button', { name: 'Redo in plan B' }).click();
  await bothRested(page);
});

test('turning one basket turns the other by as much', async () => {
  const { page } = desk();
  const [left, right] = [page.locator('.stage').nth(0), page.locator('.stage').nth(1)];
  await page.waitForTimeout(1000);
  const before = [await left.screenshot(), await right.screenshot()];
  await drag(page, left, { dx: 90, dy: 20 });
  await page.waitForTimeout(1500);
  expect((await left.screenshot()).equals(before[0] ?? Buffer.of())).toBe(false);
  expect((await right.screenshot()).equals(before[1] ?? Buffer.of())).toBe(false);
  await page.getByRole('button', { name: 'B over A' }).click();
  expect(await page.locator('.stage').count()).toBe(1);
  await page.getByRole('button', { name: 'Side by side' }).click();
});

test('a blend of both is kept as the second plan', async () => {
  const { page } = desk();
  const whole = await measureOf(page, 'Rim, tape girth');
  await page.getByLabel('A line between the two').fill('25');
  await page.getByRole('button', { name: 'Keep as B' }).click();
  await bothRested(page);
  expect(Math.abs((await measureOf(page, 'Rim, tape girth')) - whole / 4)).toBeLessThan(2);
  expect(await page.getByLabel('Name of the plan').nth(1).inputValue()).toContain('25 % towards');
});

test('another base is compared by height, and a bad file leaves both plans as they were', async () => {
  const { page } = desk();
  await page.getByLabel('Put another plan in the place of B').selectOption({ label: 'Russet jar' });
  await page.getByRole('button', { name: 'height', exact: true }).click();
  await bothRested(page);
  expect(await page.locator('.compare-table th', { hasText: 'Row of B' }).count()).toBe(1);
  expect(await page.locator('.compare-table').textContent()).not.toContain('NaN');
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByLabel('Put another plan in the place of A').selectOption('f'),
  ]);
  const buffer = Buffer.from('{"format":"girthline","version":1,"bands":[]}');
  await chooser.setFiles({ name: 'torn.girthline.json', mimeType: 'application/json', buffer });
  const alert = page.getByRole('alert');
  await alert.waitFor();
  expect(await alert.textContent()).toContain('Plan A.');
  expect(await alert.textContent()).toContain('torn.girthline.json');
  await page.getByRole('button', { name: 'Put away' }).click();
  expect(await page.getByLabel('Name of the plan').nth(0).inputValue()).toBe('Orchard trug');
});

test('a plan that cannot be woven is compared with its findings', async () => {
  const { page } = desk();
  await page.getByRole('button', { name: 'row', exact: true }).click();
  await page.getByLabel('Edit B').check();
  await girthPoint(page, 0).focus();
  for (let press = 0; press < 40; press += 1) await page.keyboard.press('Shift+ArrowRight');
  await bothRested(page);
  expect(await page.locator('.side-findings').count()).toBeGreaterThan(0);
  expect(await page.locator('.compare-table').textContent()).not.toContain('NaN');
  await page.getByRole('button', { name: 'Back to one plan' }).click();
  await page.getByRole('button', { name: 'Compare', exact: true }).waitFor();
  expect(await page.getByLabel('Name of the plan').inputValue()).toBe('Orchard trug');
});

/** Waits until the numbers of both plans are those of the plans on the page. */
async function bothRested(page: Page): Promise<void> {
  const rested = page.locator('.side-state[data-rested=true]');
  await expect.poll(() => rested.count(), patience).toBe(2);
  await page.waitForTimeout(100);
}

/** Girth of A and of B and their difference in a row of the table, mm. */
async function rowOf(page: Page, row: number): Promise<[number, number, number]> {
  const cells = page.locator(`.compare-table tr[data-row="${row}"] td`);
  return [await lengthIn(cells.nth(0)), await lengthIn(cells.nth(1)), await lengthIn(cells.nth(2))];
}

/** The difference of a length in the summary, mm. */
async function measureOf(page: Page, name: string): Promise<number> {
  return lengthIn(page.locator(`tr[data-measure="${name}"] td`).last());
}

async function lengthIn(cell: Locator): Promise<number> {
  const read = parseLength((await cell.textContent()) ?? '', 'in', { signed: true });
  if (!read.ok) throw new Error(read.problem);
  return read.mm;
}

async function bytesFrom(page: Page, button: string): Promise<Buffer> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button, exact: true }).click(),
  ]);
  return readFile(await download.path());
}
