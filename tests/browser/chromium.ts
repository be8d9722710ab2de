import type { Browser, BrowserContext, ConsoleMessage, Page } from 'playwright-core';
import { chromium } from 'playwright-core';
import { serveApp } from '../../.config/serve.mjs';
import { toolPath } from '../../.config/tools.mjs';

export interface AppOptions {
  /** what follows the address, as `#/sheet`; default none */
  readonly path?: string;
  /** CSS pixels, default 1280 */
  readonly width?: number;
  /** CSS pixels, default 800 */
  readonly height?: number;
  /** device pixels per CSS pixel, default 1 */
  readonly pixelRatio?: number;
  /** false starts a browser that has no WebGL at all; default true */
  readonly webgl?: boolean;
  /** script that runs in the page before the app does; default none */
  readonly init?: string;
  /** a screen that is touched; default false */
  readonly touch?: boolean;
  /** default `no-preference` */
  readonly reducedMotion?: 'reduce' | 'no-preference';
  /** default `light` */
  readonly colorScheme?: 'light' | 'dark';
  /** `active` where the person has colours of their own, as Windows offers; default `none` */
  readonly forcedColors?: 'active' | 'none';
  /** whether the app may keep itself in the browser; default `block`, so that a run sees what was built */
  readonly serviceWorkers?: 'allow' | 'block';
  /** who serves the app; default our own server, on a free port */
  readonly server?: AppServer;
}

/** A server of the built app, and how it is stopped. */
export interface AppServer {
  /** With a closing slash. */
  readonly address: string;
  close(): Promise<void>;
}

/** The built app in a browser of its own, and what it said and asked for, on any of its pages. */
export interface OpenedApp {
  readonly page: Page;
  readonly context: BrowserContext;
  /** with a closing slash, as `http://127.0.0.1:4173/` */
  readonly address: string;
  readonly consoleErrors: readonly string[];
  /** without the ones in `expectedWarnings` */
  readonly consoleWarnings: readonly string[];
  /** exceptions that nobody caught */
  readonly pageErrors: readonly string[];
  /** addresses asked for that are not on 127.0.0.1; the browser cannot reach them */
  readonly outsideRequests: readonly string[];
  /** shuts the browser and the server */
  close(): Promise<void>;
}

const flags = [
  '--no-sandbox',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1',
];
const softwareWebgl = ['--use-gl=angle', '--use-angle=swiftshader', '--enable-unsafe-swiftshader'];
const noWebgl = ['--disable-gpu', '--disable-webgl', '--disable-3d-apis'];

/**
 * fiber still makes three's deprecated clock; reading software pixels back is slow and says so; and so
 * does Playwright where it blocks the service worker.
 */
const expectedWarnings = [
  /Service Worker registration blocked by Playwright/,
  /THREE\.Clock: This module has been deprecated/,
  /GPU stall due to ReadPixels/,
];

/** Serves `dist` on a free port and opens it in Chromium. The app must have been built. */
export async function openApp(options: AppOptions = {}): Promise<OpenedApp> {
  const server = options.server ?? (await serveApp());
  try {
    const browser = await launch(options.webgl ?? true);
    try {
      return await openPage(browser, server, options);
    } catch (error) {
      await browser.close();
      throw error;
    }
  } catch (error) {
    await server.close();
    throw error;
  }
}

async function launch(webgl: boolean): Promise<Browser> {
  const executablePath = toolPath('chromium');
  if (executablePath === undefined) {
    throw new Error('no Chromium found: install it or set CHROMIUM_PATH to its path');
  }
  return chromium.launch({
    executablePath,
    args: [...flags, ...(webgl ? softwareWebgl : noWebgl)],
  });
}

async function openPage(
  browser: Browser,
  server: AppServer,
  options: AppOptions,
): Promise<OpenedApp> {
  const context = await browser.newContext({
    viewport: { width: options.width ?? 1280, height: options.height ?? 800 },
    deviceScaleFactor: options.pixelRatio ?? 1,
    hasTouch: options.touch ?? false,
    reducedMotion: options.reducedMotion ?? 'no-preference',
    colorScheme: options.colorScheme ?? 'light',
    forcedColors: options.forcedColors ?? 'none',
    serviceWorkers: options.serviceWorkers ?? 'block',
  });
  if (options.init) await context.addInitScript(options.init);
  const heard = listen(context);
  const page = await context.newPage();
  await page.goto(server.address + (options.path ?? ''), { waitUntil: 'load' });
  return {
    page,
    context,
    address: server.address,
    ...heard,
    async close() {
      await browser.close();
      await server.close();
    },
  };
}

/** Gathers what every page of the context says and asks for, from now on. */
function listen(context: BrowserContext) {
  const consoleErrors: string[] = [];
  const consoleWarnings: string[] = [];
  const pageErrors: string[] = [];
  const outsideRequests: string[] = [];

  context.on('console', (message) => {
    if (message.type() === 'error') consoleErrors.push(placed(message));
    if (message.type() === 'warning' && !isExpected(message)) consoleWarnings.push(placed(message));
  });
  context.on('weberror', (error) => pageErrors.push(String(error.error())));
  context.on('request', (request) => {
    if (isOutside(request.url())) outsideRequests.push(request.url());
  });
  context.on('page', (page) => {
    page.on('websocket', (socket) => {
      if (isOutside(socket.url())) outsideRequests.push(socket.url());
    });
  });
  return { consoleErrors, consoleWarnings, pageErrors, outsideRequests };
}

function isExpected(message: ConsoleMessage): boolean {
  return expectedWarnings.some((pattern) => pattern.test(message.text()));
}

function placed(message: ConsoleMessage): string {
  const { url, lineNumber } = message.location();
  return `${message.text()} (${url}:${lineNumber})`;
}

/** `data:` and `blob:` addresses have no host and stay in the page. */
function isOutside(url: string): boolean {
  const { protocol, hostname } = new URL(url);
  return /^(https?|wss?):$/.test(protocol) && hostname !== '127.0.0.1';
}
