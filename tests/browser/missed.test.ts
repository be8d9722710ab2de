import { afterAll, beforeAll, expect, test } from 'vitest';
import type { OpenedApp } from './chromium.ts';
import { openApp } from './chromium.ts';
import { girthOf, girthPoint, patience, press, rested } from './desk.ts';

let app: OpenedApp;
beforeAll(async () => {
  app = await openApp({ webgl: false });
  // before the shelf is fetched ahead
  await app.page.route(/(ShelfPage|BenchPage|ComparePage|PrintDialog)-/, (route) => route.abort());
  await app.page.route(/LinkDialog-/, (route) => route.fulfill({ status: 404 }));
  await app.page.reload();
  await rested(app.page);
});
afterAll(() => app?.close());

test('a page that does not come says so and leads back to the plan', async () => {
  const { page } = app;
  const ways = [
    () => page.getByRole('link', { name: 'Shelf' }).click(),
    () => page.getByRole('link', { name: 'At the bench' }).click(),
    () => press(page, 'Compare'),
  ];
  for (const go of ways) {
    await go();
    await page.getByRole('heading', { name: 'This page did not come' }).waitFor(patience);
    await press(page, 'Back to the plan');
    await girthPoint(page, 1).waitFor();
  }
});

test('a dialog that does not come leaves the page as it is, and comes whole once it can', async () => {
  const { page } = app;
  const said = page.getByRole('alert');
  await press(page, 'Copy a link …');
  await said.waitFor(patience);
  await press(page, 'Put away');
  expect(await said.count()).toBe(0);

  await press(page, 'Print');
  await said.waitFor(patience);
  expect(await said.textContent()).toContain('try again');
  const girth = await girthOf(girthPoint(page, 1));
  await girthPoint(page, 1).focus();
  await page.keyboard.press('ArrowRight');
  await rested(page);
  expect(await girthOf(girthPoint(page, 1))).toBeGreaterThan(girth);
  await Promise.all([page.waitForRequest(/PrintDialog-.*js/), press(page, 'Try again')]);
  await said.waitFor(patience);

  await page.unrouteAll();
  await press(page, 'Try again');
  await page.waitForSelector('.print-page', patience);
  // its style sheet, which did not come either
  const tools = page.locator('.print-tools');
  const display = () => tools.evaluate((one) => getComputedStyle(one).display);
  await expect.poll(display, patience).toBe('flex');
  expect(app.pageErrors).toEqual([]);
});
