import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { AppOptions } from './chromium.ts';
import { openApp } from './chromium.ts';
import { rested } from './desk.ts';
import { dailyNotices, rareNotices } from './everyNotice.ts';
import type { View } from './everyone.ts';
import { faultsOf } from './everyone.ts';

// accessibleThemes.test.ts has the other windows and themes, and what is said of a shelf that cannot be had.
test('at 360 × 740, dark, what is refused, asked and told can be seen whole, read out, touched, and gone through by Tab', async () => {
  const look = { width: 360, height: 740, colorScheme: 'dark' } as const;
  expect(await faultsIn(look, dailyNotices)).toEqual({});
});

test('axe finds nothing serious in what is seldom said or asked, in either theme', async () => {
  const look = { width: 1440, height: 900, colorScheme: 'light' } as const;
  expect(await faultsIn(look, rareNotices.flatMap(inBothThemes))).toEqual({});
});

/** A view in one theme and in the other; not gone through by Tab, which takes the most time. */
function inBothThemes(view: View, at: number): View[] {
  const colorScheme = at % 2 === 0 ? 'dark' : 'light';
  const other = {
    name: `${view.name}, ${colorScheme}`,
    go: (page: Page) => page.emulateMedia({ colorScheme }),
  };
  return [view, { ...view, ...other }].map((one) => ({ ...one, isOver: true }));
}

async function faultsIn(look: AppOptions, views: readonly View[]) {
  const app = await openApp({ ...look, reducedMotion: 'reduce', webgl: false });
  try {
    await rested(app.page);
    return await faultsOf(app.page, views, 'all');
  } finally {
    await app.close();
  }
}
