/** Everything that the app says or asks beside its views, each with how one comes to it. */
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { planFragment } from '../../src/export/planLink.ts';
import { demos } from '../../src/plan/demo/demos.ts';
import { atRest } from './benchDesk.ts';
import { fileFrom, girthPoint, open, patience, press, rested } from './desk.ts';
import type { View } from './everyone.ts';

/** What is refused, asked and told in daily use, for a page opened anew. */
export const dailyNotices: readonly View[] = [
  { name: 'a file that cannot be read', go: readBadFile, within: '.problem' },
  { name: 'a question about two files', go: askAboutFiles, within: 'dialog[open]' },
  { name: 'files taken in and refused', go: keepBoth, within: '.shelf-told' },
  { name: 'a plan deleted', go: deleteOne, within: '.shelf-told' },
  { name: 'a plan changed in another window', go: changeElsewhere, within: '.keep-notice' },
];

/** What seldom comes, for a page opened anew; the page is broken at the end. */
export const rareNotices: readonly View[] = [
  { name: 'a plan that came by a link', go: openLink, within: 'dialog[open]' },
  { name: 'a dialog that does not come', go: missDialog, within: '.keep-notice' },
  { name: 'a page that does not come', go: missPage, within: '.mishap' },
  { name: 'a plan deleted in another window', go: deleteElsewhere, within: '.keep-notice' },
  { name: 'the program stopped', go: stop, within: '.mishap' },
];

/** What is said of a shelf that cannot be had, for a page opened anew; it stands without one at the end. */
export const shelfNotices: readonly View[] = [
  ...dailyNotices,
  { name: 'a browser that refuses', go: refuse, within: '.keep-notice' },
  { name: 'a shelf held up by another window', go: holdUp, within: '.keep-notice' },
  { name: 'a shelf of a newer Girthline', go: openNewer, within: '.keep-notice' },
  { name: 'the same at the bench', go: goToBench, within: '.bench-page', least: 48 },
  { name: 'a browser without a shelf', go: loseDatabase, within: '.keep-notice' },
];

async function readBadFile(page: Page): Promise<void> {
  await open(page, 'torn.girthline.json', '{"format": "girth');
  await page.locator('.problem').waitFor();
}

/** Two files of the name that a plan of the shelf has, and one that is no plan. */
async function askAboutFiles(page: Page): Promise<void> {
  await press(page, 'Put away');
  await change(page);
  const { text } = await fileFrom(page, 'Save as a file');
  const noted = (notes: string) => JSON.stringify({ ...JSON.parse(text), notes });
  await page.getByRole('link', { name: 'Shelf' }).click();
  await page.locator('.shelf-card[data-present=true]').waitFor(patience);
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    press(page, 'Open files …'),
  ]);
  const file = (name: string, content: string) => ({
    ...{ name, mimeType: 'application/json', buffer: Buffer.from(content) },
  });
  await chooser.setFiles([
    file('one.girthline.json', noted('one')),
    file('other.girthline.json', noted('other')),
    file('letter.txt', 'Dear class, bring knives.'),
  ]);
  await page.locator('dialog[open] input[type=checkbox]').waitFor(patience);
}

async function keepBoth(page: Page): Promise<void> {
  await page.locator('dialog[open] input[type=checkbox]').check();
  await press(page, 'Keep both');
  await page.locator('.shelf-told li').waitFor(patience);
}

async function deleteOne(page: Page): Promise<void> {
  await page
    .locator('.shelf-card[data-present=false]')
    .first()
    .getByRole('button', { name: /^Delete/ })
    .click();
  await page.getByRole('button', { name: 'Put it back' }).waitFor();
}

async function changeElsewhere(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Back to the plan' }).click();
  await rested(page);
  const other = await page.context().newPage();
  await other.goto(page.url());
  await rested(other);
  await page.bringToFront();
  await other.bringToFront();
  await change(other);
  await page.locator('.keep-notice').waitFor(patience);
  await other.close();
  await page.bringToFront();
}

/** Takes the browser some 20 s until the room is used up; for a page opened anew. */
export const fullDisk: View = { name: 'a full disk', go: fillDisk, within: '.keep-notice' };

