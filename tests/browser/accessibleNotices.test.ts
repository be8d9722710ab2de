import { expect, test } from 'vitest';
import { openApp } from './chromium.ts';
import { rested } from './desk.ts';
import { dailyNotices } from './everyNotice.ts';
import { faultsOf } from './everyone.ts';

// accessibleThemes.test.ts has the other windows and themes, and what is said when something goes wrong.
test('at 360 × 740, dark, what is refused, asked and told can be seen whole, read out, touched, and gone through by Tab', async () => {
  const look = { width: 360, height: 740, colorScheme: 'dark' } as const;
  const app = await openApp({ ...look, reducedMotion: 'reduce', webgl: false });
  try {
    await rested(app.page);
    expect(await faultsOf(app.page, dailyNotices, 'all')).toEqual({});
  } finally {
    await app.close();
  }
});
