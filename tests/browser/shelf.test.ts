import { readFile } from 'node:fs/promises';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { girthOf, girthPoint, openedDesk, patience, press, rested } from './desk.ts';
import { dropped } from './dropped.ts';
import { storedShelf } from './shelfStore.ts';

const desk = openedDesk({ width: 1280, height: 900, webgl: false });

test('plan, undo, redo and what is on the shelf outlive a reload', async () => {
  const { page } = desk();
  const point = girthPoint(page, 1);
  const girth = await girthOf(point);
  await point.focus();
  await page.keyboard.press('ArrowRight');
  await named(page, 'Quince trug');
  await girthPoint(page, 2).focus();
  await page.keyboard.press('ArrowLeft');
  const rim = await girthOf(girthPoint(page, 2));
  await page.keyboard.press('Control+z');
  await page.reload();
  await rested(page);
  expect(await page.getByLabel('Name of the plan').inputValue()).toBe('Quince trug');
  await page.getByRole('button', { name: 'Redo' }).click();
  expect(await girthOf(girthPoint(page, 2))).toBe(rim);
  for (let step = 0; step < 3; step += 1) await page.getByRole('button', { name: 'Undo' }).click();
  expect(await girthOf(point)).toBe(girth);
  expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
  await page.getByRole('button', { name: 'Redo' }).click();
  await page.getByRole('button', { name: 'Redo' }).click();
  await rested(page);
});

test('a version that was kept by name is opened beside the plan and brought back, through a reload', async () => {
  const { page } = desk();
  const girth = await girthOf(girthPoint(page, 1));
  await versions(page);
  await page.locator('.version-new input').fill('before the fair');
  await page.keyboard.press('Enter');
  await page.locator('.version-name', { hasText: 'before the fair' }).waitFor();
  await page.keyboard.press('Escape');
  // back where one came from
  await expect.poll(() => page.locator('dialog.versions').count(), patience).toBe(0);
  expect(await page.getByRole('button', { name: /^File/ }).evaluate(isFocused)).toBe(true);
  await girthPoint(page, 1).focus();
  for (let step = 0; step < 5; step += 1) await page.keyboard.press('ArrowLeft');
  expect(await girthOf(girthPoint(page, 1))).toBeLessThan(girth);
  await page.reload();
  await rested(page);

  await versions(page);
  await page
    .getByRole('button', { name: /^Open beside/ })
    .first()
    .click();
  const names = page.getByLabel('Name of the plan');
  await expect.poll(() => names.count(), patience).toBe(2);
  expect(await names.nth(0).inputValue()).toBe('Quince trug');
  expect(await names.nth(1).inputValue()).toBe('Quince trug, before the fair');
  await page.getByRole('button', { name: 'Back to one plan' }).click();

  await versions(page);
  await page.getByRole('button', { name: /^Bring back before the fair/ }).click();
  await expect.poll(() => girthOf(girthPoint(page, 1)), patience).toBe(girth);
  await page.getByRole('button', { name: 'Undo' }).click();
  expect(await girthOf(girthPoint(page, 1))).toBeLessThan(girth);
  await rested(page);
});

test('plans are copied, renamed, sought, deleted and put back by the keyboard alone', async () => {
  const { page } = desk();
  await page.getByRole('link', { name: 'Shelf' }).focus();
  await page.keyboard.press('Enter');
  await key(page, 'button', 'Copy Quince trug');
  await key(page, 'button', 'Rename Quince trug, copy');
  await page.keyboard.type('Medlar trug');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Open Medlar trug' }).waitFor();
  await page.getByLabel('Search the plans').focus();
  await page.keyboard.type('MEDLAR');
  await expect.poll(() => page.locator('.shelf-card[data-present]').count(), patience).toBe(1);
  await key(page, 'button', 'Delete Medlar trug');
  await page.getByText('is off the shelf').waitFor();
  await page.getByLabel('Search the plans').fill('');
  await expect.poll(() => onShelf(page), patience).toEqual(['Quince trug']);
  await key(page, 'button', 'Put it back');
  await page.getByRole('button', { name: 'Open Medlar trug' }).waitFor();
  expect(await onShelf(page)).toEqual(['Medlar trug', 'Quince trug']);
  await key(page, 'button', 'Open Medlar trug');
  await rested(page);
  expect(await page.getByLabel('Name of the plan').inputValue()).toBe('Medlar trug');
});

