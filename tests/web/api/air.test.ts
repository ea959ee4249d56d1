import fc from 'fast-check';
import type { FastifyInstance } from 'fastify';
import supertest from 'supertest';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AIR_CAUTIONS } from '../../../server/reasoning/index.js';
import { AirJson } from '../../../server/web/api/airAnswer.js';
import { airJson } from '../../../server/web/api/airJson.js';
import { anApp } from '../../support/anApp.js';
import { agentIds, otherIds, regionIds } from '../../support/arbitraries.js';
import { catalogue, reasoner, words } from '../../support/rules.js';

let app: FastifyInstance;
beforeAll(async () => {
  app = await anApp();
});
afterAll(async () => {
  await app.close();
});

const post = (body: unknown) =>
  supertest(app.server)
    .post('/api/air')
    .send(body as object);

const answerTo = async (body: unknown): Promise<AirJson> => {
  const { body: answer } = (await post(body).expect(200)) as { readonly body: unknown };
  return AirJson.parse(answer);
};

interface Problem {
  readonly path: string;
  readonly got: string;
  readonly accepts: string;
}
const errorsOf = async (body: unknown): Promise<readonly Problem[]> => {
  const { body: answer } = (await post(body).expect(422)) as { readonly body: unknown };
  return (answer as { readonly errors: readonly Problem[] }).errors;
};

const room = { volumeM3: 60, air: 'window' };
const spirit = { agent: 'white-spirit', ml: 40 };
const day = { region: 'us', room, uses: [spirit] };

describe('POST /api/air', () => {
  it('answers with what the model expects, and with the limits it stands against', async () => {
    const answer = await answerTo(day);
    const expected = reasoner.air(day);
    expect(answer).toMatchObject({
      region: 'us',
      peakMgM3: expected.peakMgM3,
      worst15MinMgM3: expected.worst15MinMgM3,
      airOutMin: expected.airOutMin,
      mostMl: [{ agent: 'white-spirit', saidMl: 40, ml: expected.mostMl[0]?.ml }],
      fanNeededM3PerHour: expected.fanNeededM3PerHour,
      defer: words.defer('us'),
    });
    expect(answer.series).toEqual(expected.series);
    expect(answer.shares.map(({ of }) => of)).toEqual(expected.shares.map(({ of }) => of));
  });

  it('names each substance of a limit, and gives the source that prints it', async () => {
    const { shares, sources } = await answerTo(day);
    expect(shares.length).toBeGreaterThan(2);
    for (const { name, substance, source } of shares) {
      expect(name).toBe(words.name('substance', substance));
      expect(sources[source]?.id).toBe(source);
    }
    expect(Object.keys(sources).sort()).toEqual([...new Set(shares.map((s) => s.source))].sort());
  });

  it('says each caution in words, with its row beside it, and always that it is an estimate', async () => {
    const { cautions, cautionIds } = await answerTo(day);
    expect(cautions).toHaveLength(cautionIds.length);
    expect(cautionIds).toContain('guessed-air');
    expect(cautions.at(-1)).toMatch(/estimate, not a measurement/);
  });

  it('says null for an airing that never ends and for a fan that is never enough', async () => {
    const answer = await answerTo({
      room: { volumeM3: 60, fanM3PerHour: 0 },
      uses: [{ agent: 'white-spirit', ml: 4000 }],
    });
    expect(answer.airOutMin).toBeNull();
    expect(answer.ranges.airOutMin.high).toBeNull();
    expect(answer.fanNeededM3PerHour).toBeNull();
  });

  it('takes what no table knows as the worst there is, and says so', async () => {
    const unknown = await answerTo({ ...day, uses: [{ agent: 'grey bottle', ml: 40 }] });
    const worst = Math.max(
      ...catalogue.agents.map(
        ({ id }) => reasoner.air({ ...day, uses: [{ agent: id, ml: 40 }] }).combined.longTerm,
      ),
    );
    expect(unknown.combined.longTerm).toBeCloseTo(worst, 6);
    expect(unknown.cautions.join(' ')).toContain('“grey bottle”');
  });

  it('counts three sides as a volume, one zone when asked, and the bottle of the studio', async () => {
    const sides = await answerTo({
      room: { lengthM: 5, widthM: 4, heightM: 3 },
      uses: [{ ...spirit, startMin: 5, minutes: 10, evaporates: 0.5, lidded: true }],
      zones: 1,
      horizonMin: 120,
      shiftHours: 10,
      bottles: [{ agent: 'white-spirit', sdsDate: '2026-03-01', limitMgM3: 10 }],
    });
    expect(sides.room.volumeM3).toBe(60);
    expect(sides).toMatchObject({ zones: 1, horizonMin: 120, endMin: 15 });
    expect(sides.cautionIds).toContain('long-shift');
    expect(sides.shares[0]?.limitMgM3).toBeLessThan(10);
  });

  it('is not kept by anyone', async () => {
    expect((await post(day)).headers['cache-control']).toBe('no-store');
  });

  it('has the shape that it describes, for any day whatever', () => {
    const aLiquid = fc.constantFrom(...agentIds, ...otherIds, 'grey bottle');
    const aUse = fc.record(
      {
        agent: aLiquid,
        ml: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 10_000_000, noNaN: true })),
        startMin: fc.double({ min: 0, max: 1440, noNaN: true }),
        minutes: fc.double({ min: 0.1, max: 1440, noNaN: true }),
        evaporates: fc.double({ min: 0, max: 1, noNaN: true }),
        lidded: fc.boolean(),
      },
      { requiredKeys: ['agent', 'ml'] },
    );
    const aRoom = fc.record(
      {
        volumeM3: fc.double({ min: 1, max: 100_000, noNaN: true }),
        air: fc.constantFrom(...catalogue.air.situations.map(({ id }) => id), 'gale'),
        airChangesPerHour: fc.double({ min: 0, max: 200, noNaN: true }),
        fanM3PerHour: fc.constantFrom(0, 1, 100, 1_000_000),
        mixingFactor: fc.double({ min: 1, max: 10, noNaN: true }),
        temperatureC: fc.double({ min: -20, max: 60, noNaN: true }),
      },
      { requiredKeys: ['volumeM3'] },
    );
    const aDay = fc.record(
      {
        region: fc.constantFrom(...regionIds),
        room: aRoom,
        uses: fc.array(aUse, { maxLength: 4 }),
        zones: fc.constantFrom<1 | 2>(1, 2),
        horizonMin: fc.double({ min: 1, max: 2880, noNaN: true }),
        shiftHours: fc.double({ min: 1, max: 20, noNaN: true }),
      },
      { requiredKeys: ['room', 'uses'] },
    );
    fc.assert(
      fc.property(aDay, (any) => {
        const answer: unknown = JSON.parse(JSON.stringify(airJson(reasoner.air(any), words)));
        const read = AirJson.safeParse(answer);
        expect(read.error?.issues).toBeUndefined();
        for (const id of read.data?.cautionIds ?? []) expect(AIR_CAUTIONS).toContain(id);
      }),
      { numRuns: 200 },
    );
  });
});

