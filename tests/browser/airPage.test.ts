/// <reference lib="dom" />
import { expect, test } from 'vitest';
import { PHONE, aSite } from '../support/browser.js';

const site = aSite();

for (const javaScriptEnabled of [false, true]) {
  const how = javaScriptEnabled ? 'with JavaScript' : 'without JavaScript';

  test(`a room and a use become an answer that can be sent on, ${how}`, async () => {
    const page = await site.visit('/air', { viewport: PHONE, javaScriptEnabled });
    await page.getByLabel('Where are you?').selectOption('us');
    await page.getByLabel('Air', { exact: true }).selectOption('window');
    await page.getByLabel('Volume, m³').fill('60');
    const use = page.getByRole('group', { name: 'Use 1' });
    await use.getByLabel('Agent or substance').selectOption('white-spirit');
    await use.getByLabel('How much, ml').fill('40');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'Vapour over time' }).waitFor();
    expect(new URL(page.url()).search).toBe('?in=us&room=60&air=window&use=white-spirit:40');
    expect(await page.getByRole('img', { name: 'Vapour over time' }).count()).toBe(1);
    await page.context().close();
  });
}

test('the air fits every width, and its drawing is the one for that width', async () => {
  for (const [width, shown] of [
    [320, 'narrow'],
    [390, 'narrow'],
    [640, 'wide'],
    [768, 'wide'],
    [1280, 'wide'],
  ] as const) {
    const page = await site.visit(
      '/air?in=us&room=60&air=window&use=white-spirit:40,acetone:10@20+10,turpentine:5',
      { viewport: { width, height: 800 } },
    );
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
    const plots = page.locator('.plot:visible');
    expect(await plots.count()).toBe(1);
    expect(await plots.getAttribute('class')).toContain(shown);
    // Letters no smaller than 11 pixels, as drawn.
    const scale = await plots.evaluate((svg) => {
      const { width: box } = svg.getBoundingClientRect();
      return box / Number(svg.getAttribute('viewBox')?.split(' ')[2]);
    });
    expect(scale * 14).toBeGreaterThanOrEqual(11);
    await page.context().close();
  }
});

test('no word of the drawing is cut off at its edge', async () => {
  for (const width of [320, 1280]) {
    const page = await site.visit(
      '/air?in=fr&room=200&ach=3&use=white-spirit:40,acetone:60@120+60,turpentine:200@300~lid',
      { viewport: { width, height: 800 } },
    );
    const cut = await page.locator('.plot:visible text').evaluateAll((texts) =>
      texts
        .filter((text) => {
          const own = text.getBoundingClientRect();
          const page = text.closest('svg')?.getBoundingClientRect();
          return !page || own.left < page.left - 1 || own.right > page.right + 1;
        })
        .map((text) => text.textContent),
    );
    expect(cut).toEqual([]);
    await page.context().close();
  }
});

test('printed, the numbers of the curve are there as a table', async () => {
  const page = await site.visit('/air?in=uk&room=60&air=window&use=white-spirit:40');
  const table = page.locator('.shown table');
  expect(await table.isVisible()).toBe(false);
  await page.emulateMedia({ media: 'print' });
  expect(await table.isVisible()).toBe(true);
  expect(await page.locator('form').isVisible()).toBe(false);
});
