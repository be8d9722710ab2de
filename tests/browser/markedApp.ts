/** The app built in the made-up language of `tests/words`, in which every text is marked. */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { appWords } from '#words/app.ts';
import { writePlan } from '../../src/plan/read.ts';
import type { Plan } from '../../src/plan/schema.ts';
import { marked } from '../words/mark.ts';
import { madeUp, markedProject } from '../words/markedProject.ts';
import type { AppOptions, OpenedApp } from './chromium.ts';
import { openApp } from './chromium.ts';
import { rested } from './desk.ts';
import { dropped } from './dropped.ts';
import { folderServer } from './folderServer.ts';
import { unmarkedTexts } from './pageTexts.ts';

/** Keeps what canvases are given to write, which no page shows as text. */
const noteDrawn = `
  globalThis.drawnTexts = [];
  const { fillText } = CanvasRenderingContext2D.prototype;
  CanvasRenderingContext2D.prototype.fillText = function (text, ...rest) {
    globalThis.drawnTexts.push(text);
    return fillText.call(this, text, ...rest);
  };
`;

/** The name of every file that the runs open, which the page tells. */
const file = 'torn.girthline.json';

/** Builds the app; throws with what the build said where it fails. `remove` takes all of it away again. */
export function builtMarked() {
  const project = markedProject();
  const { status, stderr } = spawnSync(
    process.execPath,
    ['node_modules/vite/bin/vite.js', 'build'],
    {
      cwd: project.folder,
      env: { ...process.env, GIRTHLINE_LANGUAGE: madeUp },
      encoding: 'utf8',
    },
  );
  if (status !== 0) throw new Error(`the app could not be built: ${stderr}`);
  return { dist: join(project.folder, 'dist'), remove: () => project[Symbol.dispose]() };
}

/** Opens what was built. Motion is reduced, so that nothing is looked at on its way. */
export async function openMarked(dist: string, options: AppOptions = {}): Promise<OpenedApp> {
  const server = await folderServer(dist, '/');
  const wide = { width: 1440, height: 900, reducedMotion: 'reduce' } as const;
  return openApp({ ...wide, ...options, init: noteDrawn + (options.init ?? ''), server });
}

/** Goes from view to view and gathers the texts without a mark, by view. */
export function marksMissing(page: Page) {
  const missing: Record<string, readonly string[]> = {};
  return {
    missing,
    /** Looks at the page as it is now; `view` says in the report what it is. */
    async look(view: string): Promise<void> {
      const bare = await unmarkedTexts(page, file);
      if (bare.length > 0) missing[view] = bare;
    },
  };
}

/** Opens a text as a file that is dropped on the page. */
export function openText(page: Page, text: string): Promise<void> {
  return dropped(page, file, Buffer.from(text));
}

let number = 100;

/** Opens a plan under a name that is a number, without notes, and waits until it rests. */
export async function openPlan(page: Page, plan: Plan): Promise<void> {
  number += 1;
  await openText(page, writePlan({ ...plan, name: `${number}`, notes: '' }));
  await page.waitForFunction(
    (name) => document.querySelector<HTMLInputElement>('.head input')?.value === name,
    `${number}`,
  );
  await rested(page);
}

/** Opens every section of the plan panel, on a phone after choosing its tab. */
export async function openSections(page: Page): Promise<void> {
  const tab = page.getByRole('tab', { name: marked(appWords).rooms.plan, exact: true });
  if ((await tab.count()) > 0) await tab.click();
  const shut = page.locator('.panel [aria-expanded=false]:visible');
  while ((await shut.count()) > 0) await shut.first().click();
}

/** Presses a button by its whole name. */
export async function press(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name, exact: true }).click();
}

/** What canvases were given to write so far. */
export function drawnTexts(page: Page): Promise<string> {
  return page.evaluate(() =>
    (globalThis as unknown as { drawnTexts: string[] }).drawnTexts.join(' '),
  );
}