test('the whole shelf goes into a file and comes back from it, and duplicates are asked about', async () => {
  const { page } = desk();
  await page.getByRole('link', { name: 'Shelf' }).click();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the whole shelf' }).click(),
  ]);
  expect(download.suggestedFilename()).toMatch(/^Girthline shelf \d{4}-\d\d-\d\d\.zip$/);
  const archive = await readFile(await download.path());
  const before = await storedShelf(page);

  await page.getByRole('button', { name: 'Delete Quince trug' }).click();
  await page.getByRole('button', { name: 'Rename Medlar trug' }).click();
  await page.keyboard.type('Medlar trug ');
  await page.keyboard.press('Enter');
  await page.getByRole('link', { name: 'Back to the plan' }).click();
  await girthPoint(page, 1).focus();
  await page.keyboard.press('ArrowRight');
  await page.getByRole('link', { name: 'Shelf' }).click();

  await dropped(page, 'shelf.zip', archive);
  await page.getByRole('button', { name: 'Keep both' }).click();
  await page.getByText('2 plans put on the shelf').waitFor();
  expect(await onShelf(page)).toEqual(['Medlar trug', 'Medlar trug', 'Quince trug']);
  const after = await storedShelf(page);
  const quince = (from: typeof after) =>
    from.plans.filter(({ plan }) => plan.name === 'Quince trug');
  expect(quince(after).map(({ plan }) => plan)).toEqual(quince(before).map(({ plan }) => plan));
  expect(quince(after)[0]?.id).not.toBe(quince(before)[0]?.id);
  const kept = (from: typeof after) =>
    from.versions.filter(({ name }) => name === 'before the fair');
  expect(kept(after).map(({ plan }) => plan)).toEqual(kept(before).map(({ plan }) => plan));

  await dropped(page, 'shelf.zip', archive);
  await page.getByText('0 plans put on the shelf, 2 there already').waitFor();
});

test('of several files a bad one is told and the others come in', async () => {
  const { page } = desk();
  const [one] = (await storedShelf(page)).plans;
  const plan = { ...one?.plan, name: '<img src=x onerror="alert(1)">', notes: '<script>' };
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Open files …' }).click(),
  ]);
  const file = (name: string, text: string) => ({
    ...{ name, mimeType: 'application/json', buffer: Buffer.from(text) },
  });
  await chooser.setFiles([
    file('hostile.girthline.json', JSON.stringify(plan)),
    file('letter.txt', 'Dear class, bring knives.'),
  ]);
  await page.getByText('1 plan put on the shelf').waitFor();
  expect(await page.locator('.shelf-told li').allTextContents()).toEqual([
    'letter.txt: the whole document: found text that begins "Dear class, bring knives…", ' +
      'allowed is a plan saved by Girthline, which begins with {',
  ]);
  const name = page.locator('.shelf-name', { hasText: '<img' });
  expect(await name.textContent()).toBe('<img src=x onerror="alert(1)">');
  expect(await page.locator('.shelf-card img, .shelf-card script').count()).toBe(0);
  await page.getByRole('button', { name: 'Open <img src=x' }).click();
  await rested(page);
  expect(await page.getByLabel('Name of the plan').inputValue()).toBe(plan.name);
});

test('a link brings its plan to another browser, asks there, and leaves the plan at hand alone', async () => {
  const { page, context } = desk();
  await named(page, 'Sent trug');
  await press(page, 'Copy a link …');
  const address = await page.locator('.link-field').inputValue();
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.getByRole('button', { name: 'Copy the link' }).click();
  await page.getByText('Copied').waitFor();
  expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(address);
  await page.keyboard.press('Escape');
  const girth = await girthOf(girthPoint(page, 1));
  await named(page, 'Mine');

  await page.goto(address);
  await page.getByRole('button', { name: 'Leave it' }).click();
  expect(await page.getByLabel('Name of the plan').inputValue()).toBe('Mine');
  expect(page.url()).not.toContain('plan=');
  await page.goto(address);
  await page.getByRole('button', { name: 'Open it' }).click();
  await expect
    .poll(() => page.getByLabel('Name of the plan').inputValue(), patience)
    .toBe('Sent trug');
  expect(await girthOf(girthPoint(page, 1))).toBe(girth);
  await page.getByRole('link', { name: 'Shelf' }).click();
  // the baskets of the class are there before the plans are read
  await expect.poll(() => onShelf(page), patience).toContain('Mine');
  await page.getByRole('link', { name: 'Back to the plan' }).click();

  await page.goto(address.slice(0, -30));
  const alert = page.getByRole('alert');
  await alert.waitFor();
  expect(await alert.textContent()).toMatch(/your plan is as it was.*this link.*cut short/s);
  await page.getByRole('button', { name: 'Put away' }).click();
});

