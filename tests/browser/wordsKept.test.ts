/** As `words.test.ts`: the shelf, what is asked there, notices about keeping, and the bench. */
import { readFile } from 'node:fs/promises';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { appWords } from '#words/app.ts';
import { benchWords } from '#words/bench.ts';
import { benchPadWords } from '#words/benchPad.ts';
import { keepNoticeWords } from '#words/keepNotices.ts';
import { shelfWords } from '#words/shelf.ts';
import { takeWords } from '#words/take.ts';
import { demos } from '../../src/plan/demo/demos.ts';
import { marked } from '../words/mark.ts';
import { atRest, presentRow } from './benchDesk.ts';
import type { AppOptions, OpenedApp } from './chromium.ts';
import { girthPoint, patience, rested } from './desk.ts';
import { dropped } from './dropped.ts';
import type { View } from './everyone.ts';
import { faultsOf } from './everyone.ts';
import {
  builtMarked,
  marksMissing,
  openMarked,
  openPlan,
  openSections,
  openText,
  press,
} from './markedApp.ts';

const app = marked(appWords);
const shelf = marked(shelfWords);
const [trug, pot] = demos;

let built: ReturnType<typeof builtMarked>;
let opened: OpenedApp | undefined;
beforeAll(() => {
  built = builtMarked();
});
afterEach(async () => {
  await opened?.close();
  opened = undefined;
});
afterAll(() => built?.remove());

async function open(options: AppOptions = {}) {
  opened = await openMarked(built.dist, { webgl: false, ...options });
  await rested(opened.page);
  return { page: opened.page, context: opened.context, ...marksMissing(opened.page) };
}

