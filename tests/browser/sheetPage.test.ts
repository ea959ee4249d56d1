/// <reference lib="dom" />
import { expect, test } from 'vitest';
import { benchToAddress } from '../../server/web/forms/address.js';
import { catalogue } from '../support/rules.js';
import { DESKTOP, PHONE, aSite } from '../support/browser.js';

const site = aSite();

const TRAM_LINE_GREEN =
  '/sheet?in=uk&mix=tram-line%20green@transparent-base:70,water-washable-oil:30&on=glass-slab,lino-block,roller-polyurethane';
const UNKNOWN =
  '/sheet?in=us&mix=shop%20black:60,oil-relief:40/cobalt-drier:9&on=glass-slab,old%20tray&hand=bleach,white-spirit&who=under16,asthma&near=hotplate';

const BIG =
  '/sheet?in=us&mix=shop%20black:60,oil-relief:40/cobalt-drier:9&on=glass-slab,old%20tray&near=bleach,hotplate&who=under16,asthma&people=3';

test('ticks survive a reload', async () => {
  const page = await site.visit(TRAM_LINE_GREEN, { viewport: PHONE });
  const boxes = page.locator('main .tick');
  await boxes.nth(2).check();
  await boxes.nth(5).check();
  await page.reload();
  const ticked = await boxes.evaluateAll((all) =>
    all.flatMap((box, index) => ((box as HTMLInputElement).checked ? [index] : [])),
  );
  expect(ticked).toEqual([2, 5]);
});

test('ticks can be made with JavaScript off', async () => {
  const page = await site.visit(TRAM_LINE_GREEN, { viewport: PHONE, javaScriptEnabled: false });
  const box = page.locator('main .tick').first();
  await box.check();
  expect(await box.isChecked()).toBe(true);
});

const IN_A_ROOM =
  '/sheet?in=uk&mix=oil-relief&on=glass-slab&hand=white-spirit&room=60&air=exhaust-fan';

test('a clock counts the airing down from the last wipe and goes on over a reload', async () => {
  const page = await site.visit(IN_A_ROOM, { viewport: PHONE });
  const clock = page.locator('.clock');
  const start = clock.getByRole('button', { name: 'Last wipe done: start the clock' });
  expect(await clock.getByRole('status').textContent()).toBe('');
  await start.click();
  const minutes = Number(await clock.getAttribute('data-clock'));
  const says = await clock.getByRole('status').textContent();
  expect(says).toContain(`${String(minutes)} min to go.`);
  expect(says).toMatch(/^Aired at \d{1,2}:\d{2}/);
  await page.reload();
  expect(await clock.getByRole('status').textContent()).toContain('min to go.');
  // The evening after: long over, and nothing left of it the day after that.
  await page.clock.install({ time: Date.now() + (minutes + 1) * 60_000 });
  await page.reload();
  expect(await clock.getByRole('status').textContent()).toContain('Smell the room first');
  await page.clock.setFixedTime(Date.now() + 25 * 3_600_000);
  await page.reload();
  expect(await clock.getByRole('status').textContent()).toBe('');
});

test('without JavaScript there is no clock, and the line still says how long', async () => {
  const page = await site.visit(IN_A_ROOM, { viewport: PHONE, javaScriptEnabled: false });
  expect(await page.locator('.clock').isVisible()).toBe(false);
  expect(await page.getByText(/^Air the room after the last wipe: \d+ minutes/).isVisible()).toBe(
    true,
  );
});

test('why a line is there opens with one tap on a phone, with a link to the rule', async () => {
  for (const javaScriptEnabled of [false, true]) {
    const page = await site.visit(TRAM_LINE_GREEN, { viewport: PHONE, javaScriptEnabled });
    const line = page.locator('li', { hasText: 'clean it as oil ink' });
    const rule = line.getByRole('link', { name: 'Any share of plain oil makes an oil mix' });
    expect(await rule.isVisible()).toBe(false);
    await line.locator('summary').first().click();
    await rule.click();
    await page.getByRole('heading', { name: 'Any share of plain oil makes an oil mix' }).waitFor();
    expect(page.url()).toContain('/rules/any-share-of-oil');
  }
});

