import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { atRest } from './benchDesk.ts';
import { girthPoint, open, openedDesk, patience, press, rested } from './desk.ts';
import type { View } from './everyone.ts';
import { faultsOf } from './everyone.ts';

// Without WebGL, so that no time goes into drawing; accessibleStage.test.ts looks at the stage.
const desk = openedDesk({ width: 1440, height: 900, reducedMotion: 'reduce', webgl: false });

/** Every view, each reached from the one before. */
const views: readonly View[] = [
  { name: 'studio, greeting, all sections open', go: openSections },
  { name: 'row chart', go: (page) => chooseTab(page, 'Row chart'), within: '.rows-room' },
  { name: 'summary', go: (page) => chooseTab(page, 'Summary'), within: '.summary-room' },
  { name: 'a word explained', go: askForWord, within: '.word-note:popover-open', isOver: true },
  { name: 'tour', go: startTour, within: '.tour-card' },
  { name: 'help', go: showHelp, within: '.help' },
  { name: 'a file that cannot be read', go: readBadFile, within: '.problem', isOver: true },
  { name: 'file menu', go: openFileMenu, within: '.menu', isOver: true },
  { name: 'a link to the plan', go: askForLink, within: 'dialog[open]' },
  { name: 'the sheet to print', go: showSheet, within: '.print-dialog' },
  { name: 'the gauges to print', go: showGauges, within: '.print-dialog' },
  { name: 'two plans compared', go: compare },
  { name: 'shelf', go: goToShelf },
  { name: 'versions of a plan', go: showVersions, within: 'dialog[open]' },
  { name: 'bench, limits of its replan open', go: goToBench, least: 48 },
  { name: 'measuring pad', go: (page) => press(page, 'Measured'), within: '.pad', least: 48 },
];

const passes = [
  { width: 1440, height: 900, colorScheme: 'light' },
  { width: 360, height: 740, colorScheme: 'dark' },
  // a window of 1280 × 800 at 200 %
  { width: 640, height: 400, colorScheme: 'light' },
] as const;

test.each(passes)(
  'at $width × $height, $colorScheme, every view can be seen whole, read out, touched, and gone through by Tab',
  async ({ width, height, colorScheme }) => {
    const { page, address } = desk();
    await page.setViewportSize({ width, height });
    await page.emulateMedia({ colorScheme });
    await page.evaluate(() => localStorage.clear());
    await page.goto('about:blank');
    await page.goto(address);
    await rested(page);
    // the low window has what the two others have, only less room for it
    expect(await faultsOf(page, views, height > 400 ? 'all' : 'places')).toEqual({});
  },
);

async function openSections(page: Page): Promise<void> {
  await page.locator('.greeting').waitFor();
  await chooseTab(page, 'Plan');
  const shut = page.locator('.panel [aria-expanded=false]:visible');
  while ((await shut.count()) > 0) await shut.first().click();
  expect(await page.locator('.panel [aria-expanded=true]').count()).toBeGreaterThan(8);
}

async function chooseTab(page: Page, name: string): Promise<void> {
  const tab = page.getByRole('tab', { name });
  if ((await tab.count()) > 0) await tab.click();
}

async function askForWord(page: Page): Promise<void> {
  await page.locator('.girth-head .word-help').click();
  await page.locator('.word-note:popover-open').waitFor();
}

async function startTour(page: Page): Promise<void> {
  await page.keyboard.press('Escape');
  await press(page, 'Show me round');
  await page.locator('.tour-card').waitFor();
}

async function showHelp(page: Page): Promise<void> {
  await press(page, 'End the tour');
  await press(page, 'Help: tour, words, keys');
}

async function readBadFile(page: Page): Promise<void> {
  await page.keyboard.press('Escape');
  await open(page, 'torn.girthline.json', '{"format": "girth');
  await page.locator('.problem').waitFor();
}

async function openFileMenu(page: Page): Promise<void> {
  await press(page, 'Put away');
  await page.getByRole('button', { name: /^File/ }).click();
}

async function askForLink(page: Page): Promise<void> {
  await page.keyboard.press('Escape');
  await press(page, 'Copy a link …');
  await page.locator('dialog[open]').waitFor();
}

async function showSheet(page: Page): Promise<void> {
  await page.keyboard.press('Escape');
  await press(page, 'Print');
  await page.waitForSelector('.print-page', patience);
}

async function showGauges(page: Page): Promise<void> {
  await page.getByLabel('Full-size gauges').check();
  await page.locator('.print-doing', { hasText: 'Print at 100 %' }).waitFor(patience);
}

async function compare(page: Page): Promise<void> {
  await page.keyboard.press('Escape');
  await press(page, 'Compare');
  await expect.poll(() => page.locator('.side-state[data-rested=true]').count(), patience).toBe(2);
}

async function goToShelf(page: Page): Promise<void> {
  await press(page, 'Back to one plan');
  await girthPoint(page, 1).focus();
  await page.keyboard.press('ArrowRight');
  await page.getByRole('link', { name: 'Shelf' }).click();
  await page.locator('.shelf-card[data-present=true]').waitFor(patience);
}

async function showVersions(page: Page): Promise<void> {
  await page
    .getByRole('link', { name: /^Versions of/ })
    .first()
    .click();
  await page.locator('dialog[open]').waitFor();
}

async function goToBench(page: Page): Promise<void> {
  await page.goto(`${desk().address}#bench`);
  await atRest(page);
  await page.locator('.replan-more summary').click();
}
