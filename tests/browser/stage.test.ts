import { validateBytes } from 'gltf-validator';
import { expect, test } from 'vitest';
import { cutPlan } from '../../src/model/buildup/cutPlan.ts';
import { demos } from '../../src/plan/demo/demos.ts';
import { writePlan } from '../../src/plan/read.ts';
import { bytesFrom, fileFrom, open, openedDesk, patience, rested, summaryOf } from './desk.ts';
import { difference, pixelsOf, plainAbove, stagePicture } from './stagePicture.ts';

/** Counts the draw calls of each frame and keeps the most, shadows and table included. */
const countDraws = `
  globalThis.mostDraws = 0;
  let draws = 0;
  for (const name of ['drawElements', 'drawArrays', 'drawElementsInstanced', 'drawArraysInstanced']) {
    const draw = WebGL2RenderingContext.prototype[name];
    WebGL2RenderingContext.prototype[name] = function (...args) {
      draws += 1;
      return draw.apply(this, args);
    };
  }
  const request = globalThis.requestAnimationFrame.bind(globalThis);
  globalThis.requestAnimationFrame = (callback) => request((time) => {
    draws = 0;
    callback(time);
    globalThis.mostDraws = Math.max(globalThis.mostDraws, draws);
  });
`;

const desk = openedDesk({ width: 1440, height: 900, init: countDraws, reducedMotion: 'reduce' });

const fewerRows = { ...cutPlan(demos[0].plan, 4), name: 'Four rows' };

test('the stage draws its basket, with rim and handle, in twelve calls at the most', async () => {
  const { page } = desk();
  await page.getByRole('button', { name: 'Side', exact: true }).click();
  const most = () =>
    page.evaluate(() => (globalThis as unknown as { mostDraws: number }).mostDraws);
  await expect.poll(most, patience).toBeGreaterThan(3);
  expect(await most()).toBeLessThanOrEqual(12);
});

test('nothing of the basket lies under the buttons', async () => {
  const { page } = desk();
  // the views with nothing behind the basket
  for (const view of ['Side', 'Underside']) {
    await page.getByRole('button', { name: view, exact: true }).click();
    const head = await page.locator('.stage-head').boundingBox();
    const stage = await page.locator('.stage').boundingBox();
    if (!head || !stage) throw new Error('there is no stage');
    const share = (head.y + head.height - stage.y) / stage.height;
    const plain = async () => plainAbove(page, await stagePicture(page));
    await expect.poll(plain, patience).toBeGreaterThan(share);
    expect(await plain()).toBeLessThan(0.5);
  }
});

test('the eye steps back from a basket that outgrows the picture, and nearer again, but not once it was moved by hand', async () => {
  const { page } = desk();
  await page.getByRole('button', { name: 'Side', exact: true }).click();
  const plain = async () => plainAbove(page, await stagePicture(page));
  const first = await plain();
  await page.getByRole('button', { name: /^Band 1/ }).click();
  const rows = page.getByLabel('Rows', { exact: true }).first();
  await rows.fill('120');
  await rows.press('Enter');
  await rested(page);
  await expect.poll(plain, patience).toBeGreaterThan(first - 0.05);
  await page.getByRole('button', { name: 'Undo' }).click();
  await rested(page);
  await expect.poll(plain, patience).toBeLessThan(first + 0.05);

  await page.locator('.stage').hover({ position: { x: 60, y: 300 } });
  await page.mouse.wheel(0, -120);
  await page.getByRole('button', { name: 'Redo' }).click();
  await rested(page);
  // its top is over the upper edge
  await expect.poll(plain, patience).toBe(0);
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('button', { name: 'Three-quarter' }).click();
  await rested(page);
});

test.each([
  ['lean', 'Lean of the wall', /^−?\d+°$/],
  ['gap', 'Least gap between stakes', /^−?0\.\d{3} in$/],
  ['strain', 'Strain of the weaver’s edge', /^\d+\.\d\d %$/],
] as const)(
  'rows coloured by %s have a legend that says so, from least to most',
  async (...[kind, title, value]) => {
    const { page } = desk();
    await page.getByLabel('Colour rows by').selectOption(kind);
    const legend = page.locator('.tint-legend');
    expect(await legend.locator('figcaption').textContent()).toBe(title);
    const ends = await legend.locator('.tint-ends span').allTextContents();
    expect(ends).toHaveLength(2);
    for (const end of ends) expect(end).toMatch(value);
    await page.getByLabel('Colour rows by').selectOption('');
    expect(await legend.count()).toBe(0);
  },
);

