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

test('the region is remembered on the device, and the usual benches are those of it', async () => {
  const page = await site.visit('/', { viewport: PHONE });
  await page.locator('#region').selectOption('de');
  await page.goto(site.origin());
  expect(await page.locator('#region').inputValue()).toBe('de');
  expect(await page.locator('.help-door').getAttribute('href')).toBe('/help-now?in=de');
  await page.getByRole('link', { name: 'Lino, oil ink' }).click();
  expect(page.url()).toContain('/sheet?in=de&mix=');
  expect(await page.locator('.ask').count()).toBe(0);
});

test('the region can be set without JavaScript, and a sheet without one asks for it', async () => {
  const page = await site.visit('/', { viewport: PHONE, javaScriptEnabled: false });
  await page.locator('#region').selectOption('fr');
  await page.getByRole('button', { name: 'Set' }).click();
  const usual = page.getByRole('link', { name: 'Lino, oil ink' });
  expect(await usual.getAttribute('href')).toMatch(/^\/sheet\?in=fr&mix=/);
  await page.goto(`${site.origin()}/sheet?mix=oil-relief&on=glass-slab`);
  await page.locator('.ask').getByRole('link', { name: 'Ireland' }).click();
  expect(page.url()).toContain('/sheet?in=ie&mix=oil-relief&on=glass-slab');
});

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
