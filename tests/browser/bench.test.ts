import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import {
  atRest,
  expectUsable,
  fact,
  lengthIn,
  measure,
  presentRow,
  press,
  target,
} from './benchDesk.ts';
import type { OpenedApp } from './chromium.ts';
import { openApp } from './chromium.ts';
import { fileFrom, keptWhole } from './desk.ts';

const screens = [
  ['phone', 390, 844, 'light'],
  ['tablet', 820, 1180, 'dark'],
] as const;

test.each(screens)(
  'on a %s a basket is woven from the first row to the last, through a reload and without a connection',
  async (_name, width, height, colorScheme) => {
    const serviceWorkers = 'allow';
    const screen = { width, height, touch: true, colorScheme };
    const app = await openApp({ path: '#bench', ...screen, serviceWorkers });
    try {
      await weave(app);
      const { pageErrors, consoleErrors, consoleWarnings, outsideRequests } = app;
      expect([pageErrors, consoleErrors, consoleWarnings, outsideRequests]).toEqual([
        [],
        [],
        [],
        [],
      ]);
    } finally {
      await app.close();
    }
  },
);

/** Every change of the rows to come is the difference of the two girths told. */
async function expectChangesOnPaper(page: Page, present: number): Promise<void> {
  const rows = await page
    .locator('.next-rows li')
    .evaluateAll((all) =>
      all.map((row) =>
        ['strong', 'span:last-child'].map((at) => row.querySelector(at)?.textContent),
      ),
    );
  expect(rows).toHaveLength(4);
  let before = present;
  for (const [girth = 0, change] of rows.map((texts) =>
    texts.map((text) => lengthIn(text ?? '')),
  )) {
    expect(change).toBeCloseTo(girth - before, 6);
    before = girth;
  }
}

async function weave({ page, context }: OpenedApp): Promise<void> {
  await atRest(page);
  const rim = await fact(page, 'Rim');
  await expectUsable(page);
  expect(await presentRow(page)).toBe(1);
  while ((await presentRow(page)) < 8) await press(page, 'Row done');
  await press(page, 'Back one');
  await press(page, 'Row done');
  expect(await presentRow(page)).toBe(8);

  // Row 8 comes out 3 % tight; the next row is worked out anew, and taken.
  await measure(page, 0.97 * (await target(page)));
  expect(await presentRow(page)).toBe(9);
  const before = await target(page);
  await press(page, 'Take it');
  expect(await target(page)).toBeLessThan(before - 3);
  await atRest(page);
  const replanned = await target(page);
  await expectChangesOnPaper(page, replanned);

  await page.reload();
  await atRest(page);
  expect(await presentRow(page)).toBe(9);
  expect(Math.abs((await target(page)) - replanned)).toBeLessThan(1);

  // The connection goes, and the battery too: it comes back at its row without either.
  await keptWhole(page);
  await context.setOffline(true);
  while ((await presentRow(page)) < 14) await press(page, 'Row done');
  const before14 = await target(page);
  await page.reload();
  await atRest(page);
  expect(await presentRow(page)).toBe(14);
  expect(Math.abs((await target(page)) - before14)).toBeLessThan(1);
  while ((await presentRow(page)) < 16) await press(page, 'Row done');
  await measure(page, 0.985 * (await target(page)));
  await press(page, 'Take it');
  await atRest(page);
  expect(Math.abs((await fact(page, 'Rim')) - rim)).toBeLessThan(1.6);
  expect(await page.locator('.bench-point').count()).toBe(2);
  await context.setOffline(false);
  await page.reload();
  await atRest(page);
  expect(await presentRow(page)).toBe(17);

  while ((await page.locator('[data-present-row]').count()) > 0) await press(page, 'Row done');
  expect(await page.textContent('.row-card')).toContain('All 32 rows are woven');
}

test('what cannot be right is asked about, and nothing typed is lost', async () => {
  const app = await openApp({ path: '#bench', width: 390, height: 844, touch: true });
  const { page } = app;
  try {
    await atRest(page);
    await press(page, 'Measured');
    await expectUsable(page);
    for (const key of ['5', '4', '1/2']) await press(page, key);
    expect(await page.textContent('.pad-question')).toMatch(/2\.0 times/);
    await press(page, 'Take the last figure back');
    await press(page, 'Take the last figure back');
    await page.locator('.pad-value input').fill('five');
    await press(page, 'Keep');
    expect(await page.textContent('.pad-question')).toMatch(/“five”/);
    expect(await page.inputValue('.pad-value input')).toBe('five');
    await page.locator('.pad-value input').fill('24 1/2');
    await press(page, 'It is right: keep it');
    expect(await presentRow(page)).toBe(2);

    // The document has it, and a second basket of the plan does not.
    await page.getByLabel('Basket of this plan').selectOption('new');
    expect(await presentRow(page)).toBe(1);
    expect(await page.locator('.bench-point').count()).toBe(0);
    await page.getByLabel('Basket of this plan').selectOption('Basket 1');
    expect(await page.locator('.bench-point').count()).toBe(1);
    await page.getByRole('link', { name: 'Plan' }).click();
    await page.waitForSelector('.studio');
    expect((await fileFrom(page, 'Save as a file')).text).toContain('"1": 622.3');
    await page.getByRole('link', { name: 'At the bench' }).click();
    expect(await presentRow(page)).toBe(2);
  } finally {
    await app.close();
  }
});

test('a new basket starts from the plan, and what was worked out for the last one comes back with it', async () => {
  const app = await openApp({ path: '#bench', width: 1440, height: 900 });
  const { page } = app;
  try {
    await atRest(page);
    while ((await presentRow(page)) < 3) await press(page, 'Row done');
    for (const mm of [700, 690.6, 685.8, 717.6]) {
      await press(page, 'Measured');
      await page.locator('.pad-value input').fill(`${mm} mm`);
      await page.getByRole('button', { name: /^(Keep|It is right: keep it)$/ }).click();
    }
    await atRest(page);
    const records = page.getByLabel('Basket of this plan');
    const worked = await offersAtLast(page);
    expect(worked).toMatch(/row 7/);
    await records.selectOption('new');
    await atRest(page);
    expect(await page.getByRole('button', { name: 'Take it' }).count()).toBe(0);
    await records.selectOption('Basket 1');
    expect(await offersAtLast(page)).toBe(worked);
  } finally {
    await app.close();
  }
});

/** What the bench offers to take instead of the plan, once no figure moves any more. */
async function offersAtLast(page: Page): Promise<string> {
  await atRest(page);
  return (
    await page.locator('.replan-waits, .row-choice, .row-choice-note').allTextContents()
  ).join();
}