test('the sizes on the stage are those of the summary, and a tape lies round the row pointed at', async () => {
  const { page } = desk();
  await page.getByRole('button', { name: 'Sizes' }).click();
  const words = page.locator('.stage-reading');
  await expect
    .poll(() => words.allTextContents(), patience)
    .toContain(`wall ${await summaryOf(page, 'Height')}`);
  const clear = `middle ${await summaryOf(page, 'Clear under the middle')} clear`;
  // the labels come one by one
  await expect
    .poll(async () => (await words.allTextContents()).join('\n'), patience)
    .toContain(clear);
  await page.locator('tr[data-row="20"]').hover();
  const tape = await page.locator('tr[data-row="20"] td').first().textContent();
  await expect
    .poll(() => words.allTextContents(), patience)
    .toContain(`Row 20: tape ${tape?.trim()} in`);
  await page.mouse.move(5, 5);
  await page.getByRole('button', { name: 'Sizes' }).click();
});

test('the outline view draws side and end with their sizes', async () => {
  const { page } = desk();
  await page.getByRole('button', { name: 'Outline' }).click();
  const height = await summaryOf(page, 'Height');
  const drawings = page.getByRole('img', { name: new RegExp(`view: .+ wide, ${height} high`) });
  expect(await drawings.count()).toBe(2);
  await page.getByRole('button', { name: 'Outline' }).click();
});