test('the reasons stand in the margin on a wide screen', async () => {
  const page = await site.visit(TRAM_LINE_GREEN, { viewport: DESKTOP });
  const line = page.locator('li', { hasText: 'clean it as oil ink' });
  const rule = line.getByRole('link', { name: 'Any share of plain oil makes an oil mix' });
  expect(await rule.isVisible()).toBe(true);
});

test('no page is wider than the screen, from 320 pixels up', async () => {
  for (const width of [320, 390, 768, 1280]) {
    for (const path of [
      '/',
      TRAM_LINE_GREEN,
      UNKNOWN,
      '/rules',
      '/rules/band.band-2',
      '/help-now',
    ]) {
      const page = await site.visit(path, { viewport: { width, height: 800 } });
      const overflow = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(overflow, `${path} at ${String(width)} pixels`).toBeLessThanOrEqual(0);
      await page.context().close();
    }
  }
});

test('the boxes of a sheet are big enough for an inky finger', async () => {
  const page = await site.visit(TRAM_LINE_GREEN, { viewport: PHONE });
  const heights = await page
    .locator('main li .do')
    .evaluateAll((all) => all.map((each) => each.getBoundingClientRect().height));
  expect(heights.length).toBeGreaterThan(20);
  expect(Math.min(...heights)).toBeGreaterThanOrEqual(48);
});

test('benches print on two pages, A4 and Letter, and their words stay legible', async () => {
  const usual = (id: string, region?: string) => {
    const bench = catalogue.usualBenches.find((row) => row.id === id)?.bench;
    if (bench === undefined) throw new Error(`no usual bench ${id}`);
    return `/sheet?${benchToAddress({ ...bench, ...(region !== undefined && { region }) })}`;
  };
  // The longest in the regions that say most; the others as they are.
  const hrefs = [
    ...catalogue.usualBenches.map(({ id }) => usual(id)),
    ...['letterpress', 'stone-litho', 'etching'].flatMap((id) =>
      ['us', 'uk', 'de', 'fr'].map((region) => usual(id, region)),
    ),
    BIG,
  ];
  const page = await site.visit('/', { viewport: DESKTOP });
  for (const href of hrefs) {
    await page.goto(`${site.origin()}${href}`);
    for (const format of ['A4', 'Letter'] as const) {
      const pdf = await page.pdf({
        format,
        margin: { top: '12mm', bottom: '12mm', left: '12mm', right: '12mm' },
      });
      const pages = pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
      expect(pages, `${href} on ${format}`).toBeGreaterThan(0);
      expect(pages, `${href} on ${format}`).toBeLessThanOrEqual(2);
    }
  }
  await page.emulateMedia({ media: 'print' });
  const sizes = await page
    .locator('.line label > span, .answer .note, .aid .line > p')
    .evaluateAll((all) => all.map((each) => parseFloat(getComputedStyle(each).fontSize)));
  expect(sizes.length).toBeGreaterThan(40);
  // 7.5 points, in CSS pixels.
  expect(Math.min(...sizes)).toBeGreaterThanOrEqual(10);
});

test('the reasons in the margin are set as one text', async () => {
  const page = await site.visit(BIG, { viewport: DESKTOP });
  const displays = await page
    .locator('.reasons p a')
    .evaluateAll((all) => [...new Set(all.map((each) => getComputedStyle(each).display))]);
  expect(displays).toEqual(['inline']);
});

test('what must stop and what is unknown stand before the first phase', async () => {
  const page = await site.visit(UNKNOWN, { viewport: PHONE });
  const text = await page.locator('main').innerText();
  const before = text.indexOf('Before inking');
  expect(text.indexOf('Never let bleach meet')).toBeGreaterThan(-1);
  expect(text.indexOf('Never let bleach meet')).toBeLessThan(before);
  expect(text).toContain('shop black');
  expect(text).toContain('old tray');
  expect(text).not.toMatch(/\bsafe(ly)?\b/i);
});
