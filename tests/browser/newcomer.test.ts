import { expect, test } from 'vitest';
import {
  drag,
  fileFrom,
  girthOf,
  girthPoint,
  middleOf,
  openedDesk,
  patience,
  rested,
  summaryOf,
} from './desk.ts';
import { difference, stagePicture } from './stagePicture.ts';

const desk = openedDesk({ width: 1440, height: 900 });

test('a newcomer drags the girth line: belly and basket follow, and undo brings both back', async () => {
  const { page } = desk();
  const belly = await summaryOf(page, 'Belly');
  expect(belly).toMatch(/^\d+( \d+\/\d+)? in$/);
  const asFound = await stagePicture(page);
  const away = async (from: Buffer) => difference(page, from, await stagePicture(page));
  // the first picture may have been taken before the basket was drawn
  await expect.poll(() => away(asFound), patience).toBe(0);

  const point = girthPoint(page, 1);
  const girth = await girthOf(point);
  await drag(page, point, { dx: -70 });
  await page.mouse.move(0, 0);
  await rested(page);
  expect(await girthOf(point)).toBeLessThan(girth - 0.5);
  expect(await summaryOf(page, 'Belly')).not.toBe(belly);
  await expect.poll(() => away(asFound), patience).toBeGreaterThan(0.01);

  await page.getByRole('button', { name: 'Undo' }).click();
  await page.mouse.move(0, 0);
  await rested(page);
  expect(await girthOf(point)).toBe(girth);
  expect(await summaryOf(page, 'Belly')).toBe(belly);
  await expect.poll(() => away(asFound), patience).toBeLessThan(0.001);
  expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
});

test('a drag of the belly is one step to undo, and redo takes it again', async () => {
  const { page } = desk();
  const point = girthPoint(page, 1);
  const girth = await girthOf(point);
  await drag(page, point, { dx: 40 });
  const dragged = await girthOf(point);
  expect(dragged).toBeGreaterThan(girth);
  await page.keyboard.press('Control+z');
  expect(await girthOf(point)).toBe(girth);
  await page.keyboard.press('Control+Shift+z');
  expect(await girthOf(point)).toBe(dragged);
  await page.keyboard.press('Control+z');
  await rested(page);
});

test('a length typed back as it is shown changes nothing, though the plan has it finer', async () => {
  const { page } = desk();
  const gap = page.getByLabel('Gap', { exact: true });
  expect(await gap.inputValue()).toBe('3/8 in');
  await gap.fill('3/8');
  await gap.press('Enter');
  expect(await gap.inputValue()).toBe('3/8 in');
  expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
  const { text } = await fileFrom(page, 'Save as a file');
  expect(text).toContain('"gap": 9.5,');
});

test('a double press on the line adds a point, and on a point takes it away', async () => {
  const { page } = desk();
  const points = page.locator('.girth-handle');
  const before = await points.count();
  const [one, other] = await Promise.all([0, 1].map((at) => middleOf(girthPoint(page, at))));
  if (!one || !other) throw new Error('two points expected');
  await page.mouse.dblclick((one.x + other.x) / 2, (one.y + other.y) / 2);
  expect(await points.count()).toBe(before + 1);
  const added = await middleOf(points.nth(1));
  // far from the first in place and time, or the two double presses would be read as one
  await page.mouse.click(added.x - 60, added.y);
  await page.mouse.dblclick(added.x, added.y);
  expect(await points.count()).toBe(before);
  await rested(page);
});

test('the three main uses stand on the page in words, beside a basket', async () => {
  const { page } = desk();
  expect(await page.locator('.stage canvas').isVisible()).toBe(true);
  expect(await page.locator('.greeting').textContent()).toContain('Drag a point of the girth line');
  expect(await page.getByRole('button', { name: 'Compare', exact: true }).isVisible()).toBe(true);
  const { text } = await fileFrom(page, 'Save chart (CSV)');
  expect(text.trimEnd().split('\r\n')).toHaveLength(33);
});

test('the tour is gone through by keys, leaves the page free, ends with Escape, and is not offered twice', async () => {
  const { page } = desk();
  await page.getByRole('button', { name: 'Show me round' }).focus();
  await page.keyboard.press('Enter');
  const card = page.locator('.tour-card');
  await card.waitFor();
  expect(await card.evaluate((one) => one === document.activeElement)).toBe(true);
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  expect(await card.textContent()).toContain('Pull in');
  const rim = girthPoint(page, 2);
  const girth = await girthOf(rim);
  await drag(page, rim, { dx: 15 });
  expect(await girthOf(rim)).toBeGreaterThan(girth);
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Escape');
  expect(await card.count()).toBe(0);
  expect(await page.evaluate(() => document.activeElement?.getAttribute('data-tour'))).toBe('help');
  await page.reload();
  await rested(page);
  expect(await page.locator('.greeting').count()).toBe(0);

  await page.keyboard.press('?');
  await page.getByRole('button', { name: 'Show me round' }).click();
  await card.waitFor();
  for (let step = 1; step < 5; step += 1) await page.getByRole('button', { name: 'Next' }).click();
  await page.getByRole('button', { name: 'Done' }).click();
  expect(await card.count()).toBe(0);
});

test('a word of the trade is explained by key, and heard without one', async () => {
  const { page } = desk();
  const help = page.getByRole('button', { name: 'What is “upsett”?' });
  const note = page.locator('.word-note:popover-open');
  await help.focus();
  await page.keyboard.press('Enter');
  const said = await note.textContent();
  expect(said).toContain('Bending the stakes up');
  const heard = await help.evaluate(
    (one) => document.getElementById(one.getAttribute('aria-describedby') ?? '')?.textContent,
  );
  expect(heard).toBe(said);
  await page.keyboard.press('Escape');
  expect(await note.count()).toBe(0);
  expect(await help.evaluate((one) => one === document.activeElement)).toBe(true);
});

test('a girth moved by key is told with row, girth and change, and then with what came of it', async () => {
  const { page } = desk();
  const spoken = page.locator('.status [role=status]');
  await expect.poll(() => spoken.textContent(), patience).toMatch(/^Belly .+ at row \d+, rim .+; /);
  const before = await spoken.textContent();
  const point = girthPoint(page, 1);
  await point.focus();
  for (let step = 0; step < 6; step += 1) await page.keyboard.press('Shift+ArrowLeft');
  const told = /^row 20: girth [\d /]+ in, (lets out|pulls in) [\d/]+ in .+ after it$/;
  expect(await point.getAttribute('aria-valuetext')).toMatch(told);
  await expect.poll(() => spoken.textContent(), patience).not.toBe(before);
  expect(await spoken.textContent()).toContain(await summaryOf(page, 'Belly'));
});