test('the picture is a PNG of what the stage shows', async () => {
  const { page } = desk();
  await page.getByText('Save as', { exact: true }).click();
  const { name, bytes } = await bytesFrom(page, 'Picture (PNG)');
  expect(name).toBe('Orchard trug.png');
  expect([...bytes.subarray(0, 8)]).toEqual([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  // its length and height stand in its head
  expect(Math.max(bytes.readUInt32BE(16), bytes.readUInt32BE(20))).toBeGreaterThanOrEqual(2000);
  const [saved, seen] = [
    await plainAbove(page, bytes),
    await plainAbove(page, await stagePicture(page)),
  ];
  expect(seen).toBeLessThan(0.5);
  expect(Math.abs(saved - seen)).toBeLessThan(0.02);
});

test('a picture of coloured rows has their scale in it, from the least to the most', async () => {
  const { page } = desk();
  await page.getByLabel('Colour rows by').selectOption('lean');
  await page.locator('.tint-legend').waitFor();
  await page.getByText('Save as', { exact: true }).click();
  const { bytes } = await bytesFrom(page, 'Picture (PNG)');
  await page.getByLabel('Colour rows by').selectOption('');
  const found = await page.evaluate(
    ({ data, width, height }) => {
      // a run of pixels that begins and ends as the scale does, in the lower right quarter
      const isNear = (at: number, colour: readonly number[]) =>
        colour.every((part, k) => Math.abs((data[4 * at + k] ?? 0) - part) < 6);
      for (let y = height - 1; y > height / 2; y -= 1) {
        const row = Array.from({ length: width }, (_, x) => y * width + x);
        const from = row.findIndex((at) => isNear(at, [68, 1, 84]));
        const to = row.findLastIndex((at) => isNear(at, [253, 231, 37]));
        const middle = y * width + Math.round((from + to) / 2);
        if (from > width / 2 && to - from > 200 && isNear(middle, [33, 145, 140])) return true;
      }
      return false;
    },
    await pixelsOf(page, bytes),
  );
  expect(found).toBe(true);
});

test('outlines, model and solid arrive and open', async () => {
  const { page } = desk();
  await page.getByText('Save as', { exact: true }).click();
  const svg = await fileFrom(page, 'Outlines (SVG)');
  expect(svg.name).toBe('Orchard trug outlines.svg');
  // on a page without a policy: the drawing carries its own styles
  const reader = await page.context().newPage();
  const read = await reader.evaluate((text) => {
    const drawing = new DOMParser().parseFromString(text, 'image/svg+xml');
    return {
      root: drawing.documentElement.tagName,
      paths: drawing.querySelectorAll('path').length,
    };
  }, svg.text);
  await reader.close();
  expect(read.root).toBe('svg');
  expect(read.paths).toBeGreaterThan(60);

  await page.getByText('Save as', { exact: true }).click();
  const glb = await bytesFrom(page, 'Model with strands (GLB)');
  expect(glb.name).toBe('Orchard trug.glb');
  const { issues } = await validateBytes(new Uint8Array(glb.bytes));
  expect([issues.numErrors, issues.numWarnings]).toEqual([0, 0]);

  await page.getByText('Save as', { exact: true }).click();
  const { bytes } = await bytesFrom(page, 'Solid for a mould (STL)');
  const triangles = bytes.readUInt32LE(80);
  expect(triangles).toBeGreaterThan(1000);
  expect(bytes.length).toBe(84 + 50 * triangles);
});

test('row by row the basket is built up: it plays, can be gone through, says its steps and closes', async () => {
  const { page } = desk();
  await page.getByRole('button', { name: 'Row by row' }).click();
  const words = page.locator('.build-words');
  await expect.poll(() => words.textContent(), patience).toMatch(/Split the stake.*Pin the two/);
  const row = page.getByLabel('Row woven last');
  await page.getByRole('button', { name: 'Play' }).click();
  await expect.poll(async () => Number(await row.inputValue()), patience).toBeGreaterThan(2);
  await page.getByRole('button', { name: 'Pause' }).click();
  await expect.poll(() => row.getAttribute('max'), patience).toBe('33');
  await row.fill('9');
  expect(await words.textContent()).toMatch(/Take the pins off.*Row 9 of 32/);
  await row.fill('32');
  expect(await words.textContent()).toMatch(/last one.*Tape girth/);
  const woven = await stagePicture(page);
  await row.fill('33');
  expect(await words.textContent()).toBe('Rim and handle are on: the basket is finished.');
  expect(await difference(page, woven, await stagePicture(page))).toBeGreaterThan(0.01);
  // the stakes of the first row lie far out: the eye steps back for them
  const look = () => page.getByRole('button', { name: 'Three-quarter', exact: true }).click();
  await look();
  const near = await stagePicture(page);
  await row.fill('1');
  await stagePicture(page);
  await row.fill('33');
  const changed = async () => difference(page, near, await stagePicture(page));
  await expect.poll(changed, patience).toBeGreaterThan(0.05);
  await look();
  await expect.poll(changed, patience).toBeLessThan(0.01);
  // a plan of fewer rows begins anew, and so does the first one when it comes back
  await open(page, 'pot.girthline.json', writePlan(fewerRows));
  await expect.poll(() => words.textContent(), patience).toMatch(/Row 1 of 4/);
  await expect.poll(() => row.getAttribute('max'), patience).toBe('5');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => words.textContent(), patience).toMatch(/Row 1 of 32/);
  await page.getByRole('button', { name: 'Done' }).click();
  expect(await page.locator('.build-bar').count()).toBe(0);
});

test('settling the rows ahead shows how far it is and can be cancelled', async () => {
  const { page } = desk();
  // pressed as soon as it is there: all rows may be settled before a mouse could come to it
  await page.evaluate(() => {
    const watch = new MutationObserver(() => {
      const progress = document.querySelector('.build-progress');
      if (!/^[1-9]/.test(progress?.textContent ?? '')) return;
      watch.disconnect();
      document.title = progress?.textContent ?? '';
      progress?.querySelector('button')?.click();
    });
    watch.observe(document.body, { childList: true, characterData: true, subtree: true });
  });
  await page.getByRole('button', { name: 'Row by row' }).click();
  await page.getByLabel('Row woven last').waitFor();
  await expect.poll(() => page.title(), patience).toMatch(/^[1-9]\d* of 32 settledCancel$/);
  await expect.poll(() => page.getByLabel('Rows settled').count(), patience).toBe(0);
  const ready = await page.getByLabel('Row woven last').getAttribute('max');
  expect(Number(ready)).toBeLessThan(32);
  // a row that was on its way may not arrive any more
  await page.waitForTimeout(500);
  expect(await page.getByLabel('Row woven last').getAttribute('max')).toBe(ready);
  expect(await page.locator('.build-bar').textContent()).toContain(`rows 1 to ${ready}`);
  await page.getByRole('button', { name: 'Settle the rest' }).click();
  await expect
    .poll(() => page.getByLabel('Row woven last').getAttribute('max'), patience)
    .toBe('33');
  await page.getByRole('button', { name: 'Done' }).click();
});
