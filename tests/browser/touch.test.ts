import { expect, test } from 'vitest';
import { girthOf, girthPoint, middleOf, openedDesk, rested, summaryOf } from './desk.ts';

const desk = openedDesk({ width: 820, height: 1180, touch: true });

test('a finger drags a point of the girth line, and the page stays where it is', async () => {
  const { page, context } = desk();
  const point = girthPoint(page, 1);
  await point.scrollIntoViewIfNeeded();
  const girth = await girthOf(point);
  await page.getByRole('tab', { name: 'Summary' }).click();
  const belly = await summaryOf(page, 'Belly');
  const { x, y } = await middleOf(point);
  const scrolled = await page.evaluate(() => scrollY);

  const finger = await context.newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', at?: { x: number; y: number }) =>
    finger.send('Input.dispatchTouchEvent', { type, touchPoints: at ? [at] : [] });
  await touch('touchStart', { x, y });
  for (let step = 1; step <= 8; step += 1) await touch('touchMove', { x: x - 10 * step, y });
  await touch('touchEnd');

  expect(await girthOf(point)).toBeLessThan(girth);
  expect(await page.evaluate(() => scrollY)).toBe(scrolled);
  await rested(page);
  expect(await summaryOf(page, 'Belly')).not.toBe(belly);
});

test('the page of a tablet is no wider than the tablet, in every tab', async () => {
  const { page } = desk();
  for (const name of ['Plan', 'Row chart', 'Summary']) {
    await page.getByRole('tab', { name }).click();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(820);
  }
});
