/** How long the shelf takes to open with a thousand plans on it, in the built app. */
import type { Page } from 'playwright-core';
import { sketch } from '../../src/mesh/sketch.ts';
import { demos } from '../../src/plan/demo/demos.ts';
import { openApp } from '../browser/chromium.ts';
import { fillShelf } from '../browser/shelfStore.ts';

export interface ShelfTimes {
  readonly plans: number;
  /** From the press on “Shelf” until its cards are drawn, ms: the first time, and the middle of later ones. */
  readonly first: number;
  readonly later: number;
}

const plans = 1000;
const rounds = 9;

/** Fills a shelf, and opens it a few times. */
export async function shelfTimes(): Promise<ShelfTimes> {
  // without WebGL, so that drawing the basket in software does not stand in the way
  const app = await openApp({ width: 1440, height: 900, webgl: false });
  const { page } = app;
  try {
    await page.waitForSelector('.status[data-rested=true]');
    await fillShelf(page, records(), cards());
    // the page fetches the shelf's script once it has come to rest
    await page.waitForTimeout(6000);
    const first = await opened(page);
    const later: number[] = [];
    for (let round = 0; round < rounds; round += 1) later.push(await opened(page));
    const middle = later.toSorted((one, other) => one - other)[(rounds - 1) / 2] ?? Number.NaN;
    return { plans, first, later: middle };
  } finally {
    await app.close();
  }
}

async function opened(page: Page): Promise<number> {
  const time = await page.evaluate(async () => {
    const began = performance.now();
    const link = [...document.querySelectorAll('a')].find((one) => one.hash === '#shelf');
    link?.click();
    // no function is given a name in here: tsx would wrap it in one that the page does not have
    while (document.querySelectorAll('.shelf-card[data-present]').length < 20) {
      await new Promise((resolve) => requestAnimationFrame(resolve));
    }
    await new Promise((resolve) => requestAnimationFrame(resolve));
    return performance.now() - began;
  });
  await page.getByRole('link', { name: 'Back to the plan' }).click();
  await page.waitForSelector('.bench');
  return time;
}

function records() {
  return Array.from({ length: plans }, (_, at) => {
    const plan = { ...(demos[at % demos.length] ?? demos[0]).plan, name: `Basket ${at}` };
    return { id: `p${at}`, plan, revision: 1, by: '' };
  });
}

function cards() {
  return records().map(({ id, plan }, at) => ({
    ...{ id, name: plan.name, notes: plan.notes, made: at, updated: at, revision: 1 },
    ...{ versioned: 0, thumbnail: sketch(plan) },
  }));
}
