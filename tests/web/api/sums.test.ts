import supertest from 'supertest';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { sumAnswer } from '../../../server/web/api/sumsAnswer.js';
import { makeSums } from '../../../server/web/forms/sums.js';
import { anApp } from '../../support/anApp.js';
import { catalogue } from '../../support/rules.js';

let app: Awaited<ReturnType<typeof anApp>>;
beforeAll(async () => {
  app = await anApp();
});
afterAll(() => app.close());

const sums = makeSums(catalogue);
const post = (name: string, body: object) =>
  supertest(app.server).post(`/api/calc/${name}`).send(body);

/** The answer of a sum, which must be as /api/openapi.json describes it. */
const answer = async (name: string, body: object): Promise<Record<string, unknown>> => {
  const sum = sums.find(({ id }) => id === name);
  const found: unknown = (await post(name, body).expect(200)).body;
  return sum === undefined ? {} : sumAnswer(sum).parse(found);
};

interface Wrong {
  readonly errors: readonly { path: string; got: string; accepts: string }[];
}
const errors = async (name: string, body: object): Promise<Wrong['errors']> =>
  ((await post(name, body).expect(422)).body as Wrong).errors;

const about = (value: number): unknown => expect.closeTo(value, 1);

const UNKNOWN_LEL = {
  liquidMlPerHour: 600,
  densityKgL: 0.78,
  molarMassGMol: 140,
  limitMgM3: 116,
};
const SPIRIT = { ...UNKNOWN_LEL, lelPercent: 0.6 };

describe('dilution', () => {
  it('gives the air for health first, with the steps that lead to it, in both units', async () => {
    expect(
      await answer('dilution', {
        mixingFactor: 5,
        temperatureF: 70,
        parts: [
          {
            liquidUsPintsPerHour: 1.5,
            densityKgL: 1.32,
            molarMassGMol: 133.4,
            limitPpm: 350,
          },
        ],
      }),
    ).toMatchObject({
      neededCfm: about(1425.9),
      neededM3PerHour: about(2422.6),
      wellMixedCfm: about(285.2),
      usFormCfm: about(1424.2),
      molarVolumeLMol: about(24.1),
      parts: [{ vapourM3PerHour: about(0.2) }],
    });
  });

  it('adds up the air of several liquids, and takes the larger of health and fire', async () => {
    const one = await answer('dilution', { mixingFactor: 3, parts: [SPIRIT] });
    const two = await answer('dilution', { mixingFactor: 3, parts: [SPIRIT, SPIRIT] });
    expect(two['neededM3PerHour']).toBeCloseTo(2 * Number(one['neededM3PerHour']), 6);
    expect(Number(one['fireM3PerHour'])).toBeLessThan(Number(one['healthM3PerHour']) / 10);
    expect(one['neededM3PerHour']).toBe(one['healthM3PerHour']);
  });

  it('takes the fire where that needs more, as in the hot air of a dryer', async () => {
    const gentle = { ...SPIRIT, limitMgM3: 1_000_000 };
    const body = { mixingFactor: 1, shareOfLelPercent: 25, heatedC: 160, parts: [gentle] };
    const found = await answer('dilution', body);
    expect(found['neededM3PerHour']).toBe(found['fireHotM3PerHour']);
    expect(Number(found['fireHotM3PerHour'])).toBeGreaterThan(Number(found['fireM3PerHour']));
  });

  it('says nothing of fire where one of the liquids has no limit for it', async () => {
    const found = await answer('dilution', { mixingFactor: 3, parts: [SPIRIT, UNKNOWN_LEL] });
    expect(found).not.toHaveProperty('fireM3PerHour');
  });

  it('tells what the air that is there comes to, and of none that it never settles', async () => {
    const body = { mixingFactor: 3, parts: [SPIRIT] };
    const aired = await answer('dilution', { ...body, flowM3PerHour: 1000 });
    expect(aired).toMatchObject({
      sumOfFractions: about(12.1),
      parts: [{ levelMgM3: about(1404) }],
    });
    expect(await answer('dilution', { ...body, flowM3PerHour: 0 })).toMatchObject({
      sumOfFractions: null,
      parts: [{ levelPpm: null, levelMgM3: null }],
    });
  });
});

