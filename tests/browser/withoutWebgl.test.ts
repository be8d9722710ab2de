import { expect, test } from 'vitest';
import {
  drag,
  fileFrom,
  girthOf,
  girthPoint,
  openedDesk,
  patience,
  rested,
  summaryOf,
} from './desk.ts';

const desk = openedDesk({ width: 1440, height: 900, webgl: false });

test('without WebGL the basket is drawn in outline, from its side and its end', async () => {
  const { page } = desk();
  expect(await page.locator('.stage').count()).toBe(0);
  const drawings = page.getByRole('img', { name: /view: .+ in wide, .+ in high/ });
  expect(await drawings.count()).toBe(2);
  for (const drawing of await drawings.all()) {
    expect(await drawing.locator('.outline-row').count()).toBe(33);
    const box = await drawing.boundingBox();
    expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThan(100);
  }
});

test('no number of an outline is cut off by its edge', async () => {
  const { page } = desk();
  for (const drawing of await page.locator('.outline-drawing').all()) {
    const frame = await drawing.boundingBox();
    for (const number of await drawing.locator('text').all()) {
      const box = await number.boundingBox();
      if (!frame || !box) throw new Error('it is not on the page');
      expect(box.x).toBeGreaterThanOrEqual(frame.x);
      expect(box.x + box.width).toBeLessThanOrEqual(frame.x + frame.width);
      expect(box.y + box.height).toBeLessThanOrEqual(frame.y + frame.height);
    }
  }
});

test('without WebGL the girth line moves the outlines and the numbers', async () => {
  const { page } = desk();
  const edge = () => page.locator('.outline-edge').first().getAttribute('d');
  const before = { girth: await girthOf(girthPoint(page, 1)), edge: await edge() };
  const belly = await summaryOf(page, 'Belly');
  await drag(page, girthPoint(page, 1), { dx: -60 });
  await rested(page);
  expect(await girthOf(girthPoint(page, 1))).toBeLessThan(before.girth);
  expect(await summaryOf(page, 'Belly')).not.toBe(belly);
  expect(await edge()).not.toBe(before.edge);
});

test('without WebGL a row that is pointed at is marked in both outlines', async () => {
  const { page } = desk();
  await page.locator('tr[data-row="27"] .row-tape').hover();
  expect(await page.locator('.outline-marked').count()).toBe(2);
});

test('without WebGL the row chart is given as a file', async () => {
  const { page } = desk();
  const { text } = await fileFrom(page, 'Row chart (CSV)');
  expect(text.trimEnd().split('\r\n')).toHaveLength(33);
});

test('without WebGL the basket is built up in outline, and leaves as a drawing', async () => {
  const { page } = desk();
  await page.getByRole('button', { name: 'Row by row' }).click();
  const row = page.getByLabel('Row woven last');
  await expect.poll(async () => Number(await row.getAttribute('max')), patience).toBeGreaterThan(5);
  await row.fill('5');
  await expect.poll(() => page.locator('.outline-row').count(), patience).toBe(2 * 6);
  await page.getByRole('button', { name: 'Done' }).click();
  await expect.poll(() => page.locator('.outline-row').count(), patience).toBe(2 * 33);
  await page.getByText('Save as', { exact: true }).click();
  expect(await page.getByRole('button', { name: 'Picture (PNG)' }).count()).toBe(0);
  const { text } = await fileFrom(page, 'Outlines (SVG)');
  expect(text).toMatch(/^<svg /);
});
