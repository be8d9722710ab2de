import { expect, test } from 'vitest';
import { openApp } from './chromium.ts';

test('the app opens without an error and asks nothing of another machine', async () => {
  const app = await openApp();
  try {
    await app.page.waitForSelector('#root > *');
    expect(await app.page.title()).toContain('Girthline');
    expect(app.pageErrors).toEqual([]);
    expect(app.consoleErrors).toEqual([]);
    expect(app.outsideRequests).toEqual([]);
  } finally {
    await app.close();
  }
});