test('two windows on one plan never write over one another', async () => {
  const { page, context } = desk();
  await rested(page);
  const other = await context.newPage();
  await other.goto(page.url());
  await rested(other);
  await named(page, 'From the first window');
  const notice = other.getByRole('alert');
  await notice.waitFor();
  expect(await notice.textContent()).toContain('changed in another window');
  await other.bringToFront();
  await named(other, 'From the second window');
  await other.getByRole('button', { name: 'Keep mine as a copy' }).click();
  await expect.poll(() => notice.count(), patience).toBe(0);
  await expect
    .poll(async () => (await storedShelf(page)).plans.map(({ plan }) => plan.name), patience)
    .toEqual(expect.arrayContaining(['From the first window', 'From the second window, copy']));

  // the same plan once more: this time the other one is taken, and undo brings one's own back
  await page.bringToFront();
  await page.reload();
  await rested(page);
  expect(await page.getByLabel('Name of the plan').inputValue()).toBe('From the first window');
  await other.bringToFront();
  await other.getByRole('link', { name: 'Shelf' }).click();
  await other.getByRole('button', { name: 'Open From the first window' }).click();
  await named(other, 'Changed again');
  await page.bringToFront();
  await page.getByRole('button', { name: 'Take the other one' }).click();
  expect(await page.getByLabel('Name of the plan').inputValue()).toBe('Changed again');
  await page.getByRole('button', { name: 'Undo' }).click();
  expect(await page.getByLabel('Name of the plan').inputValue()).toBe('From the first window');
  await other.close();
  await rested(page);
});

// accessible.test.ts has the dark one
test('axe finds nothing serious on the light shelf, on a phone', async () => {
  const { page } = desk();
  await page.setViewportSize({ width: 360, height: 740 });
  await page.goto(`${desk().address}#shelf`);
  await page.locator('.shelf-card').first().waitFor();
  await expectFit(page);
  await page
    .getByRole('link', { name: /^Versions of/ })
    .first()
    .click();
  await page.locator('.versions').waitFor();
  await expectFit(page);
  await page.keyboard.press('Escape');
});

async function expectFit(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  const grave = violations.filter(({ impact }) => impact === 'serious' || impact === 'critical');
  expect(grave.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
  const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(over).toBeLessThanOrEqual(0);
  const small = await page
    .locator(':is(button, a, input, select):visible')
    .evaluateAll((all) =>
      all
        .map((one) => one.getBoundingClientRect())
        .filter(({ width, height }) => width > 0 && Math.min(width, height) < 24),
    );
  expect(small).toEqual([]);
}

async function named(page: Page, name: string): Promise<void> {
  const field = page.getByLabel('Name of the plan');
  await field.fill(name);
  await field.press('Enter');
}

const isFocused = (one: Element) => one === document.activeElement;

async function versions(page: Page): Promise<void> {
  await page.getByRole('button', { name: /^File/ }).click();
  await page.getByRole('link', { name: 'Earlier versions …' }).click();
  await page.locator('.versions').waitFor();
}

/** Goes to a control of the shelf and presses it, by keys. */
async function key(page: Page, role: 'button' | 'link', name: string): Promise<void> {
  const control = page.getByRole(role, { name, exact: true });
  await control.focus();
  expect(await control.evaluate((one) => one.matches(':focus-visible'))).toBe(true);
  await page.keyboard.press('Enter');
}

async function onShelf(page: Page): Promise<string[]> {
  const names = await page.locator('.shelf-card[data-present] .shelf-name').allTextContents();
  return names.sort();
}
