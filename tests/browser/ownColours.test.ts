import { expect, test } from 'vitest';
import { atRest } from './benchDesk.ts';
import { girthPoint, openedDesk, patience, press, rested } from './desk.ts';
import { seenColours } from './seenColours.ts';

// As Windows does it where a person has chosen the colours: the page's own are not shown.
const desk = openedDesk({
  width: 1440,
  height: 900,
  reducedMotion: 'reduce',
  webgl: false,
  forcedColors: 'active',
});

/** Least contrast of letters, and of marks and lines, to what they stand on. */
const [letters, marks] = [4.5, 3];

test.each(['dark', 'light'] as const)(
  'in %s colours of a person’s own, the row pointed at is marked and can be read',
  async (colorScheme) => {
    const { page } = desk();
    await page.emulateMedia({ colorScheme });
    await page.locator('tbody tr[data-row="18"]').click();
    const pointed = page.locator('.rows-room .row-pointed .row-tape');
    const plain = page.locator('.rows-room tr[data-row="17"] .row-tape');
    const [marked, other] = [await seenColours(page, pointed), await seenColours(page, plain)];
    expect(marked.contrast).toBeGreaterThan(letters);
    expect(marked.ground).not.toBe(other.ground);
    const field = page.locator('.rows-room .row-pointed .field-input');
    expect((await seenColours(page, field)).contrast).toBeGreaterThan(letters);
  },
);

test('in colours of a person’s own, the girth line, its chosen point and its focus stand out', async () => {
  const { page } = desk();
  const point = girthPoint(page, 1);
  const before = await seenColours(page, point);
  await point.focus();
  await page.keyboard.press('ArrowLeft');
  await rested(page);
  const line = await page.locator('.girth-planned').evaluate((one) => {
    const { stroke, opacity, strokeWidth } = getComputedStyle(one);
    return { stroke, opacity, width: Number.parseFloat(strokeWidth) };
  });
  expect(line.opacity).toBe('1');
  expect(line.width).toBeGreaterThanOrEqual(2);
  const chart = await seenColours(page, page.locator('.girth-box'));
  expect(line.stroke).not.toBe(chart.ground);
  expect(chart.contrast).toBeGreaterThan(marks);
  const chosen = await seenColours(page, point);
  expect(chosen.contrast).toBeGreaterThan(marks);
  expect(chosen.count).toBeGreaterThan(before.count);
});

test('in colours of a person’s own, what is pressed or edited differs from what is not, and both lines are in them', async () => {
  const { page } = desk();
  await press(page, 'Compare');
  await expect.poll(() => page.locator('.side-state[data-rested=true]').count(), patience).toBe(2);
  const button = (name: string) => page.getByRole('button', { name, exact: true });
  const [pressed, unpressed] = [
    await seenColours(page, button('row')),
    await seenColours(page, button('height')),
  ];
  expect(pressed.ground).not.toBe(unpressed.ground);
  expect(pressed.contrast).toBeGreaterThan(letters);
  const edge = { x: 0, y: 0, width: 1, height: 0.02 };
  const card = (edited: boolean) => page.locator(`.side-card[data-edited=${edited}]`);
  const [edited, other] = [
    await seenColours(page, card(true), edge),
    await seenColours(page, card(false), edge),
  ];
  expect(edited.ground).not.toBe(other.ground);
  const { lines, own } = await page.evaluate(() => {
    const probe = document.body.appendChild(document.createElement('i'));
    const own = ['CanvasText', 'LinkText', 'GrayText', 'Highlight'].map((colour) => {
      probe.style.color = colour;
      return getComputedStyle(probe).color;
    });
    probe.remove();
    const drawn = [...document.querySelectorAll('.compare-line')];
    return { lines: drawn.map((one) => getComputedStyle(one).stroke), own };
  });
  expect(lines.length).toBeGreaterThan(2);
  for (const line of lines) expect(own).toContain(line);
  expect(new Set(lines).size).toBeGreaterThan(1);
  await press(page, 'Back to one plan');
});

test('in colours of a person’s own, the card of the plan at hand differs from the others', async () => {
  const { page } = desk();
  await page.getByRole('link', { name: 'Shelf' }).click();
  await page.locator('.shelf-card[data-present=true]').waitFor(patience);
  await page.getByRole('button', { name: /^Copy/ }).first().click();
  const cards = (present: boolean) => page.locator(`.shelf-card[data-present=${present}]`).first();
  await cards(false).waitFor();
  const side = { x: 0, y: 0.4, width: 0.01, height: 0.2 };
  const [open, shut] = [
    await seenColours(page, cards(true), side),
    await seenColours(page, cards(false), side),
  ];
  expect(open.ground).not.toBe(shut.ground);
});

test('in colours of a person’s own, the pad’s fractions have their bar, and the bench its main button', async () => {
  const { page, address } = desk();
  await page.goto(`${address}#bench`);
  await atRest(page);
  const main = await seenColours(page, page.getByRole('button', { name: 'Row done' }));
  const plain = await seenColours(page, page.getByRole('button', { name: 'Measured' }));
  expect(main.ground).not.toBe(plain.ground);
  expect(main.contrast).toBeGreaterThan(letters);
  await press(page, 'Measured');
  const upper = page.locator('.pad-fractions .big-fraction span:first-child').first();
  const bar = { x: 0, y: 0.9, width: 1, height: 0.1 };
  expect((await seenColours(page, upper, bar)).contrast).toBeGreaterThan(marks);
});
