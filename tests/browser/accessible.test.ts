import { AxeBuilder } from '@axe-core/playwright';
import { expect, test } from 'vitest';
import { openedDesk } from './desk.ts';

const desk = openedDesk({ width: 1440, height: 900 });

test.each(['light', 'dark'] as const)('axe finds nothing serious on the %s page', async (theme) => {
  const { page } = desk();
  await page.emulateMedia({ colorScheme: theme });
  for (const title of await page.locator('.panel [aria-expanded=false]').all()) {
    if (await title.isVisible()) await title.click();
  }
  const { violations } = await new AxeBuilder({ page }).analyze();
  const serious = violations.filter(({ impact }) => impact === 'serious' || impact === 'critical');
  expect(
    serious.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target).join('; ')}`),
  ).toEqual([]);
});
