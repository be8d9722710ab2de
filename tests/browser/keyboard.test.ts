import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { girthOf, girthPoint, openedDesk, patience, rested, summaryOf } from './desk.ts';
import { difference, stagePicture } from './stagePicture.ts';

const desk = openedDesk({ width: 1440, height: 900, reducedMotion: 'reduce' });

test('tab reaches a point of the girth line, and the arrow keys move it', async () => {
  const { page } = desk();
  await tabTo(page, '[data-handle="point-1"]');
  const point = girthPoint(page, 1);
  const row = await point.getAttribute('aria-label');
  const belly = await summaryOf(page, 'Belly');

  // the first press brings it onto a mark of the tape
  await page.keyboard.press('ArrowLeft');
  const girth = await girthOf(point);
  expect((girth * 16) % 1).toBe(0);
  for (let press = 0; press < 3; press += 1) await page.keyboard.press('ArrowLeft');
  expect(await girthOf(point)).toBe(girth - 3 / 16);
  await page.keyboard.press('Shift+ArrowLeft');
  expect(await girthOf(point)).toBe(girth - 3 / 16 - 1 / 2);
  await page.keyboard.press('ArrowUp');
  expect(await point.getAttribute('aria-label')).not.toBe(row);
  await rested(page);
  expect(await summaryOf(page, 'Belly')).not.toBe(belly);
  expect(await page.evaluate(() => document.activeElement?.getAttribute('data-handle'))).toBe(
    'point-1',
  );
});

test('the keys 1 to 5 turn the basket to its five views', async () => {
  const { page } = desk();
  const views = ['Three-quarter', 'Side', 'End', 'Top', 'Underside'];
  let before = await stagePicture(page);
  for (const key of [2, 3, 4, 5, 1]) {
    await page.keyboard.press(`${key}`);
    const pressed = page.locator('.view-buttons button[aria-pressed=true]');
    expect(await pressed.allTextContents()).toEqual([views[key - 1]]);
    const last = before;
    await expect
      .poll(async () => difference(page, last, await stagePicture(page)), patience)
      .toBeGreaterThan(0.05);
    before = await stagePicture(page);
  }
});

test('a key that is typed into a field is text and turns nothing', async () => {
  const { page } = desk();
  const name = page.getByLabel('Name of the plan');
  await name.focus();
  await page.keyboard.type('2');
  expect(await page.locator('.view-buttons button[aria-pressed=true]').textContent()).toBe(
    'Three-quarter',
  );
  await page.keyboard.press('Escape');
});

test('the list of keys opens by its key and closes by Escape', async () => {
  const { page } = desk();
  await page.locator('body').click({ position: { x: 5, y: 5 } });
  await page.keyboard.press('?');
  expect(await page.getByRole('dialog').isVisible()).toBe(true);
  await page.keyboard.press('Escape');
  expect(await page.getByRole('dialog').isVisible()).toBe(false);
});

/** Presses Tab until what matches the selector has the focus. */
async function tabTo(page: Page, selector: string): Promise<void> {
  for (let press = 0; press < 100; press += 1) {
    await page.keyboard.press('Tab');
    if (await page.evaluate((at) => document.activeElement?.matches(at), selector)) return;
  }
  throw new Error(`Tab does not reach ${selector}`);
}
