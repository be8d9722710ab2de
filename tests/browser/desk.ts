/** The app's page as a person uses it: what the browser runs do there and what they look at. */
import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect } from 'vitest';
import type { AppOptions, OpenedApp } from './chromium.ts';
import { openApp } from './chromium.ts';

/** Software drawing may take a second a picture; nothing here passes or fails by the clock. */
export const patience = { timeout: 30_000, interval: 250 } as const;

/**
 * One browser for all tests of a file, opened on the demo basket once it has come to rest. After
 * each test it must have said nothing and asked nothing of another machine.
 */
export function openedDesk(options: AppOptions): () => OpenedApp {
  let app: OpenedApp | undefined;
  const opened = () => {
    if (!app) throw new Error('the app did not open');
    return app;
  };
  beforeAll(async () => {
    app = await openApp(options);
    await rested(app.page);
  });
  afterEach(() => expectQuiet(opened()));
  afterAll(() => app?.close());
  return opened;
}

/** Nothing on the console, nothing uncaught, nothing asked of another machine. */
function expectQuiet(app: OpenedApp): void {
  const { pageErrors, consoleErrors, consoleWarnings, outsideRequests } = app;
  expect({ pageErrors, consoleErrors, consoleWarnings, outsideRequests }).toEqual({
    pageErrors: [],
    consoleErrors: [],
    consoleWarnings: [],
    outsideRequests: [],
  });
}

/** Waits until the numbers on the page are those of the plan on the page. */
export async function rested(page: Page): Promise<void> {
  await page.waitForSelector('.status[data-rested=true]', { timeout: patience.timeout });
}

/** Waits until the service worker has everything and serves this page. */
export async function keptWhole(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller) return;
    await new Promise((done) =>
      navigator.serviceWorker.addEventListener('controllerchange', done, { once: true }),
    );
  });
}

/** A point of the girth line, counted from the base, from 0. */
export function girthPoint(page: Page, index: number): Locator {
  return page.locator(`[data-handle="point-${index}"]`);
}

/** Girth of a point as its slider tells it, in the plan's unit. */
export async function girthOf(point: Locator): Promise<number> {
  return Number(await point.getAttribute('aria-valuenow'));
}

/** Where the middle of something is on the page, CSS pixels. */
export async function middleOf(thing: Locator): Promise<{ x: number; y: number }> {
  const box = await thing.boundingBox();
  if (!box) throw new Error('it is not on the page');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** Drags a thing by the mouse, in a few steps as a hand does, and lets go. */
export async function drag(page: Page, thing: Locator, by: { dx: number; dy?: number }) {
  const { x, y } = await middleOf(thing);
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + by.dx, y + (by.dy ?? 0), { steps: 8 });
  await page.mouse.up();
}

/** What the summary says under a name, such as `30 7/8 in` under `Belly`, without its small print. */
export async function summaryOf(page: Page, name: string): Promise<string> {
  const fact = page.locator('.summary-fact', { has: page.locator('dt', { hasText: name }) });
  return fact.locator('dd').evaluate((told) => told.firstChild?.textContent ?? '');
}

/** Number of the row that the chart marks, or null. */
export async function markedRow(page: Page): Promise<number | null> {
  const marked = page.locator('tr.row-pointed');
  return (await marked.count()) === 0 ? null : Number(await marked.getAttribute('data-row'));
}

/** Number of the row that the girth line marks, or null. */
export async function rowOnGirthLine(page: Page): Promise<number | null> {
  const marked = page.locator('.girth-pointed text');
  return (await marked.count()) === 0 ? null : Number(await marked.textContent());
}

/** What is behind the File button; everything else is to be seen at once. */
const inFileMenu = ['Save as a file', 'Row chart (CSV)', 'Open …', 'Copy a link …'];

/** Presses a button, of the page or of its File menu, that gives a file, and reads it as text. */
export async function fileFrom(page: Page, button: string) {
  const { name, bytes } = await bytesFrom(page, button);
  return { name, text: bytes.toString('utf8') };
}

/** Presses a button, of the page or of its File menu, that gives a file, and reads it. */
export async function bytesFrom(page: Page, button: string) {
  const [download] = await Promise.all([page.waitForEvent('download'), press(page, button)]);
  return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) };
}

/** Chooses a file in the dialog that Open brings. */
export async function open(page: Page, name: string, text: string): Promise<void> {
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), press(page, 'Open …')]);
  await chooser.setFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
}

/** Presses a button of the page or of its File menu. */
export async function press(page: Page, name: string): Promise<void> {
  if (inFileMenu.includes(name)) await page.getByRole('button', { name: /^File/ }).click();
  await page.getByRole('button', { name, exact: true }).click();
}

/** Starts from a basket of the orchard class, from its shelf. */
export async function startFrom(page: Page, title: string): Promise<void> {
  await page.getByRole('link', { name: 'Shelf' }).click();
  await page.getByRole('button', { name: `Start from ${title}` }).click();
}