test('the shelf, versions, and what is asked', async () => {
  const { page, look, missing } = await open();
  await page.goto(`${page.url()}#shelf`);
  await page.locator('.shelf-card').first().waitFor();
  await look('an empty shelf');
  await page.goto(page.url().replace('#shelf', '#plan'));
  await openPlan(page, trug.plan);
  const name = await page.locator('.head input').first().inputValue();
  await openPlan(page, pot?.plan ?? trug.plan);
  await page.goto(page.url().replace(/#.*/, '#shelf'));
  await page.locator('.shelf-card[data-present]').nth(1).waitFor();
  await look('shelf');
  await press(page, shelf.card.renameThis(name));
  await look('a name being typed');
  await page.keyboard.press('Escape');
  const [download] = await Promise.all([page.waitForEvent('download'), press(page, shelf.saveAll)]);
  const archive = await readFile(await download.path());
  await press(page, shelf.card.copyThis(name));
  await page.locator('.shelf-card[data-present]').nth(2).waitFor();
  await press(page, shelf.card.deleteThis(name));
  await page.locator('.shelf-told button').first().waitFor();
  await look('one deleted');
  await page.getByLabel(shelf.search).fill('?');
  await look('none found');
  await page.getByLabel(shelf.search).fill('');
  await openText(page, '{"12": 3');
  await page.locator('.shelf-told li').first().waitFor();
  await look('a file that is none');

  await page.locator('.shelf-card[data-present] a[href^="#shelf="]').first().click();
  await page.locator('.versions').waitFor();
  await look('no versions');
  await page.locator('.version-new input').fill('7');
  await page.keyboard.press('Enter');
  await page.locator('.version-line').first().waitFor();
  await look('versions');
  await page.locator('.version-acts button').first().click();
  await rested(page);
  await look('a version brought back');
  await page.locator('.menu > button').click();
  await page.locator('.menu-link').click();
  await page.locator('.version-line').nth(1).waitFor();
  await look('versions put by by themselves');
  await page.keyboard.press('Escape');
  await page.locator('.versions').waitFor({ state: 'detached' });
  await page.goto(page.url().replace(/#.*/, '#plan'));
  await rested(page);
  const plan = { ...trug.plan, name: '5', notes: '' };
  for (const width of [590, 591, 592]) {
    const points = [{ row: 32, girth: width }];
    await openText(page, JSON.stringify({ ...plan, girthLine: { points, rows: {} } }));
    const question = page.locator('dialog.ask:not(.versions)');
    if (width > 590) {
      await question.waitFor();
      await look('a twin');
      await press(page, marked(takeWords).twin.both);
    }
    await rested(page);
  }
  await page.goto(page.url().replace(/#.*/, '#shelf'));
  await dropped(page, 'torn.girthline.json', archive);
  await expect.poll(() => page.locator('.shelf-told-files').count(), patience).toBe(1);
  await look('an archive');
  expect(missing).toEqual({});
});

test('a link, a clash, and notices about keeping', async () => {
  const { page, context, look, missing } = await open();
  await openPlan(page, trug.plan);
  await page.locator('.menu > button').click();
  await press(page, app.file.copyLink);
  const address = await page.locator('.link-field').inputValue();
  await page.keyboard.press('Escape');
  await openPlan(page, pot?.plan ?? trug.plan);
  await page.goto(address);
  await page.locator('dialog.ask').waitFor();
  await look('a link that brings a plan');
  await press(page, marked(takeWords).link.leave);
  await page.goto(address.slice(0, -30));
  await page.getByRole('alert').waitFor();
  await look('a link cut short');
  await press(page, app.putAway);

  const other = await context.newPage();
  await other.goto(page.url());
  await rested(other);
  await girthPoint(other, 0).focus();
  await other.keyboard.press('ArrowRight');
  await page.bringToFront();
  await page.getByRole('alert').waitFor(patience);
  await look('changed in another window');
  await press(page, marked(keepNoticeWords).clash.takeTheirs);
  await look('the other one taken');
  expect(missing).toEqual({});
});

test.each([
  [1440, 900],
  [360, 740],
])('words that are longer by their marks fit at %i × %i', async (width, height) => {
  const { page } = await open({ width, height });
  const at = (hash: string) => page.goto(page.url().replace(/#.*|$/, hash));
  const views: readonly View[] = [
    { name: 'plan', go: openSections },
    { name: 'compare', go: (page) => press(page, app.compare) },
    { name: 'shelf', go: () => at('#shelf') },
    { name: 'bench', go: () => at('#bench').then(() => atRest(page)) },
    { name: 'pad', go: (page) => press(page, marked(benchWords).buttons.measured) },
  ];
  expect(await faultsOf(page, views, 'places')).toEqual({});
});

test('without a place to keep plans', async () => {
  const init = `Object.defineProperty(globalThis, 'indexedDB', { value: undefined });`;
  const { page, look, missing } = await open({ init });
  await page.getByRole('alert').waitFor();
  await look('not kept');
  await page.goto(`${page.url()}#shelf`);
  await page.locator('.shelf-card').first().waitFor();
  await look('a shelf without a place');
  await page.goto(page.url().replace(/#.*/, '#bench'));
  await atRest(page);
  await look('a bench without a place');
  expect(missing).toEqual({});
});

test.each(['in', 'mm'] as const)('the bench, in %s', async (unit) => {
  const { page, look, missing } = await open();
  const bench = marked(benchWords);
  await openPlan(page, { ...trug.plan, display: { unit } });
  await page.goto(page.url().replace(/#.*|$/, '#bench'));
  await atRest(page);
  await look('the first row');
  while ((await presentRow(page)) < 8) await press(page, bench.buttons.done);
  const target = Number.parseInt(
    (await page.locator('.row-card-tape .unseen').textContent()) ?? '',
    10,
  );
  await press(page, bench.buttons.measured);
  await look('the pad');
  const field = page.locator('.pad-value input');
  for (const typed of [2 * target, target / 2, 1, 99999, Math.round(0.93 * target)]) {
    await field.fill(`${typed}`);
    await look(`a girth of ${typed}`);
  }
  await page.locator('.pad [type=submit]').click();
  await atRest(page);
  await page.locator('.replan-more summary').first().click();
  await look('a replan, its limits');
  await press(page, bench.now.takeIt);
  await atRest(page);
  await look('a replan taken');
  for (const [tab, typed] of [
    ['length', [target, Math.round(target / 3)]],
    ['width', [target, Math.round(target / 3), Math.round(target / 4)]],
    ['height', [0, target, Math.round(target / 10)]],
  ] as const) {
    await press(page, bench.buttons.measured);
    await press(page, marked(benchPadWords).tabs[tab]);
    for (const one of typed) {
      await field.fill(`${one}`);
      await look(`a ${tab} of ${one}`);
    }
    await page.locator('.pad [type=submit]').click();
    await page.keyboard.press('Escape');
    await atRest(page);
    await look(`${tab} measured`);
  }
  await page.getByLabel(bench.head.basket).selectOption('new');
  await atRest(page);
  await look('another basket');
  const rows = trug.plan.bands.reduce((sum, band) => sum + band.rows, 0);
  for (let row = 1; row <= rows; row += 1) await press(page, bench.buttons.done);
  await look('all woven');
  await page.goto(page.url().replace(/#.*/, '#plan'));
  await rested(page);
  await look('the plan with what was measured');
  expect(missing).toEqual({});
});
