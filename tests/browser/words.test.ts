/**
 * In a language in which every text is marked, whatever has no mark stands in the code and not in the words. A
 * new view belongs here.
 */
import { readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { appWords } from '#words/app.ts';
import { buildUpWords } from '#words/buildUp.ts';
import { compareWords } from '#words/compare.ts';
import { planLetters } from '#words/planLetters.ts';
import { printWords } from '#words/print.ts';
import { rowTableWords } from '#words/rowTable.ts';
import { stageWords } from '#words/stage.ts';
import { tourWords } from '#words/tour.ts';
import { demos } from '../../src/plan/demo/demos.ts';
import type { Plan } from '../../src/plan/schema.ts';
import { pdfText } from '../export/pdf/poppler.ts';
import { marked, unmarked } from '../words/mark.ts';
import { madeUp } from '../words/markedProject.ts';
import type { AppOptions, OpenedApp } from './chromium.ts';
import { girthPoint, patience, rested } from './desk.ts';
import {
  builtMarked,
  drawnTexts,
  marksMissing,
  openMarked,
  openPlan,
  openSections,
  openText,
  press,
} from './markedApp.ts';

const app = marked(appWords);
const [trug] = demos;

let built: ReturnType<typeof builtMarked>;
let opened: OpenedApp | undefined;
beforeAll(() => {
  built = builtMarked();
});
afterEach(async () => {
  await opened?.close();
  const { pageErrors, consoleErrors, outsideRequests } = opened ?? {};
  opened = undefined;
  expect([pageErrors ?? [], consoleErrors ?? [], outsideRequests ?? []]).toEqual([[], [], []]);
});
afterAll(() => built?.remove());

async function open(options: AppOptions = {}) {
  opened = await openMarked(built.dist, options);
  return { page: opened.page, ...marksMissing(opened.page) };
}

test('the page before its scripts, and the app among others, are in the language', () => {
  const html = readFileSync(join(built.dist, 'index.html'), 'utf8');
  expect(html).toContain(`<html lang="${madeUp}">`);
  for (const [, text] of html.matchAll(/(?:<title|<p [^>]*|description" content=")[>]?([^<"]*)/g)) {
    expect([text?.slice(0, 1), unmarked(text ?? '')]).toEqual(['⟦', '']);
  }
  const manifest = readFileSync(join(built.dist, 'manifest.webmanifest'), 'utf8');
  const { lang, name, description, short_name, shortcuts } = JSON.parse(manifest);
  expect(lang).toBe(madeUp);
  for (const text of [name, short_name, description, shortcuts[0].name]) {
    expect([text.slice(0, 1), unmarked(text)]).toEqual(['⟦', '']);
  }
});

test('a text without a mark is found, whether it is seen, read out or typed', async () => {
  const { page, look, missing } = await open({ webgl: false });
  await rested(page);
  await look('as built');
  await page.evaluate(() => {
    document.body.insertAdjacentHTML(
      'beforeend',
      '<p>⟦Row⟧ of <b>⟦plums⟧</b></p><button aria-label="away" title="⟦Away⟧"></button>' +
        '<input value="3 cm" placeholder="so"><svg><text>bord</text></svg>',
    );
  });
  await look('with more');
  expect(Object.keys(missing)).toEqual(['with more']);
  expect(missing['with more']).toEqual([
    'p: of',
    'button aria-label: away',
    'input placeholder: so',
    'input value: 3 cm',
    'text: bord',
    'as button: away',
    'as textbox: so',
    'as textbox: 3 cm',
  ]);
});

test('plan, charts, findings, tour and help', async () => {
  const { page, look, missing } = await open({ webgl: false });
  await rested(page);
  await page.locator('.greeting').waitFor();
  await openSections(page);
  await look('plan');
  for (const { id, plan } of demos) {
    await openPlan(page, plan);
    await openSections(page);
    await look(`plan, ${id}`);
  }
  for (const [what, plan] of Object.entries(hardPlans())) {
    await openPlan(page, plan);
    expect(await page.locator('.finding').count()).toBeGreaterThan(0);
    await look(`findings of ${what}`);
  }
  await page.locator('.finding-remedy').first().click();
  await look('a remedy that can be undone');
  await page.locator('.head .button-pair button').first().click();
  await look('a remedy that can be redone');
  await openPlan(page, trug.plan);
  await page.locator('.girth-head .word-help').click();
  await look('a word explained');
  await page.keyboard.press('Escape');
  await girthPoint(page, 1).focus();
  await page.keyboard.press('ArrowRight');
  await look('a point');
  const girth = marked(rowTableWords).plannedOf(12);
  await page.locator('tr[data-row="12"]').click();
  await page.getByLabel(girth).fill('26');
  await page.keyboard.press('Enter');
  await rested(page);
  await look('a row by hand');
  await page.getByLabel(girth).fill('?');
  await page.keyboard.press('Enter');
  await look('no length');
  await page.locator('.greeting .main-button').click();
  const tour = marked(tourWords);
  for (const name of [tour.next, tour.next, tour.next, tour.next, tour.done]) {
    await page.locator('.tour-card').waitFor();
    await look(`tour, before ${name}`);
    await press(page, name);
  }
  await press(page, app.help);
  await look('help');
  await page.keyboard.press('Escape');
  await openText(page, '{"12": 3');
  await page.locator('.problem').waitFor();
  await look('a file that cannot be read');
  await page.setViewportSize({ width: 360, height: 740 });
  await page.locator('[role=tab]').first().waitFor();
  await look('on a phone');
  expect(missing).toEqual({});
});

test('the stage and what lies over it', async () => {
  const { page, look, missing } = await open();
  await rested(page);
  await page.locator('.stage canvas').waitFor();
  const stage = marked(stageWords);
  const buildUp = marked(buildUpWords);
  await press(page, stage.sizes);
  await page.locator('tr[data-row="12"]').hover();
  await page.locator('.stage-reading, .reading').first().waitFor();
  for (const tint of ['lean', 'gap', 'strain']) {
    await page.locator('.stage-tools select').selectOption(tint);
    await page.locator('.tint-legend').waitFor();
    await look(`rows by ${tint}`);
  }
  await page.locator('.save-menu summary').click();
  await look('what it is saved as');
  await page.keyboard.press('Escape');
  await press(page, stage.rowByRow);
  await page.locator('.build-words').waitFor();
  await look('row by row, being settled');
  await page.locator('.build-bar progress').waitFor({ state: 'detached', ...patience });
  for (const row of ['1', '9', '21', '32']) {
    await page.locator('.build-bar input[type=range]').fill(row);
    await look(`row by row, ${row}`);
  }
  await press(page, buildUp.done);
  await press(page, stage.outline);
  await look('outlines');
  expect(missing).toEqual({});
});

test('the link, the sheet and the gauges', async () => {
  const { page, look, missing } = await open({ webgl: false });
  await rested(page);
  await openPlan(page, { ...trug.plan, oddEnd: { ...trug.plan.oddEnd, kind: 'added' } });
  await page.locator('.menu > button').click();
  await look('menu');
  await press(page, app.file.copyLink);
  await page.locator('dialog[open]').waitFor();
  await look('a link');
  await page.keyboard.press('Escape');
  await press(page, app.print);
  await page.waitForSelector('.print-page', patience);
  await look('sheet');
  await page.getByLabel(marked(printWords).kinds.gauges).check();
  await page.locator('.print-page[aria-label*="1"]').first().waitFor(patience);
  await expect.poll(() => page.locator('.print-doing').textContent(), patience).toContain('100 %');
  await look('gauges');
  expect(missing).toEqual({});
});

test('two plans compared, and the files of it', async () => {
  const { page, look, missing } = await open();
  const words = marked(compareWords);
  await rested(page);
  await openPlan(page, trug.plan);
  await press(page, app.compare);
  await bothRested(page);
  await girthPoint(page, 2).focus();
  for (let times = 0; times < 4; times += 1) await page.keyboard.press('Shift+ArrowRight');
  await bothRested(page);
  await page.locator('.compare-table tr[data-row="20"]').hover();
  await look('by row');
  for (const name of [words.savePdf, words.savePng, words.saveCsv]) {
    const [download] = await Promise.all([page.waitForEvent('download'), press(page, name)]);
    expect(download.suggestedFilename()).toContain('⟦');
    const bytes = await readFile(await download.path());
    const isPdf = name === words.savePdf;
    if (isPdf) expect(unmarked(pdfText(bytes, 'raw'))).toBe('');
    if (name === words.saveCsv) expect(unmarked(bytes.toString())).toBe('');
  }
  const drawn = await drawnTexts(page);
  expect(drawn).toContain('⟦');
  expect(unmarked(drawn)).toBe('');
  await press(page, words.by.height);
  await bothRested(page);
  await page.locator('.compare-table tbody tr').nth(3).hover();
  await look('by height');
  await press(page, words.layouts.bOverA.name);
  await look('one over the other');
  await press(page, words.blend.toShelf);
  await look('the blend on the shelf');
  await press(page, words.blend.keepAsB);
  await bothRested(page);
  await press(page, words.by.row);
  await page.getByLabel(words.side.edit(marked(planLetters).a)).check();
  await girthPoint(page, 0).focus();
  for (let times = 0; times < 40; times += 1) await page.keyboard.press('Shift+ArrowRight');
  await bothRested(page);
  await page.locator('.side-findings').first().waitFor();
  await look('findings of both');
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.locator('.side-chooser select').first().selectOption('f'),
  ]);
  const file = { name: 'torn.girthline.json', mimeType: 'application/json' };
  await chooser.setFiles({ ...file, buffer: Buffer.from('{"12": 3') });
  await page.getByRole('alert').waitFor();
  await look('a file that is none');
  expect(missing).toEqual({});
});

async function bothRested(page: Page): Promise<void> {
  await expect.poll(() => page.locator('.side-state[data-rested=true]').count(), patience).toBe(2);
}

/** Plans that much is to be said of. */
function hardPlans(): Readonly<Record<string, Plan>> {
  const { plan } = trug;
  const through = (...girths: number[]): Plan => {
    const points = girths.map((girth, at) => ({ row: [1, 16, 32][at] ?? 32, girth }));
    return { ...plan, girthLine: { points, rows: {} } };
  };
  const [band] = plan.bands;
  const bands = plan.bands.map((one) => ({ ...one, weave: 'twill' as const }));
  return {
    'a wide mouth': through(690, 900, 1500),
    'a narrow neck': through(690, 900, 330),
    'a twill': { ...plan, bands },
    'one band of start-stop rows': band
      ? { ...plan, bands: [{ ...band, rows: 32, weave: 'rounds' }] }
      : plan,
    'an even count': { ...plan, oddEnd: { ...plan.oddEnd, kind: 'none' } },
  };
}
