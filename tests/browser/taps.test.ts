import { expect, test } from 'vitest';
import { catalogue } from '../support/rules.js';
import { PHONE, aSite } from '../support/browser.js';

const site = aSite();

/** A finger that counts. */
const finger = () => {
  let taps = 0;
  return {
    tap: async (target: { click: () => Promise<void> }) => {
      taps += 1;
      await target.click();
    },
    taps: () => taps,
  };
};

for (const javaScriptEnabled of [false, true]) {
  const how = javaScriptEnabled ? 'with JavaScript' : 'without JavaScript';

  test(`a usual bench is a sheet after one tap, ${how}`, async () => {
    for (const usual of catalogue.usualBenches) {
      const page = await site.visit('/', { viewport: PHONE, javaScriptEnabled });
      const { tap, taps } = finger();
      await tap(page.getByRole('link', { name: usual.name }).first());
      await page.getByRole('heading', { name: 'If it goes wrong' }).waitFor();
      expect(taps()).toBeLessThanOrEqual(2);
      await page.context().close();
    }
  });

  test(`any three things make a sheet in six taps at most, ${how}`, async () => {
    const hard = [
      { inks: ['uv-cure'], additives: ['dry-pigment'], surfaces: ['handle-plastic'] },
      { inks: [], additives: ['dry-pigment', 'bronze-powder', 'oxime-antiskin'], surfaces: [] },
      { inks: ['shellac', 'gum-arabic', 'litho-crayon'], additives: [], surfaces: [] },
      { inks: ['plastisol'], additives: [], surfaces: ['tarlatan', 'handle-wood'] },
    ];
    for (const { inks, additives, surfaces } of hard) {
      const page = await site.visit('/', { viewport: PHONE, javaScriptEnabled });
      const { tap, taps } = finger();
      const things = [
        ...inks.map((id) => `mix0.ink"][value="${id}`),
        ...additives.map((id) => `mix0.additive"][value="${id}`),
        ...surfaces.map((id) => `surface"][value="${id}`),
      ];
      for (const thing of things) {
        const box = page.locator(`input[name="${thing}"]`);
        const label = page.locator(`label[for="${(await box.getAttribute('id')) ?? ''}"]`);
        if (!(await label.isVisible())) {
          await tap(page.locator('details', { has: box }).locator('> summary'));
        }
        await tap(label);
        expect(await box.isChecked()).toBe(true);
      }
      await tap(page.getByRole('button', { name: 'Make the sheet' }).last());
      await page.getByRole('heading', { name: 'If it goes wrong' }).waitFor();
      expect(taps()).toBeLessThanOrEqual(6);
      await page.context().close();
    }
  });
}
