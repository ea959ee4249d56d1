import { load } from 'cheerio';
import supertest from 'supertest';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { makeSums } from '../../../server/web/forms/sums.js';
import { unitsOf } from '../../../server/web/forms/sumsUnits.js';
import { anApp } from '../../support/anApp.js';
import { catalogue } from '../../support/rules.js';
import { files } from '../../support/views.js';

let app: Awaited<ReturnType<typeof anApp>>;
beforeAll(async () => {
  app = await anApp();
});
afterAll(() => app.close());

const sums = makeSums(catalogue);
const page = async (query: string, status = 200) =>
  load((await supertest(app.server).get(`/air/sums?${query}`).expect(status)).text);

/** A form of each sum as a browser sends it, and words that its result must hold. */
const FORMS: readonly [id: string, query: string, says: RegExp][] = [
  [
    'dilution',
    'mixing=5&parts-1-liquid=600&parts-1-density=0.78&parts-1-molarMass=140&parts-1-limit=116&parts-limit-unit=MgM3&parts-1-lel=0.6',
    /20,200 m³ an hour \(11,900 cfm\)/,
  ],
  ['air-changes', 'volume=50&flow=100&mixing=3', /2 changes an hour/],
  [
    'purge',
    'volume=100000&volume-unit=Ft3&air=6000&air-unit=Cfm&mixing=3&start=0&target=200&vapour=1.2&vapour-unit=Cfm',
    /20\.3 minutes/,
  ],
  [
    'evaporation',
    'molarMass=92&vapourPressure=3759.7&temperature=25&area=1.82415&airSpeed=0,1&length=1',
    /4,420 g an hour/,
  ],
  ['convert', 'level=100&molarMass=92.1', /100 ppm \(377 mg\/m³\)/],
  [
    'mixture',
    'parts-1-level=500&parts-1-limit=1000&parts-2-level=45&parts-2-limit=200&shift=12',
    /Share of the limit \(1 is all\)\s*0\.725/,
  ],
  [
    'hydrocarbon-limit',
    'parts-1-share=80&parts-1-group=us-alkanes-c9-c15&parts-3-share=20&parts-3-limit=100',
    /US group values/,
  ],
  ['flammable-limit', 'parts-1-level=0.8&parts-1-lfl=1.1&parts-2-level=2&parts-2-lfl=5', /113 %/],
];

describe('the page of sums', () => {
  it('has a form for every sum, with its formula and its sources', async () => {
    const $ = await page('');
    expect($('form').toArray().length).toBe(sums.length);
    for (const { id } of sums) {
      expect($(`#${id} code`).text(), id).toContain('=');
      expect($(`#${id} .sources li`).length, id).toBeGreaterThan(0);
    }
    expect($('[role=status]').length).toBe(0);
  });

  it('labels every field, and gives every id once', async () => {
    const $ = await page('');
    const ids = $('[id]')
      .toArray()
      .map((each) => $(each).attr('id'));
    expect(ids).toEqual([...new Set(ids)]);
    for (const field of $('form input:not([type=hidden]), form select').toArray()) {
      expect($(`label[for="${$(field).attr('id') ?? ''}"]`).length).toBe(1);
    }
  });

  it.each(FORMS)('works out %s, and keeps what was typed', async (id, query, says) => {
    const $ = await page(`sum=${id}&${query}`);
    const section = $(`#${id}`);
    expect(section.find('[role=status]').text()).toMatch(says);
    expect($('[role=status]').length).toBe(1);
    for (const [name, value] of new URLSearchParams(query)) {
      const field = section.find(`[name="${name}"]`);
      const typed = field.is('select') ? field.find('option[selected]').attr('value') : field.val();
      expect(typed, name).toBe(value);
    }
  });

  it('has a case for each sum', () => {
    expect(FORMS.map(([id]) => id)).toEqual(sums.map(({ id }) => id));
  });

  it('says never where a level is never reached', async () => {
    const $ = await page('sum=purge&volume=60&air=0&mixing=3&start=100&target=10');
    expect($('#purge .came dd').first().text()).toBe('never');
  });

  it('rounds levels up and limits down', async () => {
    const share = await page('sum=mixture&parts-1-level=100.04&parts-1-limit=100');
    expect(share('#mixture .came dd').first().text()).toBe('1.01');
    const limit = await page('sum=hydrocarbon-limit&parts-1-share=100&parts-1-limit=166.9');
    expect(limit('#hydrocarbon-limit .came dd').first().text()).toBe('166 mg/m³');
  });
});