describe('purge', () => {
  const air = { volumeFt3: 100_000, airCfm: 6000 };
  const room = { ...air, mixingFactor: 3, startPpm: 0, targetPpm: 200 };

  it('says when a room has filled to a level', async () => {
    expect(await answer('purge', { ...room, vapourCfm: 1.2 })).toMatchObject({
      reachMinutes: about(20.3),
      steadyPpm: about(600),
    });
  });

  it('answers null for never', async () => {
    const found = await answer('purge', { ...room, vapourCfm: 1.2, targetPpm: 700 });
    expect(found).toMatchObject({ reachMinutes: null, airChanges: null });
    const still = { ...room, airCfm: 0, vapourCfm: 1.2, targetPpm: 0.001 };
    expect(await answer('purge', still)).toMatchObject({
      steadyPpm: null,
      halfLifeMinutes: null,
      reachMinutes: about(0),
    });
  });

  it('takes a mixing efficiency for the mixing factor it stands for', async () => {
    const clearing = { ...air, startPpm: 100, targetPpm: 25 };
    const byFactor = await answer('purge', { ...clearing, mixingFactor: 5 });
    expect(await answer('purge', { ...clearing, mixingEfficiency: 0.2 })).toEqual(byFactor);
  });

  it('counts grams an hour with mg/m3, and tells the level at a time', async () => {
    expect(
      await answer('purge', {
        volumeM3: 50,
        airChangesPerHour: 2,
        mixingFactor: 1,
        startMgM3: 0,
        targetMgM3: 100,
        vapourGPerHour: 20,
        timeHours: 1,
      }),
    ).toMatchObject({
      steadyMgM3: about(200),
      reachMinutes: about(20.8),
      levelThenMgM3: about(172.9),
      meanMgM3: about(113.5),
      leftThenPercent: about(13.5),
    });
  });

  it('refuses units that do not go together', async () => {
    const asked = { ...air, mixingFactor: 3, startPpm: 0, targetMgM3: 5, vapourGPerHour: 1 };
    const paths = (await errors('purge', asked)).map(({ path }) => path);
    expect(paths).toEqual(['/targetMgM3', '/vapourGPerHour']);
  });
});

describe('mixture', () => {
  const parts = [
    { levelPpm: 500, limitPpm: 1000 },
    { levelPpm: 45, limitPpm: 200 },
    { levelPpm: 40, limitPpm: 200 },
  ];

  it('adds up what each vapour uses of its limit, and counts a long shift in', async () => {
    expect(await answer('mixture', { parts, shiftHours: 12 })).toMatchObject({
      sumOfFractions: 0.925,
      totalPpm: 585,
      mixtureLimitPpm: about(632.4),
      shiftFactor: 0.5,
      sumForShift: 1.85,
    });
    expect(await answer('mixture', { parts, shiftHours: 24 })).toMatchObject({ sumForShift: null });
  });

  it('gives the vapour over a liquid, and averages over a day', async () => {
    expect(
      await answer('mixture', {
        liquids: [
          { moleFraction: 0.5, vapourPressureMmHg: 46.4, limitPpm: 400 },
          { moleFraction: 0.5, vapourPressureMmHg: 28.2, limitPpm: 20 },
        ],
        periods: [
          { levelMgM3: 150, timeMinutes: 5 },
          { levelMgM3: 10, timeHours: 4 },
        ],
        shiftHours: 8,
      }),
    ).toMatchObject({
      liquidLimitPpm: about(48.9),
      liquids: [{ atLimitPpm: about(30.4) }, { atLimitPpm: about(18.5) }],
      average8hMgM3: about(6.6),
      worst15MinMgM3: about(56.7),
    });
  });

  it('says so where a liquid gives off no vapour', async () => {
    const oil = { moleFraction: 1, vapourPressurePa: 0, limitPpm: 10 };
    expect(await answer('mixture', { liquids: [oil] })).toMatchObject({
      liquidLimitPpm: null,
      liquids: [{ atLimitPpm: null }],
    });
  });

  it('refuses levels in two units, and a body with nothing in it', async () => {
    const mixed = [...parts, { levelMgM3: 1, limitMgM3: 2 }];
    expect((await errors('mixture', { parts: mixed })).map(({ path }) => path)).toEqual([
      '/parts/3/levelMgM3',
      '/parts/3/limitMgM3',
    ]);
    expect(await errors('mixture', {})).toEqual([
      { path: '/parts', got: 'nothing', accepts: expect.stringContaining('one row') as string },
    ]);
  });
});