/** The browser gives the page no room beyond what it has set aside, which is used up first. */
async function fillDisk(page: Page): Promise<void> {
  const cdp = await page.context().newCDPSession(page);
  const { origin } = new URL(page.url());
  await cdp.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
  await girthPoint(page, 1).focus();
  const changed = async () => {
    await page.keyboard.press('ArrowRight');
    return page.locator('.keep-notice').count();
  };
  await expect.poll(changed, { timeout: 60_000, interval: 400 }).toBe(1);
}

/** A database that writes no more, as where its file is damaged. */
async function refuse(page: Page): Promise<void> {
  await press(page, 'Keep mine as a copy');
  await page.locator('.keep-notice').waitFor({ state: 'detached', ...patience });
  await page.evaluate(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('', 'UnknownError');
    };
  });
  await change(page);
  await page.locator('.keep-notice', { hasText: 'would not keep' }).waitFor(patience);
}

async function openNewer(page: Page): Promise<void> {
  await page.reload();
  await rested(page);
  // what a newer version in another window does: it opens the database at its own version
  await page.evaluate(() => {
    indexedDB.open('girthline', 99).onsuccess = ({ target }) => {
      if (target instanceof IDBOpenDBRequest) target.result.close();
    };
  });
  await page.locator('.keep-notice', { hasText: 'newer Girthline' }).waitFor(patience);
}

async function goToBench(page: Page): Promise<void> {
  await page.goto(new URL('#bench', page.url()).href);
  await atRest(page);
  await page.locator('.keep-notice').waitFor();
}

async function loseDatabase(page: Page): Promise<void> {
  await page.goto(new URL('#plan', page.url()).href);
  await page.addInitScript(() => {
    Object.defineProperty(globalThis, 'indexedDB', { value: undefined });
  });
  await page.reload();
  await page.locator('.keep-notice', { hasText: 'no place to keep' }).waitFor(patience);
  await rested(page);
}

async function openLink(page: Page): Promise<void> {
  await page.goto(new URL(planFragment(demos[0].plan), page.url()).href);
  await page.locator('dialog[open]').waitFor();
}

async function missDialog(page: Page): Promise<void> {
  await press(page, 'Leave it');
  await page.route(/(PrintDialog|ComparePage)-/, (route) => route.abort());
  await press(page, 'Print');
  await page.locator('.keep-notice').waitFor(patience);
}

async function missPage(page: Page): Promise<void> {
  await press(page, 'Put away');
  await press(page, 'Compare');
  await page.locator('.mishap').waitFor(patience);
}

async function deleteElsewhere(page: Page): Promise<void> {
  await press(page, 'Back to the plan');
  await page.unrouteAll();
  await change(page);
  const other = await page.context().newPage();
  await other.goto(new URL('#shelf', page.url()).href);
  await other
    .locator('.shelf-card[data-present=true]')
    .getByRole('button', { name: /^Delete/ })
    .click();
  await other.getByRole('button', { name: 'Put it back' }).waitFor();
  await other.close();
  await page.bringToFront();
  await change(page);
  await page.locator('.keep-notice', { hasText: 'deleted in another window' }).waitFor(patience);
}

/** A window that holds on to the database and one that waits for it to let go, as an older page might. */
async function holdUp(page: Page): Promise<void> {
  const other = await page.context().newPage();
  await other.goto(new URL('icon.svg', page.url()).href);
  await other.evaluate(
    () =>
      new Promise<void>((resolve) => {
        indexedDB.open('girthline').onsuccess = () => {
          indexedDB.deleteDatabase('girthline').onblocked = () => resolve();
        };
      }),
  );
  await page.bringToFront();
  await page.reload();
  await page.locator('.keep-notice', { hasText: 'holds the shelf up' }).waitFor(patience);
  await other.close();
}

/** A browser that fails the app in the middle of its drawing. */
async function stop(page: Page): Promise<void> {
  await page.evaluate(() => {
    ResizeObserver.prototype.observe = () => {
      throw new Error('nothing is observed here');
    };
  });
  await press(page, 'Compare');
  await page.getByText('Girthline stopped').waitFor(patience);
}

async function change(page: Page): Promise<void> {
  await girthPoint(page, 1).focus();
  await page.keyboard.press('ArrowRight');
}
