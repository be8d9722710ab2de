/**
 * From an edit to its picture, in the built app: the belly is dragged by the mouse, and for each
 * shape that reaches the page the time runs from the edit until the page has handed over all draw
 * calls for it. Left out is what a machine without a graphics card adds: the draw calls do nothing,
 * and the wait for the next frame, which software composing stretches, is not counted.
 */
import type { Page } from 'playwright-core';
import { openApp } from '../browser/chromium.ts';
import { frameScripts } from './frameScript.ts';
import { noteFrames } from './frames.ts';

export interface EditTimes {
  /** Shapes that were measured. */
  readonly shapes: number;
  /** From the edit to the picture, ms: the middle, and what 95 % stay under. */
  readonly pictureP50: number;
  readonly pictureP95: number;
  /** Part of it in the worker (settling and mesh), and in the frame that draws. */
  readonly workerP50: number;
  readonly workerP95: number;
  readonly frameP50: number;
  readonly frameP95: number;
  /** Script on the page's main thread in the drag over the shapes shown in it, ms, as Chromium counts it. */
  readonly scriptMean: number;
}

/** Moves of the mouse in a drag, and the time between them, ms. */
const moves = 100;
const pause = 40;

/** Where a page shows that all its baskets are at rest, and the measure of the one that is dragged. */
interface Place {
  readonly atRest: (page: Page) => Promise<unknown>;
  readonly measure: string;
}

const desk: Place = {
  atRest: (page) => page.waitForSelector('.status[data-rested=true]'),
  measure: 'edit-to-shape',
};

const compare: Place = {
  atRest: (page) =>
    page.waitForFunction(
      () => document.querySelectorAll('.side-state[data-rested=true]').length === 2,
    ),
  measure: 'edit-to-shape-b',
};

/**
 * Drags the belly of the demo basket twice: the first time just opened, the second time warmed up. Then
 * drags that of a second plan twice, with both baskets shown.
 */
export async function editTimes(): Promise<{
  readonly first: EditTimes;
  readonly later: EditTimes;
  readonly besideFirst: EditTimes;
  readonly besideLater: EditTimes;
  /**
   * Script time of a frame of the page's main thread in one more drag, ms: what 95 % stay under by the thread's own
   * clock and by the wall's, and the mean by the wall's.
   */
  readonly frameScriptP95: number;
  readonly frameScriptWallP95: number;
  readonly frameScriptMean: number;
  /** Scripts that the page asked for before the second plan was opened, as named in `dist/assets`. */
  readonly scripts: readonly string[];
}> {
  const app = await openApp({ width: 1440, height: 900, init: noteFrames(false) });
  const { page } = app;
  try {
    const [first, later] = [await oneDrag(page, desk), await oneDrag(page, desk)];
    const scripts = await scriptsOf(page);
    await desk.atRest(page);
    const perFrame = await frameScripts(page, () => dragBelly(page));
    await desk.atRest(page);
    await page.getByRole('button', { name: 'Compare', exact: true }).click();
    const [besideFirst, besideLater] = [await oneDrag(page, compare), await oneDrag(page, compare)];
    const { thread, wall } = perFrame;
    const perFrameTimes = {
      frameScriptP95: percentile(thread, 0.95),
      frameScriptWallP95: percentile(wall, 0.95),
      frameScriptMean: wall.reduce((sum, one) => sum + one, 0) / wall.length,
    };
    return { first, later, besideFirst, besideLater, ...perFrameTimes, scripts };
  } finally {
    await app.close();
  }
}

async function oneDrag(page: Page, { atRest, measure }: Place): Promise<EditTimes> {
  await atRest(page);
  await page.evaluate(() => performance.clearMeasures());
  const clock = await scriptClock(page);
  const before = await clock();
  await dragBelly(page);
  const script = (await clock()) - before;
  await atRest(page);
  const shapes = await readShapes(page, measure);
  const all = (part: (shape: Shape) => number, share: number) =>
    percentile(shapes.map(part), share);
  return {
    shapes: shapes.length,
    pictureP50: all(({ page: onPage, frame }) => onPage + frame, 0.5),
    pictureP95: all(({ page: onPage, frame }) => onPage + frame, 0.95),
    workerP50: all(({ worker }) => worker, 0.5),
    workerP95: all(({ worker }) => worker, 0.95),
    frameP50: all(({ frame }) => frame, 0.5),
    frameP95: all(({ frame }) => frame, 0.95),
    scriptMean: script / Math.max(1, shapes.length),
  };
}

/** Tells the time that scripts of the page's main thread have taken so far, ms. */
async function scriptClock(page: Page): Promise<() => Promise<number>> {
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable');
  return async () => {
    const { metrics } = await session.send('Performance.getMetrics');
    return 1000 * (metrics.find(({ name }) => name === 'ScriptDuration')?.value ?? Number.NaN);
  };
}

async function dragBelly(page: Page): Promise<void> {
  const box = await page.locator('[data-handle="point-1"]').boundingBox();
  if (!box) throw new Error('the girth line has no second point');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let move = 1; move <= moves; move += 1) {
    // out and back, never twice at one place
    await page.mouse.move(x - 45 * Math.sin((2 * Math.PI * move) / moves) - move / 7, y);
    await page.waitForTimeout(pause);
  }
  await page.mouse.up();
}

/** One warm shape, ms: edit to the page's having it (worker included), and the frame that draws it. */
interface Shape {
  readonly page: number;
  readonly worker: number;
  readonly frame: number;
}

function readShapes(page: Page, measure: string): Promise<Shape[]> {
  return page.evaluate((measure) => {
    const { frames } = globalThis as unknown as { frames: { began: number; took: number }[] };
    return performance.getEntriesByName(measure).flatMap((entry) => {
      const { startTime, duration, detail } = entry as PerformanceMeasure;
      const { worker, polished } = detail as { worker: number; polished: boolean };
      const frame = frames.find(({ began }) => began >= startTime + duration);
      if (polished || !frame) return [];
      return [{ page: duration, worker, frame: frame.took }];
    });
  }, measure);
}

function scriptsOf(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    performance
      .getEntriesByType('resource')
      .flatMap(({ name }) => /[^/]+\.js$/.exec(new URL(name).pathname) ?? []),
  );
}

function percentile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((one, other) => one - other);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}
