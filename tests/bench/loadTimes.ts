/**
 * From asking for the page to the first basket on it, in the built app: over the network of this machine
 * with an empty cache, and from the service worker with the server still there, by when the browser also has
 * the shape of the plan that was looked at last (src/keep/shapeStore.ts). Two times: until the page
 * has the settled shape and has handed over the draw calls for it, with the calls themselves put out of
 * work; and until this machine's drawing, in software, has done them too.
 */
import type { BrowserContext, Page } from 'playwright-core';
import { openApp } from '../browser/chromium.ts';
import { noteFrames } from './frames.ts';

export interface LoadTimes {
  /** Middle of the runs, ms. */
  readonly cold: number;
  readonly fromWorker: number;
}

const runs = 5;

/** Notes when the page first says that its basket has settled. */
const noteBasket = `
  new MutationObserver(() => {
    globalThis.settledAt ??= document.querySelector('.status[data-state=settled]')
      ? performance.now() : undefined;
  }).observe(document, { subtree: true, childList: true, attributes: true });
`;

/** Loads the app a few times each way. `isDrawn` leaves the draw calls at work. */
export async function loadTimes(isDrawn: boolean): Promise<LoadTimes> {
  const cold: number[] = [];
  const fromWorker: number[] = [];
  for (let run = 0; run < runs; run += 1) {
    const init = noteBasket + noteFrames(isDrawn);
    const app = await openApp({ width: 1440, height: 900, init, serviceWorkers: 'allow' });
    try {
      cold.push(await firstBasket(app.page));
      await app.page.evaluate(async () => {
        await navigator.serviceWorker.ready;
      });
      await app.page.waitForTimeout(1000);
      await app.page.close();
      fromWorker.push(await firstBasket(await anew(app.context, app.address)));
    } finally {
      await app.close();
    }
  }
  return { cold: middle(cold), fromWorker: middle(fromWorker) };
}

async function anew(context: BrowserContext, address: string): Promise<Page> {
  const page = await context.newPage();
  await page.goto(address);
  return page;
}

/** Time from asking for the page to the end of the first frame that drew the settled basket, ms. */
async function firstBasket(page: Page): Promise<number> {
  const drawn = await page.waitForFunction(() => {
    const { settledAt, frames } = globalThis as unknown as {
      settledAt?: number;
      frames: { began: number; took: number }[];
    };
    const frame = frames.find(({ began }) => settledAt !== undefined && began >= settledAt);
    return frame && frame.began + frame.took;
  });
  return Number(await drawn.jsonValue());
}

function middle(values: readonly number[]): number {
  return values.toSorted((one, other) => one - other)[values.length >> 1] ?? Number.NaN;
}