describe('convert', () => {
  it('gives a level in both units, and how much more the air could hold', async () => {
    const found = await answer('convert', {
      levelPpm: 100,
      molarMassGMol: 92.1,
      vapourPressurePa: 3800,
    });
    expect(found).toMatchObject({
      levelPpm: 100,
      levelMgM3: about(376.7),
      molarVolumeLMol: 24.45,
      saturatedTimes: about(375),
    });
    const back = await answer('convert', { levelMgM3: found['levelMgM3'], molarMassGMol: 92.1 });
    expect(back['levelPpm']).toBeCloseTo(100, 9);
  });

  it('takes another temperature or pressure by the gas law', async () => {
    const asked = { molarMassGMol: 92.1 };
    expect(await answer('convert', { ...asked, temperatureC: 20 })).toMatchObject({
      molarVolumeLMol: about(24.1),
    });
    expect(await answer('convert', { ...asked, pressureMmHg: 700 })).toMatchObject({
      molarVolumeLMol: about(26.6),
    });
  });
});

describe('hydrocarbon-limit', () => {
  it('gives the limit of a make-up, raw and rounded, and names the column', async () => {
    expect(
      await answer('hydrocarbon-limit', {
        parts: [
          { group: 'us-alkanes-c7-c8', sharePercent: 45 },
          { group: 'us-alkanes-c9-c15', sharePercent: 40 },
          { group: 'us-aromatics-c7-c8', sharePercent: 9 },
          { limitMgM3: 75, sharePercent: 6 },
        ],
      }),
    ).toMatchObject({ rawMgM3: about(531), roundedMgM3: 550, column: 'us' });
  });

  it('leaves a limit unrounded where the rule of its column is not known', async () => {
    const uk = { parts: [{ group: 'uk-aromatics', sharePercent: 100 }] };
    expect(await answer('hydrocarbon-limit', uk)).not.toHaveProperty('roundedMgM3');
  });

  it('refuses groups of two columns, shares that miss 100, and a part that says both or neither', async () => {
    const found = await errors('hydrocarbon-limit', {
      parts: [
        { group: 'us-alkanes-c7-c8', sharePercent: 45 },
        { group: 'uk-aromatics', sharePercent: 40 },
        { sharePercent: 5 },
        { group: 'us-aromatics-c7-c8', limitMgM3: 5, sharePercent: 5 },
      ],
    });
    expect(found.map(({ path }) => path)).toEqual([
      '/parts/2/group',
      '/parts/3/group',
      '/parts/1/group',
      '/parts/0/sharePercent',
    ]);
  });
});

describe('flammable-limit', () => {
  const parts = [
    { levelPercent: 0.8, lflPercent: 1.1 },
    { levelPpm: 20_000, lflPercent: 5 },
  ];

  it('says how much of the limit is reached, in per cent and ppm alike', async () => {
    expect(await answer('flammable-limit', { parts })).toMatchObject({
      shareOfLflPercent: about(112.7),
      mixtureLflPercent: about(2.5),
      totalPercent: about(2.8),
    });
  });

  it('counts more of it in warm air', async () => {
    const [cold, warm] = [
      await answer('flammable-limit', { parts }),
      await answer('flammable-limit', { parts, temperatureC: 60 }),
    ];
    expect(Number(warm['shareOfLflPercent'])).toBeGreaterThan(Number(cold['shareOfLflPercent']));
    expect(warm).toMatchObject({ parts: [{ lflThenPercent: about(1.1) }, {}] });
  });
});

