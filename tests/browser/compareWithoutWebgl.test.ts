import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { girthOf, girthPoint, openedDesk, patience } from './desk.ts';

const desk = openedDesk({ width: 1440, height: 900, webgl: false });

test('without WebGL both baskets are drawn, next to each other or one over the other', async () => {
  const { page } = desk();
  await page.getByRole('button', { name: 'Compare', exact: true }).click();
  await bothRested(page);
  const drawings = page.locator('.compare-stage .outline-drawing');
  expect(await drawings.count()).toBe(2);
  const wide = () => drawings.first().getAttribute('viewBox');
  const beside = await wide();
  await page.getByRole('button', { name: 'B over A' }).click();
  expect(await wide()).not.toBe(beside);
  for (const side of ['a', 'b']) {
    expect(await drawings.first().locator(`.compare-line.side-${side}`).count()).toBe(1);
  }
});

test('the keys edit the other plan, move its points and undo there', async () => {
  const { page } = desk();
  expect(await page.getByLabel('Edit B').isChecked()).toBe(true);
  await page.locator('.compare-title').click();
  await page.keyboard.press('e');
  expect(await page.getByLabel('Edit A').isChecked()).toBe(true);
  const point = girthPoint(page, 1);
  const girth = await girthOf(point);
  await point.focus();
  await page.keyboard.press('ArrowRight');
  expect(await girthOf(point)).toBeGreaterThan(girth);
  await page.keyboard.press('Control+z');
  expect(await girthOf(point)).toBe(girth);
  await bothRested(page);
});

test('arrow keys go from line to line of the table, and the row is marked on the girth line', async () => {
  const { page } = desk();
  await page.locator('.compare-table tr[tabindex="0"]').focus();
  await page.keyboard.press('ArrowUp');
  const row = await page.locator('.compare-table tr.row-pointed').getAttribute('data-row');
  expect(await page.locator('.girth-pointed text').textContent()).toBe(row);
});

test('printed by the browser, on a tablet too, it is both plans, every row and the summary', async () => {
  const { page } = desk();
  await page.emulateMedia({ media: 'print' });
  await page.setViewportSize({ width: 820, height: 1180 });
  for (const seen of [
    '.plan-name',
    '.compare-girth svg',
    '.compare-measures',
    '.side-findings-list',
  ]) {
    expect(await page.locator(seen).first().isVisible(), seen).toBe(true);
  }
  const scroller = page.locator('.compare-table .row-table-scroll');
  const cut = await scroller.evaluate((one) => one.scrollHeight - one.clientHeight);
  expect(cut).toBeLessThan(2);
  expect(await page.locator('.compare-page button:visible').count()).toBe(0);
  await page.emulateMedia({ media: 'screen' });
  await page.setViewportSize({ width: 1440, height: 900 });
});

test.each(['light', 'dark'] as const)('axe finds nothing serious on the %s page', async (theme) => {
  const { page } = desk();
  await page.emulateMedia({ colorScheme: theme });
  for (const by of ['height', 'row']) {
    await page.getByRole('button', { name: by, exact: true }).click();
    const { violations } = await new AxeBuilder({ page }).analyze();
    const serious = violations.filter(
      ({ impact }) => impact === 'serious' || impact === 'critical',
    );
    expect(
      serious.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target).join('; ')}`),
    ).toEqual([]);
  }
});

/** Waits until the numbers of both plans are those of the plans on the page. */
async function bothRested(page: Page): Promise<void> {
  const rested = page.locator('.side-state[data-rested=true]');
  await expect.poll(() => rested.count(), patience).toBe(2);
}
