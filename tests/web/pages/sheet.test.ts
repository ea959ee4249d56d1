import type { FastifyInstance } from 'fastify';
import supertest from 'supertest';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { qrSvg } from '../../../server/output/qr/qrSvg.js';
import type { BenchInput } from '../../../server/reasoning/index.js';
import { SheetAnswer } from '../../../server/web/api/sheetAnswer.js';
import { anApp } from '../../support/anApp.js';
import { reasoner } from '../../support/rules.js';

let app: FastifyInstance;
let reasoned: BenchInput[] = [];
beforeAll(async () => {
  app = await anApp({
    reasoner: {
      ...reasoner,
      sheet: (bench) => {
        reasoned.push(bench);
        return reasoner.sheet(bench);
      },
    },
  });
});
afterAll(async () => {
  await app.close();
});

const site = () => supertest(app.server);
const BENCH = 'in=uk&mix=oil-relief&on=glass-slab,lino-block';

describe('GET /sheet', () => {
  it('takes the form that Accept or the ending of the address asks for', async () => {
    const types: readonly [string, string | undefined, RegExp][] = [
      ['/sheet', undefined, /^text\/html/],
      ['/sheet', 'text/html,application/xhtml+xml,*/*;q=0.8', /^text\/html/],
      ['/sheet', 'application/json', /^application\/json/],
      ['/sheet', 'text/html;q=0.2, text/plain', /^text\/plain/],
      ['/sheet', 'image/png', /^text\/html/],
      ['/sheet.json', 'text/html', /^application\/json/],
      ['/sheet.txt', 'text/html', /^text\/plain/],
    ];
    for (const [path, accept, type] of types) {
      const asked = site().get(`${path}?${BENCH}`);
      if (accept !== undefined) asked.set('Accept', accept);
      await asked
        .expect(200)
        .expect('content-type', type)
        .expect('vary', /Accept/);
    }
  });

  it('answers any spelling of a bench, and names its one address', async () => {
    const spelt = '/sheet?on=lino-block,glass-slab,glass-slab&mix=oil-relief&in=UK&ref=poster';
    const [odd, canonical] = await Promise.all([
      site().get(spelt).expect(200),
      site().get(`/sheet?${BENCH}`),
    ]);
    expect(odd.headers['link']).toBe(`</sheet?${BENCH}>; rel="canonical"`);
    expect(odd.text).toBe(canonical.text);
    expect(odd.headers['etag']).toBe(canonical.headers['etag']);
  });

  it('reasons once for the same bench, however it is spelt and however often it is asked for', async () => {
    reasoned = [];
    for (const query of ['mix=oil-etching&on=glass-slab', 'on=glass-slab&mix=oil-etching']) {
      await site().get(`/sheet?${query}`).expect(200);
      await site().get(`/sheet?${query}`).expect(200);
    }
    expect(reasoned).toHaveLength(1);
  });

  it('has another ETag for another form, bench or day', async () => {
    const tomorrow = await anApp({ clock: { today: () => '2026-11-26' } });
    const tags = await Promise.all([
      app.inject(`/sheet?${BENCH}`),
      app.inject(`/sheet.txt?${BENCH}`),
      app.inject(`/sheet?${BENCH}&people=3`),
      tomorrow.inject(`/sheet?${BENCH}`),
    ]);
    expect(new Set(tags.map((answer) => answer.headers.etag)).size).toBe(4);
    await tomorrow.close();
  });

  it('gives the bench page back when the address is wrong, with all of it and the fault', async () => {
    const { text } = await site()
      .get('/sheet?mix=tram+green@oil-relief:lots&on=glass-slab')
      .expect(422)
      .expect('content-type', /html/)
      .expect('cache-control', 'no-store');
    expect(text).toContain('value="lots"');
    expect(text).toContain('value="tram green"');
    expect(text).toContain('a number from 0 to 100');
  });

  it('tells programs what is wrong as problem+json, and text readers in text', async () => {
    const wrong = '?mix=oil-relief:lots&in=atlantis';
    const answer = await site()
      .get(`/sheet.json${wrong}`)
      .expect(422)
      .expect('content-type', /^application\/problem\+json/);
    expect(answer.body).toMatchObject({
      status: 422,
      errors: [
        { path: '/region', got: 'atlantis' },
        { path: '/mixes/0/parts/0/share', got: 'lots' },
      ],
    });
    const { text } = await site().get(`/sheet.txt${wrong}`).expect(422);
    expect(text).toContain('- /mixes/0/parts/0/share: got lots; accepts a number from 0 to 100');
  });

  it.each(['', '?', '?on=glass-slab'])(
    'says that no ink is named when none is, as /api/sheet does: /sheet%s',
    async (query) => {
      const { text } = await site().get(`/sheet${query}`).expect(200);
      expect(text).toContain('<h1>No ink named</h1>');
      const surfaces = query.includes('on=') ? ['glass-slab'] : [];
      const fromAddress = await site().get(`/sheet.json${query}`).expect(200);
      const posted = await site().post('/api/sheet').send({ mixes: [], surfaces }).expect(200);
      expect(fromAddress.body).toEqual(posted.body);
    },
  );

  it('says the same to a fresh server at every canonical address', async () => {
    const spelt = [
      'mix=oil-relief:100,oil-relief:50',
      'mix=oil-relief:80/transparent-base:20,transparent-base:5',
      'on=glass-slab',
    ];
    const fresh = await anApp();
    for (const query of spelt) {
      const { headers } = await site().get(`/sheet?${query}`).expect(200);
      const [, canonical = ''] = /^<([^>]+)>/.exec(headers['link'] ?? '') ?? [];
      const again = await fresh.inject(canonical);
      expect([canonical, again.statusCode]).toEqual([canonical, 200]);
      expect(again.headers.link).toBe(headers['link']);
    }
    for (const query of ['mix=oil-relief:50', 'mix=oil-relief:50,oil-relief:50']) {
      await site().get(`/sheet?${query}`).expect(422);
      await site().get(`/sheet?${query}`).expect(422);
    }
    await fresh.close();
  });

  it('is read, never sent to', async () => {
    const answer = await site().post('/sheet').type('form').send('mix=oil-relief').expect(405);
    expect(answer.headers['allow']).toBe('GET, HEAD');
  });

  it('says the same as JSON as /api/sheet does', async () => {
    const fromAddress = await site().get(`/sheet.json?${BENCH}`).expect(200);
    const posted = await site()
      .post('/api/sheet')
      .send({
        region: 'uk',
        mixes: [{ parts: [{ ink: 'oil-relief' }] }],
        surfaces: ['lino-block', 'glass-slab'],
      })
      .expect(200);
    expect(fromAddress.body).toEqual(posted.body);
    expect(SheetAnswer.safeParse(fromAddress.body).error).toBeUndefined();
  });
});