describe('evaporation', () => {
  const tank = {
    molarMassGMol: 92,
    vapourPressurePa: 3759.7,
    temperatureC: 25,
    areaM2: 1.82415,
  };

  it('lays the published forms side by side and takes the highest', async () => {
    const found = await answer('evaporation', { ...tank, airSpeedFtPerMin: 20, lengthFt: 1 });
    expect(found['byTransferGPerHour']).toBeCloseTo(4415, 0);
    const { byTransferGPerHour, byAirGPerHour, outdoorsGPerHour } = found;
    expect(found['highestGPerHour']).toBe(
      Math.max(...[byTransferGPerHour, byAirGPerHour, outdoorsGPerHour].map(Number)),
    );
  });

  it('puts all of a spill in the air, up to what the air can hold', async () => {
    const spill = { ...tank, densityKgL: 0.87, volumeM3: 50 };
    expect(await answer('evaporation', { ...spill, liquidMl: 10 })).toMatchObject({
      spillMgM3: about(174),
    });
    const flood = await answer('evaporation', { ...spill, liquidMl: 20_000 });
    expect(flood['spillPpm']).toBeCloseTo((3759.7 / 101_325) * 1e6, 3);
  });

  it('asks for what goes together', async () => {
    const found = await errors('evaporation', { ...tank, airSpeedMPerSec: 0.1, liquidMl: 5 });
    expect(found.map(({ path }) => path)).toEqual(['/lengthM', '/densityKgL', '/volumeM3']);
  });
});

describe('air-changes', () => {
  it('takes the lowest of the ways that are known, and tells how long it clears', async () => {
    expect(
      await answer('air-changes', {
        airChangesPerHour: 6,
        volumeM3: 50,
        flowM3PerHour: 400,
        floorRateCfmPerFt2: 0.7,
        heightFt: 10,
        halfLifeMinutes: 5,
      }),
    ).toMatchObject({
      countedPerHour: about(4.2),
      byFlowPerHour: about(8),
      byHalfLifePerHour: about(8.3),
      halfLifeFlowM3PerHour: about(415.9),
      remove99Minutes: about(65.8),
    });
  });

  it('takes longer where the air mixes badly, and for ever where none moves', async () => {
    const slow = await answer('air-changes', { airChangesPerHour: 6, mixingFactor: 3 });
    expect(slow['remove99Minutes']).toBeCloseTo(138.2, 1);
    const still = await answer('air-changes', { airChangesPerHour: 0 });
    expect(still).toMatchObject({ remove90Minutes: null });
  });

  it('gives the air for each person without a room', async () => {
    const found = await answer('air-changes', {
      personRateCfm: 10,
      floorRateCfmPerFt2: 0.18,
      crowdPer1000Ft2: 20,
    });
    expect(found).toMatchObject({ perPersonCfm: about(19), perPersonLPerSec: about(9) });
    expect(found).not.toHaveProperty('countedPerHour');
  });

  it('says what would do where nothing can be worked out', async () => {
    expect(await errors('air-changes', { volumeM3: 50 })).toEqual([
      {
        path: '/airChangesPerHour',
        got: 'nothing',
        accepts: expect.stringContaining('flow and volume') as string,
      },
    ]);
  });
});

describe('every sum', () => {
  it('rests on sources that are known, and says that it is an estimate', async () => {
    const known = new Set(catalogue.sources.map(({ id }) => id));
    for (const sum of sums) {
      expect(
        sum.sources.filter((id) => !known.has(id)),
        sum.id,
      ).toEqual([]);
    }
    const { says } = await answer('convert', { molarMassGMol: 92 });
    expect(says).toMatch(/estimate/);
  });

  it('says which field is missing, wrong or given twice, and what would do', async () => {
    const twice = { levelPpm: 1, levelMgM3: 2, molarMassGMol: 92 };
    expect(await errors('convert', twice)).toEqual([
      { path: '/levelMgM3', got: '2 units', accepts: 'this in one unit only' },
    ]);
    expect(await errors('convert', {})).toEqual([
      { path: '/molarMassGMol', got: 'nothing', accepts: 'a number of g/mol, 2 to 1,000' },
    ]);
    const paths = (await errors('dilution', { mixingFactor: 'much', parts: [] })).map(
      ({ path }) => path,
    );
    expect(paths).toEqual(['/mixingFactor', '/parts']);
  });

  it('is described with its formula in words and signs, and with its sources', async () => {
    const found: unknown = (await supertest(app.server).get('/api/openapi.json').expect(200)).body;
    const { paths } = found as { paths: Record<string, { post: { description: string } }> };
    for (const { id } of sums) {
      const described = paths[`/api/calc/${id}`]?.post.description ?? '';
      expect(described, id).toMatch(/ = .*÷|÷.* = /s);
      expect(described, id).toMatch(/\((read in the source|from memory)\)/);
    }
  });
});
