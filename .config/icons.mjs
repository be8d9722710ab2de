/**
 * `npm run icons`: draws the icons of `public` that are pixels from the one that is drawn,
 * `public/icon.svg`. Where the system cuts its own shape out, the ground fills the square and the
 * basket keeps to the middle four fifths.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { toolPath } from './tools.mjs';

const place = fileURLToPath(new URL('../public/', import.meta.url));
const drawing = readFileSync(`${place}icon.svg`, 'utf8');
const [, ground = '', basket = ''] = /(<rect[^>]*>)([\s\S]*)<\/svg>/.exec(drawing) ?? [];
if (!ground || !basket) throw new Error('public/icon.svg must be a ground and what stands on it');
const toTheEdge =
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 64 64">${ground.replace(/ rx="\d+"/, '')}` +
  `<g transform="translate(32 32) scale(0.82) translate(-33.5 -32)">${basket}</g></svg>`;

/** @type {readonly (readonly [name: string, drawing: string, size: number])[]} */
const icons = [
  ['icon-192.png', drawing, 192],
  ['icon-512.png', drawing, 512],
  ['icon-maskable-512.png', toTheEdge, 512],
  ['icon-touch-180.png', toTheEdge, 180],
];

const executablePath = toolPath('chromium');
if (executablePath === undefined) throw new Error('no Chromium found: set CHROMIUM_PATH');
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox'] });
const page = await browser.newPage();
for (const [name, svg, size] of icons) {
  await page.setViewportSize({ width: size, height: size });
  await page.setContent(`<style>body{margin:0}svg{display:block}</style>${svg}`);
  writeFileSync(`${place}${name}`, await page.screenshot({ omitBackground: true }));
  console.log(`public/${name}`);
}
await browser.close();
