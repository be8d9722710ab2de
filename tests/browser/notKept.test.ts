import { readFile } from 'node:fs/promises';
import { expect, test } from 'vitest';
import { openApp } from './chromium.ts';
import { girthOf, girthPoint, patience, rested, startFrom } from './desk.ts';
import { storedShelf } from './shelfStore.ts';

const noDatabase = `Object.defineProperty(globalThis, 'indexedDB', { value: undefined })`;
const small = { width: 1280, height: 800, webgl: false };

test('without a database the app works, says what that means, and offers the plan as a file', async () => {
  const app = await openApp({ ...small, init: noDatabase });
  const { page } = app;
  try {
    await rested(page);
    const alert = page.getByRole('alert');
    expect(await alert.textContent()).toMatch(/no place to keep plans.*save it as a file/s);
    await girthPoint(page, 1).focus();
    await page.keyboard.press('ArrowRight');
    const girth = await girthOf(girthPoint(page, 1));
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      alert.getByRole('button', { name: 'Save as a file' }).click(),
    ]);
    expect(download.suggestedFilename()).toBe('Orchard trug.girthline.json');
    await alert.getByRole('button', { name: 'Put away' }).click();
    await startFrom(page, 'Russet jar');
    await rested(page);
    await page.getByRole('button', { name: 'Undo' }).click();
    expect(await girthOf(girthPoint(page, 1))).toBe(girth);
    expect([app.pageErrors, app.consoleErrors]).toEqual([[], []]);
  } finally {
    await app.close();
  }
});

test('a shelf of a newer Girthline is said to be so and is left untouched', async () => {
  const app = await openApp(small);
  const { page } = app;
  try {
    await rested(page);
    await girthPoint(page, 1).focus();
    await page.keyboard.press('ArrowRight');
    await expect.poll(async () => (await storedShelf(page)).plans.length, patience).toBe(1);
    // what a newer version in another window does: it opens the database at its own version
    await page.evaluate(
      () =>
        new Promise<void>((resolve, reject) => {
          const request = indexedDB.open('girthline', 99);
          request.onsuccess = () => {
            request.result.close();
            resolve();
          };
          request.onerror = () => reject(request.error);
        }),
    );
    const alert = page.getByRole('alert');
    await alert.waitFor();
    expect(await alert.textContent()).toContain('newer Girthline');
    const before = await storedShelf(page);
    await girthPoint(page, 1).focus();
    await page.keyboard.press('ArrowRight');
    await page.reload();
    await rested(page);
    expect(await alert.textContent()).toContain('left untouched');
    await girthPoint(page, 1).focus();
    await page.keyboard.press('ArrowRight');
    await rested(page);
    expect(await storedShelf(page)).toEqual(before);
    expect([app.pageErrors, app.consoleErrors]).toEqual([[], []]);
  } finally {
    await app.close();
  }
});

test('a full disk is said at once, the work is offered as a file, and it is kept once there is room', async () => {
  const app = await openApp(small);
  const { page, context, address } = app;
  try {
    await rested(page);
    const origin = address.replace(/\/$/, '');
    const cdp = await context.newCDPSession(page);
    await cdp.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
    await girthPoint(page, 1).focus();
    const alert = page.getByRole('alert');
    // the browser has set a little room aside beforehand; it is used up first
    const press = async () => {
      await page.keyboard.press('ArrowRight');
      return alert.count();
    };
    await expect.poll(press, { timeout: 60_000, interval: 400 }).toBe(1);
    expect(await alert.textContent()).toMatch(/no room left.*not kept/s);
    const girth = await girthOf(girthPoint(page, 1));
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      alert.getByRole('button', { name: 'Save as a file' }).click(),
    ]);
    const text = await readFile(await download.path(), 'utf8');
    expect(JSON.parse(text).girthLine.points[1].girth).toBeCloseTo(girth * 25.4, 6);
    await cdp.send('Storage.overrideQuotaForOrigin', { origin });
    await expect.poll(() => alert.count(), patience).toBe(0);
    const [record] = (await storedShelf(page)).plans;
    expect(record?.plan.girthLine.points[1]?.girth).toBeCloseTo(girth * 25.4, 6);
  } finally {
    await app.close();
  }
});
