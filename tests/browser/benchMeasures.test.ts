import type { Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import { atRest, expectUsable, measure, presentRow, press, target } from './benchDesk.ts';
import type { AppOptions, OpenedApp } from './chromium.ts';
import { openApp } from './chromium.ts';
import { fileFrom, patience, rested } from './desk.ts';

let app: OpenedApp | undefined;
afterEach(async () => {
  await app?.close();
  const { pageErrors, consoleErrors, outsideRequests } = app ?? {};
  expect([pageErrors, consoleErrors, outsideRequests]).toEqual([[], [], []]);
});

async function atTheBench(options: AppOptions): Promise<Page> {
  app = await openApp({ path: '#bench', touch: true, ...options });
  await atRest(app.page);
  return app.page;
}

/** Millimetres to a CSS pixel: a phone of 390 px is 65 mm wide, a tablet of 820 px 157 mm. */
const screens = [
  ['phone', { width: 390, height: 844 }, 65 / 390],
  ['tablet', { width: 820, height: 1180 }, 157 / 820],
] as const;

/** Letters are read from 200 times their height; from memory, a rule of thumb of sign makers. */
const readFrom = 1500;
const leastLetter = readFrom / 200;

test.each(screens)(
  'on a %s row, girth, change and what to do are read from 1.5 m, and fit',
  async (_name, size, mm) => {
    const page = await atTheBench(size);
    for (const unit of ['in', 'mm']) {
      if (unit !== 'in') await inUnit(page, unit, size);
      while ((await presentRow(page)) < 12) await press(page, 'Row done');
      const letters = await lettersOf(page);
      expect(letters.map(({ what }) => what)).toEqual(
        expect.arrayContaining(['row', 'girth', 'change', 'verb']),
      );
      for (const { what, px, left, right } of letters) {
        const told = `${unit} ${what}: ${(px * mm).toFixed(1)} mm`;
        expect(px * mm, told).toBeGreaterThanOrEqual(leastLetter);
        expect(left, told).toBeGreaterThanOrEqual(0);
        expect(right, told).toBeLessThanOrEqual(size.width);
      }
    }
  },
);

test('a length and a width go beside the girth, into the plan, and stand beside the shape', async () => {
  const page = await atTheBench({ width: 390, height: 844 });
  while ((await presentRow(page)) < 6) await press(page, 'Row done');
  await measure(page, await target(page));
  await press(page, 'Measured');
  await press(page, 'Length');
  expect(await page.textContent('.pad-row strong')).toBe('Row 6');
  for (const key of ['9', '3/8', 'A sixteenth more']) await press(page, key);
  expect(await page.inputValue('.pad-value input')).toBe('9 7/16');
  await expectUsable(page);
  await press(page, 'Keep');
  expect(await page.getByRole('button', { name: 'Width' }).getAttribute('aria-pressed')).toBe(
    'true',
  );
  // a row cannot be wider than half its girth
  for (const key of ['1', '6']) await press(page, key);
  expect(await page.textContent('.pad-question')).toMatch(/half of that/);
  for (let figure = 0; figure < 2; figure += 1) await press(page, 'Take the last figure back');
  for (const key of ['5', '1/4']) await press(page, key);
  await page.getByRole('button', { name: /^(Keep|It is right: keep it)$/ }).click();
  const row = page.locator('.across-rows tbody tr');
  expect(await row.textContent()).toMatch(/^69 7\/16 × 5 1\/4\d/);
  expect(await page.textContent('.across-rows + p')).toMatch(/Row 6 .*do not move it/);
  await expectUsable(page);

  await page.getByRole('link', { name: 'Plan' }).click();
  await rested(page);
  const { text } = await fileFrom(page, 'Save as a file');
  const { measured, measuredAcross } = JSON.parse(text);
  expect(Object.keys(measured)).toEqual(['6']);
  expect(measuredAcross[6].length).toBeCloseTo(239.7125, 6);
  expect(measuredAcross[6].width).toBeCloseTo(133.35, 6);
});

test('the plan’s figure and the replan’s are told apart, and the way back is foretold', async () => {
  const page = await atTheBench({ width: 820, height: 1180, colorScheme: 'dark' });
  const label = () => page.textContent('.row-card-label');
  expect(await label()).toMatch(/^By the plan: /);
  while ((await presentRow(page)) < 8) await press(page, 'Row done');
  await measure(page, 0.95 * (await target(page)));
  await atRest(page);
  expect(await page.textContent('.row-choice-note')).toMatch(
    /Until you take the replan, rows after row 9 are told by the old plan/,
  );
  expect(await page.textContent('.replan-further')).toMatch(/row \d+ is .* tighter than planned/);

  const limits = page.locator('summary', { hasText: 'Limits' });
  expect(await limits.textContent()).toBe('Limits: 50° of lean, 1/32 in per gap');
  await limits.click();
  await press(page, 'Most change between two stakes, a row: less');
  await press(page, 'Most lean of the wall: more');
  expect(await limits.textContent()).toBe('Limits: 55° of lean, 1/64 in per gap');
  await expectUsable(page);
  await page.reload();
  await atRest(page);
  expect(await limits.textContent()).toBe('Limits: 55° of lean, 1/64 in per gap');

  await press(page, 'Take it');
  expect(await label()).toMatch(/^By the replan: /);
  await press(page, 'Back to the old plan');
  expect(await page.locator('.row-choice h2').allTextContents()).toEqual(['Replan', 'Old plan']);
});

test.each(screens)(
  'on a %s a row far off the plan has the replan’s girth beside the old plan’s, both read from 1.5 m',
  async (_name, size, mm) => {
    const page = await atTheBench(size);
    const belly = page.locator('.bench-facts dt', { hasText: 'Belly' });
    const planned = await belly.textContent();
    while ((await presentRow(page)) < 12) await press(page, 'Row done');
    expect(await page.textContent('.replan-state')).toMatch(/Row 11, not measured, .*as planned/);
    await press(page, 'Measured');
    // figures of a keyboard go into the figure, whatever has the focus
    await page.keyboard.type('2');
    await page.getByRole('button', { name: 'The row above' }).focus();
    await page.keyboard.type('99');
    await page.getByRole('button', { name: 'Girth', exact: true }).focus();
    await page.keyboard.press('Backspace');
    await page.keyboard.press('Backspace');
    await page.keyboard.type('8 1/2');
    expect(await page.inputValue('.pad-value input')).toBe('28 1/2');
    await page.keyboard.press('Enter');
    await atRest(page);
    expect(await presentRow(page)).toBe(13);

    const figures = await page.locator('.row-choice section').evaluateAll((all) =>
      all.map((one) => {
        const girth = one.querySelector('.row-card-girth .big-length');
        const size = girth ? Number.parseFloat(getComputedStyle(girth).fontSize) : 0;
        const texts = ['h2', '.row-card-girth .unseen', '.row-choice-do'].map(
          (at) => one.querySelector(at)?.textContent ?? '',
        );
        return { size, texts };
      }),
    );
    const [replan, plan] = figures;
    expect(replan?.texts.slice(0, 2)).toEqual(['Replan', '28 3/4 in']);
    expect(replan?.texts[2]).toMatch(/^\+1\/4 in.*let out/);
    expect(plan?.texts.slice(0, 2)).toEqual(['Old plan', '27 5/8 in']);
    expect(plan?.texts[2]).toMatch(/^−7\/8 in.*pull in/);
    expect(replan?.size).toBe(plan?.size);
    for (const { what, px, left, right } of await lettersOf(page)) {
      if (/change|verb/.test(what)) continue;
      expect(px * mm, what).toBeGreaterThanOrEqual(leastLetter);
      expect(left, what).toBeGreaterThanOrEqual(0);
      expect(right, what).toBeLessThanOrEqual(size.width);
    }
    await expectUsable(page);

    const ahead = await page.locator('.bench-card', { hasText: 'Ahead' }).last().textContent();
    expect(ahead).toMatch(
      /Row 12 is 1 1\/8 in wider than planned.*of the replan, not of the old plan/,
    );
    expect(await page.textContent('.unmeasured')).toMatch(/estimate/);
    // the belly that is aimed at is the one that the basket has
    expect(await belly.textContent()).toBe(planned);
    const row = planned?.replace('Belly, ', '');
    expect(await page.textContent('.aim-belly')).toBe(`Reach the belly at ${row}`);
  },
);

test('two baskets of one class are two records, and the plan has the one at hand', async () => {
  const page = await atTheBench({ width: 390, height: 844, colorScheme: 'dark' });
  const records = page.getByLabel('Basket of this plan');
  await measure(page, (await target(page)) + 6.35);
  await records.selectOption('new');
  expect(await presentRow(page)).toBe(1);
  await measure(page, (await target(page)) - 6.35);
  await press(page, 'Row done');
  expect([await presentRow(page), await records.inputValue()]).toEqual([3, '2']);
  await page.reload();
  await atRest(page);
  expect([await presentRow(page), await records.inputValue()]).toEqual([3, '2']);
  const second = await measuredInPlan(page);
  await records.selectOption('Basket 1');
  expect(await presentRow(page)).toBe(2);
  const first = await measuredInPlan(page);
  expect(first - second).toBeCloseTo(12.7, 3);
});

test('the screen is kept awake while the bench is seen, where the browser allows it', async () => {
  // the browser's part, since a run without a screen has none to keep awake
  const init = `
    globalThis.asked = [];
    const lock = () => Object.assign(new EventTarget(), { release: async () => asked.push('released') });
    Object.defineProperty(navigator, 'wakeLock', {
      value: { request: async (kind) => (asked.push(kind), lock()) },
    });
  `;
  const page = await atTheBench({ width: 820, height: 1180, init });
  const asked = () => page.evaluate(() => (globalThis as unknown as { asked: string[] }).asked);
  expect((await asked())[0]).toBe('screen');
  expect(await page.textContent('.bench-head')).toContain('The screen stays awake');
  const before = (await asked()).filter((one) => one === 'screen').length;
  await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
  await expect
    .poll(async () => (await asked()).filter((one) => one === 'screen').length, patience)
    .toBe(before + 1);
  await page.getByRole('link', { name: 'Plan' }).click();
  await expect.poll(async () => (await asked()).at(-1), patience).toBe('released');
});

/** Tape girth of row 1 in the plan as it is saved, mm; then back at the bench. */
async function measuredInPlan(page: Page): Promise<number> {
  await page.getByRole('link', { name: 'Plan' }).click();
  await rested(page);
  const { text } = await fileFrom(page, 'Save as a file');
  await page.getByRole('link', { name: 'At the bench' }).click();
  await atRest(page);
  const { measured } = JSON.parse(text);
  expect(Object.keys(measured)).toEqual(['1']);
  return measured[1];
}

/** Changes the unit on a wide screen, and is back at the bench on `size`. */
async function inUnit(
  page: Page,
  unit: string,
  size: { width: number; height: number },
): Promise<void> {
  await page.setViewportSize({ width: 1280, height: 900 });
  await page.getByRole('link', { name: 'Plan' }).click();
  await rested(page);
  await page.getByLabel('Lengths in').selectOption(unit);
  await page.getByRole('link', { name: 'At the bench' }).click();
  await atRest(page);
  await page.setViewportSize(size);
}

/** Height of the letters of what is read from afar, CSS px, and from where to where it goes. */
function lettersOf(page: Page) {
  const places = {
    row: '[data-present-row]',
    girth: '.row-card-tape > [aria-hidden]',
    'girth of the replan': '.row-card-replan > [aria-hidden]',
    'girth of the replan, fraction': '.row-card-replan .big-fraction span',
    name: '.row-choice h2',
    'girth, fraction': '.row-card-tape .big-fraction span',
    change: '.row-card-change > [aria-hidden]',
    'change, fraction': '.row-card-change .big-fraction span',
    verb: '.row-card-verb',
  };
  return page.evaluate((all) => {
    const brush = document.createElement('canvas').getContext('2d');
    if (!brush) throw new Error('nothing to measure letters with');
    return Object.entries(all).flatMap(([what, place]) =>
      [...document.querySelectorAll(place)].map((one) => {
        const { fontStyle, fontWeight, fontSize, fontFamily } = getComputedStyle(one);
        brush.font = `${fontStyle} ${fontWeight} ${fontSize} ${fontFamily}`;
        const range = document.createRange();
        range.selectNodeContents(one);
        const { left, right } = range.getBoundingClientRect();
        const px = brush.measureText(what === 'verb' ? 'H' : '0').actualBoundingBoxAscent;
        return { what, px, left, right };
      }),
    );
  }, places);
}