describe('a body of /api/air that is wrong', () => {
  const use = (change: object) => ({ ...day, uses: [{ ...spirit, ...change }] });

  it.each([
    ['an unknown region', { ...day, region: 'atlantis' }, '/region', /^one of /],
    ['no room', { uses: [spirit] }, '/room', /a room/],
    ['a room without a size', { ...day, room: { air: 'window' } }, '/room', /volume, or length/],
    ['two sides', { ...day, room: { lengthM: 5, widthM: 4 } }, '/room', /length, width and height/],
    ['a room too small', { ...day, room: { volumeM3: 0.5 } }, '/room/volumeM3', /from 1 to/],
    [
      'a fan that blows back',
      { ...day, room: { ...room, fanM3PerHour: -1 } },
      '/room/fanM3PerHour',
      /0 to/,
    ],
    [
      'a mixing factor below one',
      { ...day, room: { ...room, mixingFactor: 0.5 } },
      '/room/mixingFactor',
      /1 to 10/,
    ],
    ['no uses', { room }, '/uses', /up to 20 uses/],
    ['too many uses', { ...day, uses: Array(21).fill(spirit) }, '/uses', /up to 20 uses/],
    ['neither agent nor substance', { ...day, uses: [{ ml: 4 }] }, '/uses/0', /one of the two/],
    ['both of them', use({ substance: 'acetone' }), '/uses/0', /one of the two/],
    ['no name', use({ agent: ' ' }), '/uses/0/agent', /agent/],
    ['less than nothing', use({ ml: -1 }), '/uses/0/ml', /0 to 10,000,000 ml/],
    ['words for an amount', use({ ml: '40' }), '/uses/0/ml', /a number/],
    ['a beginning next day', use({ startMin: 1441 }), '/uses/0/startMin', /0 to 1,440/],
    ['no time at all', use({ minutes: 0 }), '/uses/0/minutes', /0.1 to 1,440/],
    ['more than all of it', use({ evaporates: 2 }), '/uses/0/evaporates', /0 to 1/],
    ['a lid of words', use({ lidded: 'yes' }), '/uses/0/lidded', /true or false/],
    ['a misspelt key', use({ mls: 4 }), '/uses/0/mls', /openapi/],
    ['three zones', { ...day, zones: 3 }, '/zones', /1 or 2/],
    ['no horizon', { ...day, horizonMin: 0 }, '/horizonMin', /1 to 2,880/],
    ['a shift of a day', { ...day, shiftHours: 24 }, '/shiftHours', /1 to 20/],
    [
      'a bottle without a date',
      { ...day, bottles: [{ agent: 'acetone' }] },
      '/bottles/0/sdsDate',
      /a date/,
    ],
  ])('is answered at its place: %s', async (_, body, path, accepts) => {
    const errors = await errorsOf(body);
    expect(errors.map((error) => error.path)).toEqual([path]);
    expect(errors[0]?.accepts).toMatch(accepts);
  });
});
