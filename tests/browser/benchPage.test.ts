import { expect, test } from 'vitest';
import { PHONE, aSite } from '../support/browser.js';

const site = aSite();

const tick = async (
  page: Awaited<ReturnType<typeof site.visit>>,
  name: string,
  value: string,
): Promise<void> => {
  const id = await page.locator(`input[name="${name}"][value="${value}"]`).getAttribute('id');
  await page.locator(`label[for="${id ?? ''}"]`).click();
};

for (const javaScriptEnabled of [false, true]) {
  const how = javaScriptEnabled ? 'with JavaScript' : 'without JavaScript';

  test(`a wrong share is said at its field and nothing typed is lost, ${how}`, async () => {
    const page = await site.visit('/', { viewport: PHONE, javaScriptEnabled });
    await tick(page, 'mix0.ink', 'oil-relief');
    await tick(page, 'mix0.ink', 'water-washable-oil');
    await page.locator('input[name="mix0.share.oil-relief"]').fill('70');
    await page.locator('input[name="mix0.share.water-washable-oil"]').fill('40');
    await page.locator('input[name="mix0.typedInk"]').fill('the blue tin <b>');
    await tick(page, 'surface', 'glass-slab');
    await page.getByRole('button', { name: 'Make the sheet' }).last().click();
    expect(await page.locator('.problems').innerText()).toMatch(/100/);
    expect(await page.locator('input[name="mix0.share.oil-relief"]').inputValue()).toBe('70');
    expect(await page.locator('input[name="mix0.typedInk"]').inputValue()).toBe('the blue tin <b>');
    const slab = page.locator('input[name="surface"][value="glass-slab"]');
    expect(await slab.isChecked()).toBe(true);
    await page.locator('input[name="mix0.share.water-washable-oil"]').fill('30');
    await page.locator('input[name="mix0.typedInk"]').fill('');
    await page.getByRole('button', { name: 'Make the sheet' }).last().click();
    await page.getByRole('heading', { name: 'If it goes wrong' }).waitFor();
  });

  test(`another mix can be added and nothing is lost, ${how}`, async () => {
    const page = await site.visit('/', { viewport: PHONE, javaScriptEnabled });
    await tick(page, 'mix0.ink', 'oil-relief');
    await tick(page, 'surface', 'lino-block');
    await page.locator('button[value="more"]').click();
    await tick(page, 'mix1.ink', 'screen-acrylic');
    const first = page.locator('input[name="mix0.ink"][value="oil-relief"]');
    expect(await first.isChecked()).toBe(true);
    await page.getByRole('button', { name: 'Make the sheet' }).last().click();
    await page.getByRole('heading', { name: 'If it goes wrong' }).waitFor();
    expect(page.url()).toMatch(/mix=oil-relief.*mix=screen-acrylic/);
  });

  test(`the bench comes back filled in from the sheet, ${how}`, async () => {
    const page = await site.visit(
      '/sheet?in=de&mix=oil-relief:60,transparent-base:40/cobalt-drier:2&on=glass-slab,my%20tray',
      { viewport: PHONE, javaScriptEnabled },
    );
    await page.getByRole('link', { name: 'Change the bench' }).click();
    expect(await page.locator('input[name="mix0.share.oil-relief"]').inputValue()).toBe('60');
    expect(await page.locator('input[name="mix0.percent.cobalt-drier"]').inputValue()).toBe('2');
    expect(await page.locator('input[name="typedSurface"]').inputValue()).toBe('my tray');
    expect(await page.locator('select[name="region"]').inputValue()).toBe('de');
  });
}
