import type { LocatorScreenshotOptions, Page } from 'playwright-core';

const over = '.stage-head, .status, .findings-button { visibility: hidden }';

/** The stage as it is drawn now, without what lies over it; a PNG unless `options` say another kind. */
export async function stagePicture(
  page: Page,
  options: LocatorScreenshotOptions = {},
): Promise<Buffer> {
  // as rules and not as a <style>, which the page's policy refuses
  await page.evaluate((rules) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(rules);
    document.adoptedStyleSheets = [sheet];
  }, over);
  const picture = await page.locator('.stage').screenshot(options);
  await page.evaluate(() => {
    document.adoptedStyleSheets = [];
  });
  return picture;
}

/** The pixels of a PNG, read by the page. */
export function pixelsOf(page: Page, picture: Buffer) {
  return page.evaluateHandle(async (text) => {
    const bytes = Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
    const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
    const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
    const context = canvas.getContext('2d');
    if (!context) throw new Error('no canvas to read a picture with');
    context.drawImage(bitmap, 0, 0);
    return context.getImageData(0, 0, bitmap.width, bitmap.height);
  }, picture.toString('base64'));
}

/** Share of the pixels that differ to the eye between two pictures of one size, 0 … 1. */
export async function difference(page: Page, one: Buffer, other: Buffer): Promise<number> {
  const pictures = await Promise.all([pixelsOf(page, one), pixelsOf(page, other)]);
  return page.evaluate(([{ data: a }, { data: b }]) => {
    if (a.length !== b.length) throw new Error('two pictures of one size are needed');
    let differing = 0;
    for (let at = 0; at < a.length; at += 4) {
      const steps = [0, 1, 2].map((part) => Math.abs((a[at + part] ?? 0) - (b[at + part] ?? 0)));
      if (Math.max(...steps) > 12) differing += 1;
    }
    return (4 * differing) / a.length;
  }, pictures);
}

/** Share of a picture's height, from its upper edge, in which nothing differs from its first pixel. */
export async function plainAbove(page: Page, picture: Buffer): Promise<number> {
  return page.evaluate(
    ({ data, width, height }) => {
      for (let at = 0; at < data.length; at += 4) {
        const steps = [0, 1, 2].map((part) => Math.abs((data[at + part] ?? 0) - (data[part] ?? 0)));
        if (Math.max(...steps) > 12) return Math.floor(at / 4 / width) / height;
      }
      return 1;
    },
    await pixelsOf(page, picture),
  );
}
