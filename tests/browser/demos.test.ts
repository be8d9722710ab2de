import { expect, test } from 'vitest';
import { demos } from '../../src/plan/demo/demos.ts';
import { openedDesk, rested, startFrom, summaryOf } from './desk.ts';

const desk = openedDesk({ width: 1440, height: 900 });

test.each(demos)('the basket $title of the orchard class settles on the page', async (demo) => {
  const { page } = desk();
  await startFrom(page, demo.title);
  expect(await page.getByLabel('Name of the plan').inputValue()).toBe(demo.plan.name);
  await rested(page);
  const rows = demo.plan.bands.reduce((sum, band) => sum + band.rows, 0);
  expect(await page.locator('tr[data-row]').count()).toBe(rows);
  expect(await page.getByRole('img', { name: /^Woven basket/ }).getAttribute('aria-label')).toMatch(
    new RegExp(`; \\d+ ends and ${rows} rows$`),
  );
});

test('lengths are shown in the unit that is chosen', async () => {
  const { page } = desk();
  await page.locator('.units-field select').selectOption('cm');
  expect(await summaryOf(page, 'Height')).toMatch(/^\d+(\.\d)? cm$/);
  await page.locator('.units-field select').selectOption('mm');
  expect(await summaryOf(page, 'Height')).toMatch(/^\d+(\.\d)? mm$/);
});
