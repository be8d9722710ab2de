import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openedDesk, patience, press, rested } from './desk.ts';
import type { View } from './everyone.ts';
import { faultsOf } from './everyone.ts';
import { seenColours } from './seenColours.ts';

const desk = openedDesk({ width: 360, height: 740, reducedMotion: 'reduce' });

const views: readonly View[] = [
  { name: 'stage, row by row, colours, sizes', go: showAll, within: '.stage-room' },
  { name: 'what the stage is saved as', go: openSaves, within: '.stage-room', isOver: true },
  { name: 'two baskets compared', go: compare, within: '.compare-stage' },
  { name: 'one laid over the other', go: layOver, within: '.compare-stage' },
];

test.each([
  { width: 360, height: 740, colorScheme: 'light' },
  { width: 360, height: 740, colorScheme: 'dark' },
  { width: 1440, height: 900, colorScheme: 'light' },
  { width: 1440, height: 900, colorScheme: 'dark' },
] as const)(
  'at $width × $height, $colorScheme, all that lies over the stage can be seen whole, read out, and touched',
  async ({ width, height, colorScheme }) => {
    const { page, address } = desk();
    await page.setViewportSize({ width, height });
    await page.emulateMedia({ colorScheme });
    await page.goto('about:blank');
    await page.goto(address);
    await rested(page);
    expect(await faultsOf(page, views, 'all')).toEqual({});
  },
);

test('in colours of a person’s own, the legend still shows those of the rows', async () => {
  const { page, address } = desk();
  await page.setViewportSize({ width: 1440, height: 900 });
  await page.emulateMedia({ colorScheme: 'dark', forcedColors: 'active' });
  await page.goto('about:blank');
  await page.goto(address);
  await rested(page);
  await page.getByLabel('Colour rows by').selectOption('lean');
  const ramp = page.locator('.tint-ramp');
  await ramp.waitFor();
  expect((await seenColours(page, ramp)).count).toBeGreaterThan(8);
});

test('in colours of a person’s own, the legend of two baskets has the colours of their lines in the picture', async () => {
  const { page } = desk();
  await compare(page);
  await layOver(page);
  const colours = () =>
    page
      .locator('.over-legend .compare-line')
      .evaluateAll((lines) => lines.map((line) => getComputedStyle(line).stroke));
  const forced = await colours();
  await page.emulateMedia({ colorScheme: 'dark', forcedColors: 'none' });
  expect(forced).toEqual(await colours());
  expect(new Set(forced).size).toBe(2);
});

async function showAll(page: Page): Promise<void> {
  await page.getByLabel('Colour rows by').selectOption('lean');
  await press(page, 'Sizes');
  await press(page, 'Row by row');
  await page.locator('.build-bar progress').waitFor({ state: 'detached', ...patience });
}

async function openSaves(page: Page): Promise<void> {
  await press(page, 'Done');
  await page.locator('.save-menu summary').click();
}

async function compare(page: Page): Promise<void> {
  await press(page, 'Compare');
  await expect.poll(() => page.locator('.side-state[data-rested=true]').count(), patience).toBe(2);
}

async function layOver(page: Page): Promise<void> {
  await press(page, 'B over A');
  await page.locator('.over-legend').waitFor();
}
