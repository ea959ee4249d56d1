import { AxeBuilder } from '@axe-core/playwright';
import { expect, test } from 'vitest';
import { DESKTOP, PHONE, aSite } from '../support/browser.js';

const site = aSite();

const PAGES = [
  '/',
  '/?in=us&mix=oil-relief:60,shop%20black:40/cobalt-drier:2~dried&on=glass-slab&people=3',
  '/sheet?in=uk&mix=tram-line%20green@transparent-base:70,water-washable-oil:30&on=glass-slab,lino-block,roller-polyurethane',
  '/sheet?in=us&mix=shop%20black:60,oil-relief:40/cobalt-drier:9&on=glass-slab,old%20tray&hand=bleach,white-spirit&who=under16&near=hotplate',
  '/sheet',
  '/sheet?in=atlantis&mix=oil-relief:-3',
  '/rules',
  '/rules?q=drier',
  '/rules?q=nothing%20at%20all',
  '/rules/pair.lino-block.veg-oil',
  '/rules/region.de',
  '/help-now?in=de',
  '/air',
  '/air?in=us&room=60&air=window&use=white-spirit:40,acetone:10@20+10~lid',
  '/air?in=de&room=25&air=room-air&use=turpentine:200,my%20bottle:10',
  '/air?in=atlantis&room=-3&use=acetone:lots',
  '/air/sums',
  '/air/sums?sum=dilution&mixing=5&parts-1-liquid=600&parts-1-density=0.78&parts-1-molarMass=140&parts-1-limit=116&parts-limit-unit=MgM3',
  '/air/sums?sum=purge&volume=60&air=2&mixing=3&start=100&target=abc&vapour=-3',
  '/nowhere',
];

for (const [colorScheme, viewport] of [
  ['dark', PHONE],
  ['light', DESKTOP],
] as const) {
  test(`axe finds nothing, ${colorScheme}, ${String(viewport.width)} pixels wide`, async () => {
    for (const path of PAGES) {
      const page = await site.visit(path, { colorScheme, viewport });
      const { violations } = await new AxeBuilder({ page }).analyze();
      const found = violations.map(
        (each) =>
          `${path}: ${each.id} at ${each.nodes.map((node) => node.target.join(' ')).join(', ')}`,
      );
      expect(found).toEqual([]);
      await page.context().close();
    }
  });
}

test('a sheet can be reached and ticked with the keyboard alone', async () => {
  const page = await site.visit('/', { viewport: DESKTOP });
  await page.getByRole('link', { name: 'Lino, oil ink' }).focus();
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: 'If it goes wrong' }).waitFor();
  for (let steps = 0; steps < 60; steps += 1) {
    await page.keyboard.press('Tab');
    const isTick = await page.locator(':focus').evaluate((each) => each.classList.contains('tick'));
    if (isTick) break;
  }
  await page.keyboard.press('Space');
  expect(await page.locator('main .tick').first().isChecked()).toBe(true);
});
