import { appendFileSync, cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import papaparse from 'papaparse';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { parseLength } from '../../src/plan/units.ts';
import { atRest } from './benchDesk.ts';
import type { OpenedApp } from './chromium.ts';
import { openApp } from './chromium.ts';
import {
  drag,
  fileFrom,
  girthOf,
  girthPoint,
  keptWhole,
  patience,
  rested,
  summaryOf,
} from './desk.ts';
import type { View } from './everyone.ts';
import { faultsOf } from './everyone.ts';
import type { FolderServer } from './folderServer.ts';
import { folderServer } from './folderServer.ts';

const dist = mkdtempSync(join(tmpdir(), 'girthline-dist-'));
let server: FolderServer;
let app: OpenedApp;

beforeAll(async () => {
  cpSync('dist', dist, { recursive: true });
  // a folder of a server that has other things too
  server = await folderServer(dist, '/class/girthline/');
  app = await openApp({ width: 1440, height: 900, serviceWorkers: 'allow', server });
  await rested(app.page);
});
afterAll(async () => {
  await app?.close();
  rmSync(dist, { recursive: true, force: true });
});

test('after one visit the app opens without a network, and its three main uses work', async () => {
  const { page } = app;
  await keptWhole(page);
  await loseNetwork();
  await page.reload();
  await rested(page);

  const before = { girth: await girthOf(girthPoint(page, 1)), belly: await bellyOf(page) };
  await drag(page, girthPoint(page, 1), { dx: -60 });
  await rested(page);
  expect(await girthOf(girthPoint(page, 1))).toBeLessThan(before.girth - 0.5);
  expect(await bellyOf(page)).toBeLessThan(before.belly - 0.5);

  const { text } = await fileFrom(page, 'Row chart (CSV)');
  const { data } = papaparse.parse(text, { header: true, skipEmptyLines: true });
  expect(data).toHaveLength(32);

  await page.getByRole('button', { name: 'Print', exact: true }).click();
  await page.waitForSelector('.print-page', patience);
  await page.keyboard.press('Escape');

  await page.getByRole('button', { name: 'Compare', exact: true }).click();
  await bothRested(page);
  await girthPoint(page, 2).focus();
  for (let press = 0; press < 4; press += 1) await page.keyboard.press('Shift+ArrowRight');
  await bothRested(page);
  const apart = page.locator('.compare-table tr[data-row="32"] td').nth(2);
  expect(inches((await apart.textContent()) ?? '')).toBeGreaterThan(1);
  await expect.poll(() => page.locator('.stage canvas').count(), patience).toBe(2);
});

test('at the bench a tablet that is switched off and on without a network is at the same row', async () => {
  const { page } = app;
  await page.goto(`${server.address}#bench`);
  await page.reload();
  await atRest(page);
  for (let row = 1; row < 5; row += 1) await page.getByRole('button', { name: 'Row done' }).click();
  const girth = await page.locator('.row-card-tape .unseen').textContent();
  await page.reload();
  await atRest(page);
  expect(await page.locator('[data-present-row]').getAttribute('data-present-row')).toBe('5');
  expect(await page.locator('.row-card-tape .unseen').textContent()).toBe(girth);
});

test('a newer app waits until it is asked for, and another window is told', async () => {
  const { page, context } = app;
  await findNetwork();
  const other = await context.newPage();
  await other.goto(server.address);
  await rested(other);
  for (const one of [page, other]) await one.evaluate(() => Object.assign(globalThis, { mark: 1 }));

  const html = readFileSync(join(dist, 'index.html'), 'utf8');
  writeFileSync(join(dist, 'index.html'), html.replace('<title>', '<title>Newer '));
  const worker = readFileSync(join(dist, 'sw.js'), 'utf8');
  const revised = worker.replace(/(url:"index\.html",revision:")\w+/, '$1newer');
  expect(revised).not.toBe(worker);
  writeFileSync(join(dist, 'sw.js'), revised);
  appendFileSync(join(dist, 'sw.js'), '\n// newer');
  await page.evaluate(async () => (await navigator.serviceWorker.ready).update());

  const notice = page.locator('.update-notice');
  await notice.waitFor(patience);
  expect(await faultsOf(page, seenAs(['light', 'dark'], 48), 'all')).toEqual({});
  await other.locator('.update-notice').waitFor(patience);
  await other.bringToFront();
  expect(await faultsOf(other, seenAs(['dark', 'light'], 24), 'all')).toEqual({});
  await page.bringToFront();
  expect(await page.title()).not.toContain('Newer');
  expect(await page.evaluate(() => 'mark' in globalThis)).toBe(true);

  await notice.getByRole('button', { name: 'Load it now' }).click();
  await expect.poll(() => page.title(), patience).toContain('Newer');
  await atRest(page);
  expect(await notice.count()).toBe(0);
  expect(await page.locator('[data-present-row]').getAttribute('data-present-row')).toBe('5');
  // the other window is left as it is until its person says so
  await other.getByText('Another window has loaded a newer Girthline').waitFor(patience);
  expect(await other.evaluate(() => 'mark' in globalThis)).toBe(true);
  await other.getByRole('button', { name: 'Load again' }).click();
  await expect.poll(() => other.title(), patience).toContain('Newer');
  const { pageErrors, consoleErrors, outsideRequests } = app;
  expect({ pageErrors, consoleErrors, outsideRequests }).toEqual({
    pageErrors: [],
    consoleErrors: [],
    outsideRequests: [],
  });
});

/** The notice of a newer app on a desktop and on a phone, each in one of the themes. */
function seenAs(themes: readonly ['light' | 'dark', 'light' | 'dark'], least: number): View[] {
  const windows = [
    { width: 1440, height: 900 },
    { width: 360, height: 740 },
  ] as const;
  return windows.map((size, at) => ({
    name: `a newer app, ${size.width} px, ${themes[at]}`,
    within: '.update-notice',
    least,
    async go(page) {
      await page.setViewportSize(size);
      await page.emulateMedia({ colorScheme: themes[at] ?? null });
    },
  }));
}

/** The cable is pulled and the server is gone. */
async function loseNetwork(): Promise<void> {
  await app.context.setOffline(true);
  await server.close();
  const answer = await fetch(server.address).then(
    () => 'answered',
    () => 'gone',
  );
  expect(answer).toBe('gone');
}

async function findNetwork(): Promise<void> {
  await server.start();
  await app.context.setOffline(false);
}

async function bothRested(page: Page): Promise<void> {
  const sides = page.locator('.side-state[data-rested=true]');
  await expect.poll(() => sides.count(), patience).toBe(2);
}

/** Largest tape girth, in. */
async function bellyOf(page: Page): Promise<number> {
  return inches(await summaryOf(page, 'Belly'));
}

function inches(text: string): number {
  const read = parseLength(text, 'in', { signed: true });
  if (!read.ok) throw new Error(read.problem);
  return read.mm / 25.4;
}
