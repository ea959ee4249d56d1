import { load } from 'cheerio';
import type { FastifyInstance } from 'fastify';
import supertest from 'supertest';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { AirInput } from '../../../server/reasoning/index.js';
import { anApp } from '../../support/anApp.js';
import { reasoner } from '../../support/rules.js';

let app: FastifyInstance;
let counted: AirInput[] = [];
beforeAll(async () => {
  app = await anApp({
    reasoner: {
      ...reasoner,
      air: (input) => {
        counted.push(input);
        return reasoner.air(input);
      },
    },
  });
});
afterAll(async () => {
  await app.close();
});

const get = (path: string) => supertest(app.server).get(path);
const page = async (query: string, status = 200) =>
  load((await get(`/air?${query}`).expect(status)).text);
const DAY = 'in=uk&room=60&air=window&use=white-spirit:40';

describe('GET /air', () => {
  it('is a form until a room and a use are said', async () => {
    for (const query of ['', 'room=60', 'in=us']) {
      const $ = await page(query);
      expect($('form[action="/air"]')).toHaveLength(1);
      expect($('svg[role=img]')).toHaveLength(0);
      expect($('.wrong, .problems')).toHaveLength(0);
    }
  });

  it('answers first: the four numbers, the curve, the limits, then fire, then the form', async () => {
    const $ = await page(DAY);
    expect($('.answer')).toHaveLength(4);
    expect($('svg.plot')).toHaveLength(2);
    const order = $('main').html() ?? '';
    const places = ['class="answers"', 'id="plot"', 'id="limits"', 'id="what-if"', 'id="fire"'].map(
      (mark) => order.indexOf(mark),
    );
    expect(places.every((place) => place > 0)).toBe(true);
    expect([...places, order.indexOf('<form')]).toEqual(
      [...places, order.indexOf('<form')].sort((a, b) => a - b),
    );
  });

  it('counts a day once, however it is spelt, and names its one address', async () => {
    await page(DAY);
    counted = [];
    const odd = await get('/air?use=white-spirit:40.0&air=window&room=60&in=UK').expect(200);
    expect(odd.headers['link']).toBe(`</air?${DAY}>; rel="canonical"`);
    expect(odd.text).toBe((await get(`/air?${DAY}`)).text);
    expect(counted).toHaveLength(0);
  });

  it('sends its own form on to the address of what was typed', async () => {
    const typed =
      'in=uk&air=window&m3=60&l=&w=&h=&ach=&fan=&mixing=&temp=&shift=&zones=2' +
      '&what0=white-spirit&ml0=40&start0=&min0=&share0=&what1=&ml1=&start1=&min1=&share1=';
    const answer = await get(`/air?${typed}`).expect(303);
    expect(answer.headers['location']).toBe(`/air?${DAY}`);
    const empty = await get('/air?in=&m3=&what0=&ml0=').expect(303);
    expect(empty.headers['location']).toBe('/air');
  });

  it('gives more rows, and keeps what was typed', async () => {
    const $ = await page('m3=60&what0=acetone&ml0=5&what1=&rows=8');
    expect($('[name^=what]')).toHaveLength(8);
    expect($('[name=m3]').attr('value')).toBe('60');
    expect($('[name=what0] [selected]').attr('value')).toBe('acetone');
  });

  it('comes back with what was typed, each problem beside its field', async () => {
    const answer = await get('/air?in=uk&m3=lots&what0=acetone&ml0=-5&start0=10').expect(422);
    expect(answer.headers['cache-control']).toBe('no-store');
    const $ = load(answer.text);
    for (const [field, typed] of [
      ['m3', 'lots'],
      ['ml0', '-5'],
    ] as const) {
      const input = $(`#${field}`);
      expect(input.attr('value')).toBe(typed);
      expect($(`#${input.attr('aria-describedby') ?? 'none'}`).text()).toContain(typed);
      expect($(`.problems a[href="#${field}"]`)).toHaveLength(1);
    }
    expect($('#start0').attr('value')).toBe('10');
    expect($('#start0').closest('details').attr('open')).toBeDefined();
  });

  it('treats what no table knows as an answer, and says so', async () => {
    const $ = await page('room=60&air=window&use=my%20bottle:10');
    expect($('.heed').text()).toContain('my bottle');
    expect($('[name=what0] [selected]').attr('value')).toBe('my bottle');
  });

  it('says it never clears where no air moves', async () => {
    const $ = await page('room=60&ach=0&use=white-spirit:40');
    expect($('.answer').first().text()).toContain('It does not clear');
  });

  it('gives US units beside the others in the US alone', async () => {
    const text = async (region: string) =>
      (await page(`in=${region}&room=30&air=room-air&use=turpentine:200`))('.answers').text();
    expect(await text('us')).toMatch(/cfm/);
    expect(await text('uk')).not.toMatch(/cfm|fl oz/);
  });

  it('never calls a thing safe, whatever the day', async () => {
    for (const query of [
      DAY,
      'room=1000&air=exhaust-fan&use=veg-oil:10',
      'room=60&use=acetone:0',
    ]) {
      expect((await page(query))('main').text()).not.toMatch(/\bsafe\b/i);
    }
  });

  it('leads to the sums', async () => {
    expect((await page(''))('a[href="/air/sums"]')).toHaveLength(1);
  });
});
