/// <reference lib="dom" />
import { expect, test } from 'vitest';
import { PHONE, aSite } from '../support/browser.js';

const site = aSite();

test('a sheet page is light and asks nobody else for anything', async () => {
  const page = await site.visit('/healthz', { viewport: PHONE });
  const client = await page.context().newCDPSession(page);
  await client.send('Network.enable');
  const urls = new Map<string, string>();
  const bytes = { fonts: 0, others: 0 };
  client.on('Network.requestWillBeSent', (event) => urls.set(event.requestId, event.request.url));
  client.on('Network.loadingFinished', (event) => {
    const isFont = /\.woff2/.test(urls.get(event.requestId) ?? '');
    bytes[isFont ? 'fonts' : 'others'] += event.encodedDataLength;
  });
  await page.goto(
    `${site.origin()}/sheet?in=uk&mix=tram-line%20green@transparent-base:70,water-washable-oil:30&on=glass-slab,lino-block,roller-polyurethane`,
    { waitUntil: 'networkidle' },
  );
  expect([...urls.values()].filter((url) => !url.startsWith(site.origin()))).toEqual([]);
  expect(bytes.others).toBeGreaterThan(10_000);
  expect(bytes.others).toBeLessThanOrEqual(60 * 1024);
  expect(bytes.fonts).toBeGreaterThan(10_000);
  expect(bytes.fonts).toBeLessThanOrEqual(120 * 1024);
});

test('help now, once seen, is there without a signal', async () => {
  const page = await site.visit('/help-now?in=uk', { viewport: PHONE });
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await page.reload({ waitUntil: 'networkidle' });
  await page.context().setOffline(true);
  await page.reload();
  expect(await page.locator('main').innerText()).toContain('999');
  expect(await page.getByRole('heading', { level: 1 }).isVisible()).toBe(true);
});
