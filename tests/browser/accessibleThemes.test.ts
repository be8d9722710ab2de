import { describe, expect, test } from 'vitest';
import type { AppOptions } from './chromium.ts';
import { openApp } from './chromium.ts';
import { openedDesk, rested } from './desk.ts';
import { fullDisk, rareNotices, shelfNotices } from './everyNotice.ts';
import type { View } from './everyone.ts';
import { faultsOf } from './everyone.ts';
import type { Look } from './everyView.ts';
import { everyView, openAnew } from './everyView.ts';

// What accessible.test.ts and accessibleNotices.test.ts leave out: each window in its other theme, in colours
// of a person's own, and what is said when something goes wrong.
const desktop = { width: 1440, height: 900 } as const;
const phone = { width: 360, height: 740 } as const;
/** A window of 1280 × 800 at 200 %. */
const low = { width: 640, height: 400 } as const;

describe('every view', () => {
  const desk = openedDesk({ ...desktop, reducedMotion: 'reduce', webgl: false });

  test.each<Look>([
    { ...desktop, colorScheme: 'dark', forcedColors: 'none' },
    { ...phone, colorScheme: 'light', forcedColors: 'none' },
    { ...desktop, colorScheme: 'light', forcedColors: 'active' },
    { ...phone, colorScheme: 'dark', forcedColors: 'active' },
  ])(
    'at $width × $height, $colorScheme, forced colours $forcedColors, every view can be seen whole, read out, touched, and gone through by Tab',
    async (look) => {
      const { page, address } = desk();
      await openAnew(page, address, look);
      expect(await faultsOf(page, everyView, 'all')).toEqual({});
    },
  );
});

test.each<Look>([
  { ...desktop, colorScheme: 'light', forcedColors: 'none' },
  { ...desktop, colorScheme: 'dark', forcedColors: 'none' },
  { ...phone, colorScheme: 'light', forcedColors: 'none' },
  { ...phone, colorScheme: 'dark', forcedColors: 'none' },
  { ...phone, colorScheme: 'dark', forcedColors: 'active' },
  { ...low, colorScheme: 'light', forcedColors: 'none' },
])(
  'at $width × $height, $colorScheme, forced colours $forcedColors, everything that is said or asked can be seen whole, read out, touched, and gone through by Tab',
  async (look) => {
    expect(await faultsIn(look, shelfNotices)).toEqual({});
    expect(await faultsIn(look, rareNotices)).toEqual({});
  },
);

test.each<Look>([
  { ...desktop, colorScheme: 'light', forcedColors: 'none' },
  { ...phone, colorScheme: 'dark', forcedColors: 'none' },
])('at $width × $height, $colorScheme, so can what is said of a full disk', async (look) => {
  expect(await faultsIn(look, [fullDisk])).toEqual({});
});

/** What is wrong in a browser of its own, since what is said there changes what it keeps. */
async function faultsIn(look: AppOptions, views: readonly View[]) {
  const app = await openApp({ ...look, reducedMotion: 'reduce', webgl: false });
  try {
    await rested(app.page);
    return await faultsOf(app.page, views, 'all');
  } finally {
    await app.close();
  }
}
