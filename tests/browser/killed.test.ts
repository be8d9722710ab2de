import type { BrowserContext, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { checkPlan } from '../../src/plan/read.ts';
import { openApp } from './chromium.ts';
import { girthPoint, rested } from './desk.ts';
import type { StoredShelf } from './shelfStore.ts';
import { storedShelf } from './shelfStore.ts';

const kills = 50;

/** What is kept after a kill may be older by this much than the kill, ms. */
const mostLost = 1000;

test('a tab killed 50 times at any moment of saving loses no more than its last second, and comes back whole', async () => {
  const app = await openApp({ width: 700, height: 500, webgl: false });
  const { context, address } = app;
  let page = app.page;
  try {
    await rested(page);
    let changes = 0;
    for (let kill = 0; kill < kills; kill += 1) {
      const log: { readonly text: string; readonly time: number }[] = [
        { text: await shown(page), time: 0 },
      ];
      // a run of changes, and the kill falls anywhere in it and in the saving that follows
      const point = girthPoint(page, kill % 3);
      await point.focus();
      const presses = 1 + (kill % 4);
      for (let press = 0; press < presses; press += 1) {
        const time = Date.now();
        await page.keyboard.press(kill % 2 === 0 ? 'ArrowRight' : 'ArrowLeft');
        log.push({ text: await shown(page), time });
        changes += 1;
        await page.waitForTimeout((kill * 37 + press * 61) % 90);
      }
      await page.waitForTimeout((kill * 53) % 310);
      const killed = Date.now();
      await crash(context, page);
      page = await context.newPage();
      await page.goto(address, { waitUntil: 'commit' });
      await page.locator('[data-handle="point-0"]').waitFor();
      const back = await shown(page);
      const last = log.findLastIndex(({ text }) => text === back);
      expect(last, `kill ${kill}: ${back} was never on the page`).toBeGreaterThanOrEqual(0);
      // the change after the one that came back is no older than a second
      const lost = log[last + 1];
      if (lost) expect(killed - lost.time, `kill ${kill}`).toBeLessThanOrEqual(mostLost);
      expectWhole(await storedShelf(page));
    }
    expect(changes).toBeGreaterThan(100);
  } finally {
    await app.close();
  }
}, 300_000);

/** The whole girth line as the page shows it. */
function shown(page: Page): Promise<string> {
  return page
    .locator('[data-handle]')
    .evaluateAll((points) => points.map((one) => one.getAttribute('aria-valuetext')).join(' | '));
}

/** Ends the page's process as a crash does: nothing of the page runs any more. */
async function crash(context: BrowserContext, page: Page): Promise<void> {
  const cdp = await context.newCDPSession(page);
  const gone = page.waitForEvent('crash');
  cdp.send('Page.crash').catch(() => {});
  await gone;
  // the browser never answers that a crashed page has closed
  page.close().catch(() => {});
}

/** Every record is a whole plan, and what was written together is of one piece. */
function expectWhole({ cards, plans, tabs, states }: StoredShelf): void {
  for (const { id, plan, revision } of plans) {
    expect(checkPlan(plan, id).ok).toBe(true);
    expect(cards.find((card) => card.id === id)).toMatchObject({ name: plan.name, revision });
  }
  expect(cards).toHaveLength(plans.length);
  for (const { tab, first, cursor, last } of tabs) {
    const own = states.filter((state) => state.tab === tab);
    expect(own.map(({ at }) => at)).toEqual(own.map((_, index) => first + index));
    expect(own.at(-1)?.at).toBe(last);
    const present = own.find(({ at }) => at === cursor);
    const record = plans.find(({ id }) => id === present?.id);
    if (record?.by === tab) expect(present?.plan).toEqual(record.plan);
  }
}