describe('a form that cannot be worked out', () => {
  it('comes back with what was typed and each problem beside its field', async () => {
    const $ = await page(
      'sum=purge&volume=60&air=2&mixing=3&start=1,234&target=abc&vapour=-3',
      422,
    );
    expect($('#purge-target').val()).toBe('abc');
    expect($('#purge-volume').val()).toBe('60');
    const wrong = (field: string) => $(`#purge-${field}-wrong`).text();
    expect(wrong('target')).toMatch(/“abc”.*a number of ppm/);
    expect(wrong('start')).toMatch(/“1,234”/);
    expect(wrong('vapour')).toMatch(/“-3”.*a number of m³ an hour, 0 to/);
    expect($('#purge-target').attr('aria-describedby')).toBe('purge-target-wrong');
    const links = $('#purge .problems a').toArray();
    expect(links.map((each) => $(each).text()).sort()).toEqual([
      'Level at the start, C0',
      'Level to reach, C1',
      'Vapour that comes in, G',
    ]);
    expect($('[role=status]').length).toBe(0);
  });

  it('names the row and the field of a list', async () => {
    const $ = await page('sum=flammable-limit&parts-2-level=3', 422);
    expect($('#flammable-limit .problems a').text()).toBe('Row 2: Burns in air from, L');
    expect($('#flammable-limit-parts-2-lfl-wrong').text()).toContain('“nothing”');
  });

  it('asks for a first row where there is none', async () => {
    const $ = await page('sum=flammable-limit', 422);
    expect($('#flammable-limit-parts-1-level-wrong').length).toBe(1);
  });

  it('says that two columns never mix', async () => {
    const $ = await page(
      'sum=hydrocarbon-limit&parts-1-share=50&parts-1-group=us-alkanes-c9-c15&parts-2-share=50&parts-2-group=uk-aromatics',
      422,
    );
    expect($('#hydrocarbon-limit-parts-2-group-wrong').text()).toContain('two columns never mix');
    const chosen = $('#hydrocarbon-limit-parts-2-group option[selected]');
    expect(chosen.attr('value')).toBe('uk-aromatics');
  });

  it('shows a group and a unit that it does not know as not chosen', async () => {
    const $ = await page(
      'sum=hydrocarbon-limit&parts-1-share=100&parts-1-group=%3Cb%3E&parts-limit-unit=furlongs',
      422,
    );
    expect($('#hydrocarbon-limit-parts-1-group option[selected]').length).toBe(0);
    expect($('#hydrocarbon-limit b').length).toBe(0);
  });

  it('is the plain page for a sum that there is not', async () => {
    const $ = await page('sum=elbow-grease&volume=3');
    expect($('#purge-volume').val()).toBe('');
  });
});

describe('the words of the sums', () => {
  it('are all in use', () => {
    const fields = sums.flatMap(({ fields: own, lists }) => [
      ...Object.entries(own),
      ...Object.values(lists).flatMap((list) => Object.entries(list.fields)),
    ]);
    const answers = sums.flatMap((sum) =>
      [sum.answers, ...Object.values(sum.rowAnswers)].flatMap((each) => Object.entries(each)),
    );
    const quantities = [
      ...fields.flatMap(([, field]) => (field.kind === 'number' ? field.quantity : [])),
      ...answers.flatMap(([, quantity]) => (quantity === 'id' ? [] : quantity)),
    ];
    const used = new Set([
      ...sums.flatMap(({ id }) =>
        ['title', 'lead', 'words', 'formula'].map((what) => `sums.${id}.${what}`),
      ),
      ...fields.map(([name]) => `sums.field.${name}`),
      ...answers.map(([name]) => `sums.out.${name}`),
      ...sums.flatMap(({ lists }) => Object.keys(lists).map((name) => `sums.list.${name}`)),
      ...quantities.flatMap((quantity) =>
        unitsOf(quantity).map(({ suffix }) => `unit.${suffix === '' ? 'none' : suffix}`),
      ),
    ]);
    const said = Object.keys(files.messages).filter((key) =>
      /^(unit\.|sums\.(field|out|list)\.)|^sums\..*\.(title|lead|words|formula)$/.test(key),
    );
    expect(said.filter((key) => !used.has(key))).toEqual([]);
    expect([...used].filter((key) => !said.includes(key))).toEqual([]);
  });
});
