import { expect, test } from 'vitest';
import { openedDesk, patience } from './desk.ts';
import { faultsOf } from './everyone.ts';
import { everyView, openAnew } from './everyView.ts';

// Without WebGL, so that no time goes into drawing; accessibleStage.test.ts looks at the stage, and
// accessibleThemes.test.ts at each of these windows in the other theme.
const desk = openedDesk({ width: 1440, height: 900, reducedMotion: 'reduce', webgl: false });

const looks = [
  { width: 1440, height: 900, colorScheme: 'light' },
  { width: 360, height: 740, colorScheme: 'dark' },
  // a window of 1280 × 800 at 200 %
  { width: 640, height: 400, colorScheme: 'light' },
] as const;

test.each(looks)(
  'at $width × $height, $colorScheme, every view can be seen whole, read out, touched, and gone through by Tab',
  async (look) => {
    const { page, address } = desk();
    await openAnew(page, address, look);
    // the low window has what the two others have, only less room for it
    expect(await faultsOf(page, everyView, look.height > 400 ? 'all' : 'places')).toEqual({});
  },
);

test('every page has the same help, by its button and by the key ?, and leads from there to the tour', async () => {
  const { page, address } = desk();
  await openAnew(page, address, looks[0]);
  const help = page.locator('dialog.help');
  const pages = [
    { name: 'shelf', go: () => page.goto(`${address}#shelf`), own: 'Shelf' },
    { name: 'bench', go: () => page.goto(`${address}#bench`), own: 'Row done' },
    { name: 'compare', go: openCompare, own: 'Two plans side by side' },
  ];
  for (const { name, go, own } of pages) {
    await go();
    await page.getByText(own, { exact: true }).first().waitFor(patience);
    await page.keyboard.press('?');
    expect(await help.isVisible(), name).toBe(true);
    expect(await help.textContent()).toContain('upsett');
    // a second press leaves it as it is
    await page.keyboard.press('?');
    await page.keyboard.press('Escape');
    expect(await help.isVisible(), name).toBe(false);
    await page.getByRole('button', { name: 'Help: tour, words, keys' }).click();
    await help.getByRole('button', { name: 'Show me round' }).click();
    await page.locator('.tour-card', { hasText: 'This is your basket' }).waitFor(patience);
    await page.keyboard.press('Escape');
    expect(await page.locator('.girth-room').isVisible(), name).toBe(true);
  }
  async function openCompare(): Promise<void> {
    await page.getByRole('button', { name: 'Compare', exact: true }).click();
  }
});
