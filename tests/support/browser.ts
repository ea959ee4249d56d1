import { existsSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import sparticuz from '@sparticuz/chromium';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';
import { anApp } from './anApp.js';

const QUIET = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** A system Chromium where there is one, else the one that ships inside npm. */
const launch = async (): Promise<Browser> => {
  const system = [process.env['CHROMIUM_PATH'], '/usr/bin/chromium', '/usr/bin/chromium-browser'];
  const found = system.find((path) => path !== undefined && existsSync(path));
  return found === undefined
    ? chromium.launch({ executablePath: await sparticuz.executablePath(), args: sparticuz.args })
    : chromium.launch({ executablePath: found, args: QUIET });
};

export interface Site {
  /** A new visitor: a page of its own, with nothing remembered. */
  readonly visit: (path: string, options?: BrowserContextOptions) => Promise<Page>;
  readonly origin: () => string;
}

/** The site on a free port and a browser for it, for the tests of one file. */
export const aSite = (): Site => {
  let browser: Browser | undefined;
  let app: Awaited<ReturnType<typeof anApp>> | undefined;
  let origin = '';
  beforeAll(async () => {
    app = await anApp();
    await app.listen({ host: '127.0.0.1', port: 0 });
    origin = `http://127.0.0.1:${String((app.server.address() as AddressInfo).port)}`;
    browser = await launch();
  });
  afterAll(async () => {
    await browser?.close();
    await app?.close();
  });
  return {
    origin: () => origin,
    visit: async (path, options) => {
      if (browser === undefined) throw new Error('the browser has not started');
      const context = await browser.newContext(options ?? {});
      const page = await context.newPage();
      await page.goto(origin + path);
      return page;
    },
  };
};

export const PHONE = { width: 390, height: 844 } as const;
export const DESKTOP = { width: 1280, height: 900 } as const;
