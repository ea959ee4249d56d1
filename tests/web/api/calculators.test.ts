import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import supertest from 'supertest';
import { anApp } from '../../support/anApp.js';

let app: Awaited<ReturnType<typeof anApp>>;
beforeAll(async () => {
  app = await anApp();
});
afterAll(() => app.close());

const post = (name: string, body: object) =>
  supertest(app.server).post(`/api/calc/${name}`).send(body);

describe('glove calculators', () => {
  it('names the best material of the chart, without those that are left out', async () => {
    const both = await post('glove-material', { chemicals: ['acetone'] }).expect(200);
    expect(both.body).toMatchObject({ rating: 'VG', materials: ['butyl', 'latex'] });
    const one = await post('glove-material', { chemicals: ['acetone'], exclude: ['latex'] });
    expect(one.body).toMatchObject({ materials: ['butyl'], because: ['glove-chart.acetone'] });
  });

  it('says which chemicals the chart has', async () => {
    const body: unknown = (
      await post('glove-material', { chemicals: ['elbow grease'] }).expect(422)
    ).body;
    expect(JSON.stringify(body)).toContain('turpentine');
  });

  it('gives the level of a time and the type of a glove', async () => {
    const level = await post('glove-level', { minutes: 10.5 }).expect(200);
    expect(level.body).toEqual({ level: 1, type: null });
    const type = await post('glove-level', { minutesByLetter: { J: 90, K: 480, T: 240 } });
    expect(type.body).toEqual({ level: null, type: 'B' });
  });
});

describe('waste calculators', () => {
  it('gives the category of a month, and none where the region has none', async () => {
    const us = await post('waste-category', { region: 'us', kg: 101 }).expect(200);
    expect(us.body).toEqual({ category: 'small', because: ['region.us'] });
    const nz = await post('waste-category', { region: 'nz', kg: 101, acuteKg: 2 }).expect(200);
    expect(nz.body).toMatchObject({ category: null });
  });

  it('knows waste that lights easily', async () => {
    const spirit = await post('ignitable-waste', { region: 'us', flashPointC: 39 }).expect(200);
    expect(spirit.body).toMatchObject({ ignitable: true });
    const slow = await post('ignitable-waste', { region: 'us', flashPointC: 60 }).expect(200);
    expect(slow.body).toMatchObject({ ignitable: false });
  });

  it('names each thing that keeps a can outside the wipes rule', async () => {
    const can = {
      region: 'us',
      days: 181,
      label: 'rags',
      closed: true,
      freeLiquid: false,
      solvent: 'white spirit',
      thrownAway: true,
    };
    const body: unknown = (await post('wipes', can).expect(200)).body;
    expect(body).toMatchObject({ excluded: false, faults: ['too-old', 'wrong-label'] });
  });

  it('says which regions there are', async () => {
    const body: unknown = (await post('waste-category', { region: 'atlantis', kg: 1 }).expect(422))
      .body;
    expect(JSON.stringify(body)).toContain('region');
  });
});
