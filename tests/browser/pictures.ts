/**
 * `npm run pictures`: takes the pictures of README.md and docs/ anew, from the built app, into
 * docs/pictures. Look at each before keeping it.
 */
import { mkdirSync, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { demos } from '../../src/plan/demo/demos.ts';
import { russetJar } from '../../src/plan/demo/russetJar.ts';
import { writePlan } from '../../src/plan/read.ts';
import type { GirthPoint, Plan } from '../../src/plan/schema.ts';
import { planSchema } from '../../src/plan/schema.ts';
import type { AppOptions } from './chromium.ts';
import { openApp } from './chromium.ts';
import { stagePicture } from './stagePicture.ts';

const folder = fileURLToPath(new URL('../../docs/pictures/', import.meta.url));
const quality = 88;

const desktop = { width: 1440, height: 900 } as const;
const tablet = { width: 820, height: 1180 } as const;

mkdirSync(folder, { recursive: true });
await wholePage('app', desktop);
await wholePage('app-night', { ...desktop, colorScheme: 'dark' });
await wholePage('app-tablet', tablet);
await rowByRow('row-by-row', desktop, 14);
await readings('sizes-and-lean', tablet);
for (const { id, plan } of demos) await stage(id, plan, 'Three-quarter');
await stage('orchard-trug-underside', demos[0].plan, 'Underside');
await stage('label-pot-top', planOf('label-pot'), 'Top');
await girthLine('girth-line', demos[0].plan);
await outline('pull-in-early', jar([at(4, 600), at(12, 700), at(36, 560)]));
await outline('pull-in-late', jar([at(4, 600), at(12, 700), at(28, 700), at(36, 560)]));

/** The app as a person sees it. */
async function wholePage(name: string, options: AppOptions): Promise<void> {
  await taken(name, { options }, (page, path) => page.screenshot({ path, type: 'jpeg', quality }));
}

/** The app with the demo basket as it stands after a row. */
async function rowByRow(name: string, options: AppOptions, row: number): Promise<void> {
  await taken(name, { options }, async (page, path) => {
    await page.getByRole('button', { name: 'Row by row' }).click();
    await page.locator('.build-progress').waitFor();
    await page.locator('.build-progress').waitFor({ state: 'detached' });
    await page.getByLabel('Row woven last').fill(`${row}`);
    await drawn(page);
    await page.screenshot({ path, type: 'jpeg', quality });
  });
}

/** The app with its sizes on the stage and its rows coloured by their lean. */
async function readings(name: string, options: AppOptions): Promise<void> {
  await taken(name, { options }, async (page, path) => {
    await page.getByRole('button', { name: 'Sizes' }).click();
    await page.getByLabel('Colour rows by').selectOption('lean');
    await page.mouse.move(0, 0);
    await drawn(page);
    await page.screenshot({ path, type: 'jpeg', quality });
  });
}

/** A plan's basket on its table, from one of the five sides. */
async function stage(name: string, plan: Plan, view: string): Promise<void> {
  await taken(
    name,
    { plan, options: { ...desktop, reducedMotion: 'reduce' } },
    async (page, path) => {
      await page.getByRole('button', { name: view, exact: true }).click();
      await drawn(page);
      await stagePicture(page, { path, type: 'jpeg', quality });
    },
  );
}

/** A plan's girth line. */
async function girthLine(name: string, plan: Plan): Promise<void> {
  await taken(name, { plan, options: { ...desktop, pixelRatio: 2 } }, async (page, path) => {
    await page.locator('.girth-box').screenshot({ path, type: 'jpeg', quality });
  });
}

/** A plan's basket in outline, from the side. */
async function outline(name: string, plan: Plan): Promise<void> {
  const options = { ...desktop, webgl: false, pixelRatio: 2 };
  await taken(name, { plan, options }, async (page, path) => {
    await page.locator('.outline-drawing').first().screenshot({ path, type: 'jpeg', quality });
  });
}

/** Opens the app on a plan, or as a newcomer finds it, and takes one picture once it is drawn. */
async function taken(
  name: string,
  { plan, options }: { readonly plan?: Plan; readonly options: AppOptions },
  take: (page: Page, path: string) => Promise<unknown>,
): Promise<void> {
  const kept = plan
    ? `localStorage.setItem('girthline.draft', ${JSON.stringify(writePlan(plan))})`
    : '';
  // as one finds it who has been here before
  const init = `localStorage.setItem('girthline.greeted', 'yes');${kept}`;
  const app = await openApp({ ...options, init });
  try {
    await app.page.waitForSelector('.status[data-rested=true]');
    await drawn(app.page);
    const path = `${folder}${name}.jpg`;
    await take(app.page, path);
    console.log(`${name}.jpg ${Math.round(statSync(path).size / 1000)} kB`);
  } finally {
    await app.close();
  }
}

/** Time enough for the stage to be drawn by software. */
async function drawn(page: Page): Promise<void> {
  await page.waitForTimeout(3000);
}

function planOf(id: string): Plan {
  const demo = demos.find((one) => one.id === id);
  if (!demo) throw new Error(`no demo "${id}"`);
  return demo.plan;
}

/** The jar with another girth line. */
function jar(points: readonly GirthPoint[]): Plan {
  return planSchema.parse({ ...russetJar, girthLine: { points } });
}

function at(row: number, girth: number): GirthPoint {
  return { row, girth };
}
