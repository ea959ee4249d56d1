import type { FastifyInstance } from 'fastify';
import supertest from 'supertest';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { anApp } from '../../support/anApp.js';

let app: FastifyInstance;
beforeAll(async () => {
  app = await anApp();
});
afterAll(async () => {
  await app.close();
});

const site = () => supertest(app.server);
const send = (fields: Record<string, string | string[]>) =>
  site().post('/bench').type('form').send(fields);

describe('the bench page', () => {
  it('leads from what was ticked to the one address of its sheet', async () => {
    await send({
      'mix0.ink': ['water-washable-oil', 'transparent-base'],
      'mix0.share.water-washable-oil': '2',
      'mix0.share.transparent-base': '98',
      surface: ['lino-block', 'glass-slab'],
      region: 'uk',
      do: 'sheet',
    })
      .expect(303)
      .expect(
        'location',
        '/sheet?in=uk&mix=transparent-base:98,water-washable-oil:2&on=glass-slab,lino-block',
      );
  });

  it('is filled in from the address of a sheet', async () => {
    const { text } = await site().get('/?mix=tram+green@my+tin:100&on=glass-slab').expect(200);
    expect(text).toContain('value="tram green"');
    expect(text).toContain('value="my tin"');
    expect(text).toMatch(/value="glass-slab"[^>]*checked|checked[^>]*value="glass-slab"/);
  });

  it('comes back with what was typed and the fault at its field', async () => {
    const { text } = await send({
      'mix0.name': 'tram green',
      'mix0.ink': 'oil-relief',
      'mix0.share.oil-relief': 'lots',
      typedSurface: 'wine bottle',
      do: 'sheet',
    })
      .expect(422)
      .expect('cache-control', 'no-store');
    for (const typed of ['tram green', 'lots', 'wine bottle']) {
      expect(text).toContain(`value="${typed}"`);
    }
    expect(text).toContain('a number from 0 to 100');
  });

  it('shows one more mix and loses nothing', async () => {
    const { text } = await send({ 'mix0.name': 'tram green', mixes: '1', do: 'more' }).expect(200);
    expect(text).toContain('value="tram green"');
    expect(text).toContain('name="mix1.name"');
    expect(text).not.toContain('name="mix2.name"');
  });

  it('asks for an ink when nothing was ticked, but not before it was sent', async () => {
    expect((await send({}).expect(422)).text).toContain('at least one ink');
    expect((await site().get('/?on=glass-slab').expect(200)).text).not.toContain(
      'at least one ink',
    );
  });

  it('takes another region and loses nothing', async () => {
    const { text } = await send({ 'mix0.name': 'tram green', region: 'de', do: 'region' }).expect(
      200,
    );
    expect(text).toContain('value="tram green"');
    expect(text).not.toContain('name="mix1.name"');
    expect(text).toMatch(/href="\/sheet\?in(=|&#x3D;)de&amp;mix/);
  });

  it('answers a body that is no form, is cut off or is far too large', async () => {
    await site().post('/bench').type('text/xml').send('<a/>').expect(415);
    await site().post('/bench').type('form').send('x'.repeat(2_000_000)).expect(413);
    await site().post('/bench').type('json').send('{').expect(400);
    await site().post('/bench').type('json').send('[1,null]').expect(422);
    await site().post('/bench').type('json').send('{"mix0.ink":{"a":1},"surface":7}').expect(422);
  });
});
