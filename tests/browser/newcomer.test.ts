import { expect, test } from 'vitest';
import {
  drag,
  girthOf,
  girthPoint,
  middleOf,
  openedDesk,
  patience,
  rested,
  summaryOf,
} from './desk.ts';
import { difference, stagePicture } from './stagePicture.ts';

const desk = openedDesk({ width: 1440, height: 900 });

test('a newcomer drags the girth line: belly and basket follow, and undo brings both back', async () => {
  const { page } = desk();
  const belly = await summaryOf(page, 'Belly');
  expect(belly).toMatch(/^\d+( \d+\/\d+)? in$/);
  const asFound = await stagePicture(page);
  const away = async (from: Buffer) => difference(page, from, await stagePicture(page));
  // the first picture may have been taken before the basket was drawn
  await expect.poll(() => away(asFound), patience).toBe(0);

  const point = girthPoint(page, 1);
  const girth = await girthOf(point);
  await drag(page, point, { dx: -70 });
  await page.mouse.move(0, 0);
  await rested(page);
  expect(await girthOf(point)).toBeLessThan(girth - 0.5);
  expect(await summaryOf(page, 'Belly')).not.toBe(belly);
  await expect.poll(() => away(asFound), patience).toBeGreaterThan(0.01);

  await page.getByRole('button', { name: 'Undo' }).click();
  await page.mouse.move(0, 0);
  await rested(page);
  expect(await girthOf(point)).toBe(girth);
  expect(await summaryOf(page, 'Belly')).toBe(belly);
  await expect.poll(() => away(asFound), patience).toBeLessThan(0.001);
  expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
});

test('a drag of the belly is one step to undo, and redo takes it again', async () => {
  const { page } = desk();
  const point = girthPoint(page, 1);
  const girth = await girthOf(point);
  await drag(page, point, { dx: 40 });
  const dragged = await girthOf(point);
  expect(dragged).toBeGreaterThan(girth);
  await page.keyboard.press('Control+z');
  expect(await girthOf(point)).toBe(girth);
  await page.keyboard.press('Control+Shift+z');
  expect(await girthOf(point)).toBe(dragged);
  await page.keyboard.press('Control+z');
  await rested(page);
});

test('a double press on the line adds a point, and on a point takes it away', async () => {
  const { page } = desk();
  const points = page.locator('.girth-handle');
  const before = await points.count();
  const [one, other] = await Promise.all([0, 1].map((at) => middleOf(girthPoint(page, at))));
  if (!one || !other) throw new Error('two points expected');
  await page.mouse.dblclick((one.x + other.x) / 2, (one.y + other.y) / 2);
  expect(await points.count()).toBe(before + 1);
  const added = await middleOf(points.nth(1));
  // far from the first in place and time, or the two double presses would be read as one
  await page.mouse.click(added.x - 60, added.y);
  await page.mouse.dblclick(added.x, added.y);
  expect(await points.count()).toBe(before);
  await rested(page);
});
