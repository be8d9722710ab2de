import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterEach, expect, test } from 'vitest';
import { policy } from '../../.config/policy.mjs';
import type { AppOptions, OpenedApp } from './chromium.ts';
import { openApp } from './chromium.ts';
import { fileFrom, open, patience, rested } from './desk.ts';

/** Notes whatever the page's policy refuses, from before the page's own scripts run. */
const init = `
  globalThis.refused = [];
  document.addEventListener('securitypolicyviolation', ({ effectiveDirective, blockedURI }) =>
    globalThis.refused.push(effectiveDirective + ' ' + blockedURI));
`;
let app: OpenedApp | undefined;
afterEach(() => app?.close());

async function opened(options: AppOptions): Promise<OpenedApp> {
  app = await openApp({ init, ...options });
  await rested(app.page);
  return app;
}

test('no view asks for anything that the policy refuses, and the text of a plan stays text', async () => {
  const { page, pageErrors, consoleErrors, outsideRequests } = await opened({ width: 1440 });
  const { text } = await fileFrom(page, 'Save as a file');
  const hostile = '<img src=x onerror="globalThis.ran = 1"><script>globalThis.ran = 1</script>';
  const plan = { ...JSON.parse(text), name: hostile, notes: hostile };
  await open(page, 'hostile.girthline.json', JSON.stringify(plan));
  await expect.poll(() => page.getByLabel('Name of the plan').inputValue()).toBe(hostile);
  await rested(page);
  await fileFrom(page, 'Row chart (CSV)');
  await page.mouse.move(400, 300);
  await page.mouse.wheel(0, 200);

  await page.getByRole('button', { name: 'Print', exact: true }).click();
  await page.waitForSelector('.print-page', patience);
  await given(page, 'Save sheet (PDF)');
  await page.getByLabel('Full-size gauges').check();
  await given(page, 'Save gauges (PDF)');
  await page.keyboard.press('Escape');

  await page.getByRole('button', { name: 'Compare', exact: true }).click();
  await expect.poll(() => page.locator('.stage canvas').count(), patience).toBe(2);
  await given(page, 'Save page (PDF)');
  await given(page, 'Save PNG');
  await page.evaluate(() => globalThis.location.assign('#bench'));
  await page.waitForSelector('.bench-page[data-settled=true]', patience);
  await page.getByRole('button', { name: 'Measured' }).click();

  expect(await refused(page)).toEqual([]);
  expect(await page.evaluate(() => 'ran' in globalThis)).toBe(false);
  expect({ pageErrors, consoleErrors, outsideRequests }).toEqual({
    pageErrors: [],
    consoleErrors: [],
    outsideRequests: [],
  });
});

test('without WebGL nothing is refused either', async () => {
  const { page, consoleErrors } = await opened({ webgl: false });
  await page.getByRole('button', { name: 'Compare', exact: true }).click();
  await page.waitForSelector('.compare-drawings, .drawings', patience);
  expect([await refused(page), consoleErrors]).toEqual([[], []]);
});

test('a script inside the page, a text run as code, a style, another machine: all are refused', async () => {
  const { page, address } = await opened({});
  const { headers } = await fetch(address);
  expect(headers.get('content-security-policy')).toBe(`${policy}; frame-ancestors 'none'`);
  const outcome = await page.evaluate(async () => {
    const inline = document.createElement('script');
    inline.textContent = 'globalThis.ran = 1';
    const style = document.createElement('style');
    style.textContent = 'body { opacity: 0.5 }';
    document.body.append(inline, style);
    const picture = document.createElement('div');
    picture.innerHTML = '<img src="missing.png" onerror="globalThis.ran = 1">';
    document.body.append(picture);
    // later, because the browser's tools let code run while it is they who call
    const code = await new Promise((done) => {
      setTimeout(() => {
        try {
          done(String(new Function('return 1 + 1')()));
        } catch {
          done('refused');
        }
      });
    });
    const fetched = await fetch('https://elsewhere.invalid/').then(
      () => 'answered',
      () => 'refused',
    );
    const worker = new Worker(URL.createObjectURL(new Blob(['postMessage(1)'])));
    const worked = await new Promise((done) => {
      worker.onmessage = () => done('ran');
      worker.onerror = () => done('refused');
    });
    return {
      ran: 'ran' in globalThis,
      opacity: getComputedStyle(document.body).opacity,
      code,
      fetched,
      worked,
    };
  });
  expect(outcome).toEqual({
    ran: false,
    opacity: '1',
    code: 'refused',
    fetched: 'refused',
    worked: 'refused',
  });
  const directives = (await refused(page)).map((one) => one.split(' ')[0]);
  expect(directives.sort()).toEqual(
    expect.arrayContaining([
      'connect-src',
      'script-src',
      'script-src-attr',
      'script-src-elem',
      'style-src-elem',
      'worker-src',
    ]),
  );
});

test('the built page states the policy before anything it could refuse, and has nothing inline', () => {
  const html = readFileSync('dist/index.html', 'utf8');
  const stated = `<meta http-equiv="Content-Security-Policy" content="${policy}" />`;
  expect(html).toContain(stated);
  expect(html.indexOf(stated)).toBeLessThan(html.search(/<(script|link|style)/));
  expect(html).not.toMatch(/<style|<script(?![^>]*\ssrc=)|\sstyle=|\son\w+=|https?:/);
  expect(policy).not.toMatch(/unsafe|https?:|\*/);
});

/** Presses a button that gives a file. */
async function given(page: Page, button: string): Promise<void> {
  await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button, exact: true }).click(),
  ]);
}

function refused(page: Page): Promise<string[]> {
  return page.evaluate(() => (globalThis as unknown as { refused: string[] }).refused);
}
