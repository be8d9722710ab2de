/** Every view of the app, each with how one comes to it. */
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { atRest, measure, target } from './benchDesk.ts';
import { girthPoint, open, patience, press, rested } from './desk.ts';
import type { View } from './everyone.ts';

export interface Look {
  /** CSS pixels */
  readonly width: number;
  readonly height: number;
  readonly colorScheme: 'light' | 'dark';
  /** Colours of the person's own; default `none` */
  readonly forcedColors?: 'active' | 'none';
}

/** Every view, each reached from the one before. */
export const everyView: readonly View[] = [
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
  { name: 'a replan that waits to be taken', go: offTheLine, least: 48 },
  { name: 'measuring pad', go: (page) => press(page, 'Measured'), within: '.pad', least: 48 },
];

/** Opens the app as it is found by somebody new to it, in a window of this size. */
export async function openAnew(
  page: Page,
  address: string,
  { width, height, colorScheme, forcedColors = 'none' }: Look,
): Promise<void> {
  await page.setViewportSize({ width, height });
  await page.emulateMedia({ colorScheme, forcedColors });
  await page.goto('about:blank');
  const cdp = await page.context().newCDPSession(page);
  const origin = address.replace(/\/$/, '');
  await cdp.send('Storage.clearDataForOrigin', { origin, storageTypes: 'all' });
  await cdp.detach();
  await page.goto(address);
  await rested(page);
}

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
  await page.goto(new URL('#bench', page.url()).href);
  await atRest(page);
  await page.locator('.replan-more summary').click();
}

/** Two rows above the base and wide of the plan: the replan tells another girth for the next row. */
async function offTheLine(page: Page): Promise<void> {
  for (let row = 1; row < 3; row += 1) await press(page, 'Row done');
  await measure(page, (await target(page)) + 25.4);
  await press(page, 'Row done');
  await page.locator('.row-choice').waitFor(patience);
  await atRest(page);
}
