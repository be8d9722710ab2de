import { expect, test } from 'vitest';
import { girthPoint, openedDesk, patience, rested, summaryOf } from './desk.ts';

const desk = openedDesk({ width: 1280, height: 900, webgl: false });

test('a page that is opened again has its basket before a worker has made one, and the same', async () => {
  const { page } = desk();
  const belly = await summaryOf(page, 'Belly');
  await page.addInitScript(countWorkers);
  const atRest = async () => {
    // what is looked at is kept once it has been at rest for a while
    await page.waitForTimeout(1500);
    await page.reload();
    await rested(page);
    return page.evaluate(() => (globalThis as unknown as CountedWorkers).workersAtRest);
  };
  await expect.poll(atRest, patience).toBe(0);
  expect(await summaryOf(page, 'Belly')).toBe(belly);
  const made = () => page.evaluate(() => (globalThis as unknown as CountedWorkers).workersMade);
  await expect.poll(made, patience).toBeGreaterThan(0);
  await girthPoint(page, 1).focus();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Control+z');
  await rested(page);
  expect(await summaryOf(page, 'Belly')).toBe(belly);
});

interface CountedWorkers {
  readonly workersMade: number;
  /** When the page first said that its basket is at rest. */
  readonly workersAtRest?: number;
}

const countWorkers = `
  globalThis.workersMade = 0;
  globalThis.Worker = class extends Worker {
    constructor(...all) {
      super(...all);
      globalThis.workersMade += 1;
    }
  };
  new MutationObserver(() => {
    if (!document.querySelector('.status[data-rested=true]')) return;
    globalThis.workersAtRest ??= globalThis.workersMade;
  }).observe(document, { subtree: true, childList: true, attributes: true });
`;