describe('GET /qr.svg', () => {
  it('stands in the foot of its sheet', async () => {
    const { text } = await site().get(`/sheet?${BENCH}`).expect(200);
    const [, src = ''] = /<img src="(\/qr\.svg[^"]+)"/.exec(text) ?? [];
    const address = src.replaceAll('&amp;', '&').replaceAll('&#x3D;', '=');
    expect(address).toBe(`/qr.svg?${BENCH}`);
    await site().get(address).expect(200);
  });

  it('draws the address that this server was reached by', async () => {
    const one = await site().get(`/qr.svg?${BENCH}`).set('Host', 'press.local:3000').expect(200);
    const other = await site().get(`/qr.svg?${BENCH}`).set('Host', '10.0.0.7').expect(200);
    expect(one.headers['content-type']).toBe('image/svg+xml');
    expect(String(one.body)).toMatch(/^<svg /);
    expect(String(one.body)).not.toBe(String(other.body));
  });

  it('leads to the public address where one is set, whatever the proxy asked for', async () => {
    const publicOrigin = 'https://sheets.example';
    const behind = await anApp({ publicOrigin });
    const [here, there] = await Promise.all(
      ['10.0.0.7', 'a<b'].map((host) =>
        behind.inject({ url: `/qr.svg?${BENCH}`, headers: { host } }),
      ),
    );
    expect(here?.body).toBe(qrSvg(`${publicOrigin}/sheet?${BENCH}`));
    expect(there?.body).toBe(here?.body);
    const sheet = await behind.inject(`/sheet?${BENCH}`);
    expect(sheet.headers.link).toBe(`<${publicOrigin}/sheet?${BENCH}>; rel="canonical"`);
    await behind.close();
  });

  it('draws none for a wrong bench, a wrong host or an address too long to be read', async () => {
    await site().get('/qr.svg?mix=a:b').expect(422);
    await site().get(`/qr.svg?${BENCH}`).set('Host', 'a<b').expect(404);
    const long = Array.from({ length: 30 }, (_, n) => `${'s'.repeat(55)}${n}`).join(',');
    await site().get(`/qr.svg?mix=a&on=${long}`).expect(404);
  });
});
