/** The bench as a maker uses it: what the browser runs press there and read off it. */
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { parseLength } from '../../src/plan/units.ts';
import { patience } from './desk.ts';

/** Waits until the basket on the table is that of the page. */
export async function atRest(page: Page): Promise<void> {
  await page.waitForSelector('.bench-page[data-settled=true]', { timeout: patience.timeout });
}

/** Presses a button by its whole name. */
export async function press(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name, exact: true }).click();
}

/** Number of the row being woven. */
export async function presentRow(page: Page): Promise<number> {
  return Number(await page.locator('[data-present-row]').getAttribute('data-present-row'));
}

/** Tape girth that the present row is woven to, mm. */
export async function target(page: Page): Promise<number> {
  return lengthIn(await page.locator('.row-card-tape .unseen').textContent());
}

/** What the table's facts say under a name, mm. */
export async function fact(page: Page, name: string): Promise<number> {
  const told = page.locator('.bench-facts div', { has: page.locator('dt', { hasText: name }) });
  return lengthIn(await told.locator('dd').evaluate((dd) => dd.firstChild?.textContent ?? ''));
}

/** A length or a change as it is told in inches, mm. */
export function lengthIn(text: string | null): number {
  const parsed = parseLength((text ?? '').trim(), 'in', { signed: true });
  return parsed.ok ? parsed.mm : Number.NaN;
}

/** Types a tape girth to the eighth by the pad's keys, and keeps it. */
export async function measure(page: Page, mm: number): Promise<void> {
  const eighths = Math.round((mm / 25.4) * 8);
  await press(page, 'Measured');
  for (const figure of `${Math.floor(eighths / 8)}`) await press(page, figure);
  const keys = ['', '1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'];
  const key = keys[eighths % 8];
  if (key) await press(page, key);
  await press(page, 'Keep');
}

/** Every target is 48 px or more each way, nothing is wider than the screen, and axe has nothing serious. */
export async function expectUsable(page: Page): Promise<void> {
  const small = await page
    .locator('.bench-page :is(button, select, a, summary, label:has(input[type=checkbox]))')
    .evaluateAll((targets) =>
      targets
        .map((one) => ({ box: one.getBoundingClientRect(), name: one.textContent }))
        .filter(({ box }) => box.width > 0 && Math.min(box.width, box.height) < 48)
        .map(({ box, name }) => `${name}: ${box.width} × ${box.height}`),
    );
  expect(small).toEqual([]);
  const [inner, scroll] = await page.evaluate(() => [
    innerWidth,
    document.documentElement.scrollWidth,
  ]);
  expect(scroll).toBeLessThanOrEqual(inner);
  const { violations } = await new AxeBuilder({ page }).analyze();
  const grave = violations.filter(({ impact }) => impact === 'serious' || impact === 'critical');
  expect(grave.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
}
