import { readFile } from 'node:fs/promises';
import { expect, test } from 'vitest';
import { pdfFonts, pdfInfo, pdfText } from '../export/pdf/poppler.ts';
import { openedDesk, patience } from './desk.ts';

const desk = openedDesk({ width: 1280, height: 900 });

test('the sheet is seen before it is printed, and saved as it was seen', async () => {
  const { page } = desk();
  await page.getByRole('button', { name: 'Print', exact: true }).click();
  await page.waitForSelector('.print-page', patience);
  const shown = await page.locator('.print-page').count();
  const girths = await page.locator('.print-page text').allTextContents();
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save sheet (PDF)' }).click(),
  ]);
  expect(saved.suggestedFilename()).toBe('Orchard trug sheet.pdf');
  const bytes = await readFile(await saved.path());
  expect(Number(pdfInfo(bytes).get('Pages'))).toBe(shown);
  const text = pdfText(bytes);
  for (const words of girths) expect(text).toContain(words);
  for (const font of pdfFonts(bytes)) expect(font).toMatchObject({ embedded: 'yes' });
});

test('the count of baskets is typed as on any keyboard, and one that cannot be is refused with its reason', async () => {
  const { page } = desk();
  const count = page.getByLabel('Baskets to make', { exact: true });
  const pages = page.locator('.print-pages');
  await count.fill('１２');
  await count.press('Enter');
  expect(await count.inputValue()).toBe('12');
  await pages.getByText('Materials for a class of 12').first().waitFor(patience);
  await count.fill('2,5');
  await count.press('Enter');
  const problem = page.locator('.print-tools .field-problem');
  expect(await problem.textContent()).toBe('Baskets to make: 1 to 200; found 2,5');
  expect(await count.inputValue()).toBe('2,5');
  await count.fill('1');
  await count.press('Enter');
  expect(await problem.count()).toBe(0);
});

test('gauges follow the paper, and Escape leaves the preview', async () => {
  const { page } = desk();
  await page.getByLabel('Full-size gauges').check();
  await page.getByLabel('Paper').selectOption('a4');
  await expect.poll(() => page.locator('.print-doing').textContent(), patience).toContain('A4');
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save gauges (PDF)' }).click(),
  ]);
  expect(pdfInfo(await readFile(await saved.path())).get('Page size')).toContain('A4');
  await page.keyboard.press('Escape');
  await expect.poll(() => page.locator('dialog[open]').count(), patience).toBe(0);
});
