import type { Locator } from 'playwright-core';
import { expect, test } from 'vitest';
import { markedRow, middleOf, openedDesk, patience, rowOnGirthLine } from './desk.ts';
import { difference, stagePicture } from './stagePicture.ts';

const desk = openedDesk({ width: 1440, height: 900 });

test('pointing at a row of the chart marks it on the girth line and on the basket', async () => {
  const { page } = desk();
  await page.mouse.move(0, 0);
  const plain = await stagePicture(page);
  await page.locator('tr[data-row="28"] .row-tape').hover();
  expect(await markedRow(page)).toBe(28);
  expect(await rowOnGirthLine(page)).toBe(28);
  const marked = () => stagePicture(page).then((now) => difference(page, plain, now));
  await expect.poll(marked, patience).toBeGreaterThan(0.001);
  await page.mouse.move(0, 0);
  expect(await markedRow(page)).toBeNull();
  await expect.poll(marked, patience).toBe(0);
});

test('pointing at the basket marks the row in the chart and on the girth line', async () => {
  const { page } = desk();
  const { x, y } = await middleOf(page.locator('.stage'));
  await page.mouse.move(x, y);
  await expect.poll(() => markedRow(page), patience).not.toBeNull();
  const high = await markedRow(page);
  expect(await rowOnGirthLine(page)).toBe(high);
  const line = page.locator(`tr[data-row="${high}"]`);
  expect(await isInSight(line)).toBe(true);

  await page.mouse.move(x, y + 60, { steps: 4 });
  await expect.poll(() => markedRow(page), patience).toBeLessThan(high ?? 0);
  await page.mouse.move(0, 0);
  await expect.poll(() => markedRow(page), patience).toBeNull();
});

test('pointing along the girth line marks the row in the chart', async () => {
  const { page } = desk();
  const { x, y } = await middleOf(page.locator('.girth-drawing'));
  await page.mouse.move(x + 90, y);
  const row = await rowOnGirthLine(page);
  expect(row).toBeGreaterThan(5);
  expect(await markedRow(page)).toBe(row);
  await page.mouse.move(0, 0);
  expect(await rowOnGirthLine(page)).toBeNull();
});

test('the arrow keys go along the chart and mark each row', async () => {
  const { page } = desk();
  await page.locator('tr[data-row="30"]').focus();
  await page.keyboard.press('ArrowDown');
  expect(await markedRow(page)).toBe(29);
  expect(await rowOnGirthLine(page)).toBe(29);
});

/** Whether the line lies inside the chart's window, not scrolled away. */
async function isInSight(line: Locator): Promise<boolean> {
  return line.evaluate((tr) => {
    const frame = tr.closest('.row-table-scroll')?.getBoundingClientRect();
    const box = tr.getBoundingClientRect();
    return frame !== undefined && box.top >= frame.top - 1 && box.bottom <= frame.bottom + 1;
  });
}
