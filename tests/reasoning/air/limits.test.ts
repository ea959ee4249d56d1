import { describe, expect, it } from 'vitest';
import { limitsOf } from '../../../server/reasoning/air/limits.js';
import type { AirAnswer, AirInput, Bottle, Substance } from '../../../server/reasoning/index.js';
import { catalogue, reasoner } from '../../support/rules.js';

const of = (substance: string, more: Partial<AirInput> = {}): AirAnswer =>
  reasoner.air({ room: { volumeM3: 60 }, uses: [{ substance, ml: 10 }], ...more });

const rowOf = (id: string) => {
  const row = catalogue.substances.find((each) => each.id === id);
  if (row === undefined) throw new Error(`no substance ${id}`);
  return row;
};
const cautions = (answer: AirAnswer): readonly string[] => answer.cautions.map(({ id }) => id);
const longOf = (answer: AirAnswer) =>
  answer.shares.filter(({ kind, applies }) => kind === 'long-term' && applies);

describe('limits beside an estimate', () => {
  it('that cannot be counted with are left out: ppm of no known molar mass, and nought', () => {
    const region = catalogue.regions.find(({ id }) => id === 'us');
    if (region === undefined) throw new Error('no us');
    const limit = { region: 'us', kind: 'long-term', how: 'read', source: 'ours' } as const;
    const made: Substance = {
      ...rowOf('talc'),
      limits: [
        { ...limit, body: 'in ppm', ppm: 5 },
        { ...limit, body: 'of nought', mgM3: 0 },
        { ...limit, body: 'the same', region: 'uk', mgM3: 4 },
        { ...limit, body: 'the same', region: 'us', mgM3: 4 },
        { ...limit, body: 'another', mgM3: 4 },
      ],
    };
    const found = limitsOf(made, [], region, { excursionFactor: 3, longShift: 1 });
    expect(found.map(({ limit: body, region: where }) => `${body} ${where}`)).toEqual([
      'another us',
      'the same uk',
      'the same us',
      'the same us',
    ]);
  });

  it('are all that the tables print, as they print them, those that apply first and lowest', () => {
    for (const { id, limits } of catalogue.substances) {
      const { shares } = of(id, { region: 'us' });
      if (shares.length === 0) continue;
      const printed = shares
        .filter(({ kind }) => kind !== 'excursion')
        .map(({ limit, region, kind, printed: { mgM3, ppm } }) =>
          JSON.stringify([limit, region, kind, mgM3, ppm]),
        );
      const table = limits.map(({ body, region, kind, mgM3, ppm }) =>
        JSON.stringify([body, region, kind, mgM3, ppm]),
      );
      expect([...printed].sort(), id).toEqual([...table].sort());
      const applied = shares.filter(({ applies }) => applies).map(({ limitMgM3 }) => limitMgM3);
      expect(applied).toEqual([...applied].sort((a, b) => a - b));
      expect(shares.map(({ applies }) => applies)).toEqual(
        shares.map(({ applies }) => applies).sort((a, b) => Number(b) - Number(a)),
      );
    }
  });

  it('count where they hold: in the region, in its union, or everywhere when it has none', () => {
    const regionsOf = (region: string) => [
      ...new Set(longOf(of('white-spirit', { region })).map((share) => share.region)),
    ];
    expect(regionsOf('us')).toEqual(['us']);
    expect(regionsOf('uk')).toEqual(['uk']);
    expect(regionsOf('ie')).toEqual(['eu']);
    expect(regionsOf('nz').length).toBeGreaterThan(3);
    expect(regionsOf('nowhere').length).toBeGreaterThan(3);
  });

  it('name a lower one that is published elsewhere', () => {
    const { cautions: said } = of('white-spirit', { region: 'uk' });
    expect(said.find(({ id }) => id === 'lower-elsewhere')?.values).toEqual({
      what: 'substance.white-spirit',
      limit: 'SCOEL recommendation',
      mgM3: 116,
    });
    expect(cautions(of('white-spirit', { region: 'eu' }))).not.toContain('lower-elsewhere');
  });

  it('in ppm alone are turned into mg/m3 at 25 °C, and say by which molar mass', () => {
    const share = of('gum-turpentine', { region: 'us' }).shares.find(
      ({ limit }) => limit === 'ACGIH TLV',
    );
    expect(share?.printed).toEqual({ ppm: 20 });
    expect(share?.molarMassGMol).toBe(rowOf('gum-turpentine').molarMassGMol);
    // 29 CFR 1910.1000, notes to table Z-1: 25 °C and 760 mmHg; 24.45 L/mol as CCOHS has it (read).
    expect(share?.limitMgM3).toBeCloseTo((20 * 136) / 24.45, 9);
    for (const each of of('white-spirit', { region: 'us' }).shares) {
      expect(each.molarMassGMol).toBeUndefined();
    }
  });

  it('of a quarter of an hour are three times the long-term one where none is printed', () => {
    // ACGIH, TLVs and BEIs, excursions, from memory.
    const { shares } = of('d-limonene', { region: 'de' });
    const short = shares.find(({ kind }) => kind === 'excursion');
    expect(short?.limitMgM3).toBeCloseTo(
      3 * (longOf(of('d-limonene', { region: 'de' }))[0]?.limitMgM3 ?? 0),
      9,
    );
    expect(of('white-spirit', { region: 'us' }).shares.map(({ kind }) => kind)).not.toContain(
      'excursion',
    );
  });

  it('for a day are lowered for a longer shift, and no others', () => {
    const limitsIn = (shiftHours: number, kind: string) =>
      of('acetone', { region: 'uk', shiftHours })
        .shares.filter((share) => share.kind === kind)
        .map(({ limitMgM3 }) => limitMgM3);
    const [usual, long] = [limitsIn(8, 'long-term'), limitsIn(12, 'long-term')];
    // Brief & Scala, Am. Ind. Hyg. Assoc. J. 36:467-469 (1975): half at 12 hours (read, as quoted).
    expect(long).toEqual(usual.map((limit) => limit / 2));
    expect(limitsIn(12, 'short-term')).toEqual(limitsIn(8, 'short-term'));
    expect(limitsIn(4, 'long-term')).toEqual(usual);
    const excursion = (shiftHours: number) =>
      of('d-limonene', { region: 'de', shiftHours }).shares.find(
        ({ kind }) => kind === 'excursion',
      );
    expect(excursion(12)?.limitMgM3).toBeCloseTo(excursion(8)?.limitMgM3 ?? 0, 9);
    expect(cautions(of('acetone', { shiftHours: 12 }))).toContain('long-shift');
    expect(cautions(of('acetone', { shiftHours: 8 }))).not.toContain('long-shift');
  });

  it('that nobody published count as the lowest of any agent, and that is said', () => {
    const answer = of('ethyl-lactate', { region: 'us' });
    expect(answer.shares).toEqual([]);
    expect(cautions(answer)).toContain('no-limit');
    const perMg = answer.combined.longTerm / answer.average8hMgM3;
    // Vegetable oil mist, 10 mg/m3: NIOSH REL, as rules/substances.yaml has it.
    expect(1 / perMg).toBeCloseTo(10, 9);
  });

  it('of the studio’s own bottle stand for those of the table, and are flagged when milder', () => {
    const spirit = (bottles: readonly Bottle[]) =>
      reasoner.air({
        region: 'us',
        room: { volumeM3: 60 },
        uses: [{ agent: 'white-spirit', ml: 10 }],
        bottles,
      });
    const sds = { agent: 'white-spirit', sdsDate: '2026-02-14' };
    const own = spirit([{ ...sds, limitMgM3: 3000 }]);
    expect(longOf(own)).toMatchObject([{ limit: '2026-02-14', limitMgM3: 3000, applies: true }]);
    expect(cautions(own)).toContain('bottle-limit');
    const strict = spirit([{ ...sds, name: 'the tall can', limitMgM3: 50 }]);
    expect(longOf(strict)).toMatchObject([{ limit: 'the tall can', limitMgM3: 50 }]);
    expect(cautions(strict)).not.toContain('bottle-limit');
    // One of two bottles says nothing: the table's limits count beside the other's.
    const both = spirit([{ ...sds, limitMgM3: 3000 }, sds]);
    expect(longOf(both).length).toBeGreaterThan(1);
    expect(longOf(both)[0]?.limitMgM3).toBe(350);
    // Where the region has none of its own, one bottle does not silence the limits of other places.
    const elsewhere = reasoner.air({
      region: 'nz',
      room: { volumeM3: 60 },
      uses: [{ agent: 'white-spirit', ml: 10 }],
      bottles: [{ ...sds, limitMgM3: 3000 }, sds],
    });
    expect(longOf(elsewhere)[0]?.limitMgM3).toBe(116);
    expect(
      longOf(spirit([{ agent: 'acetone', sdsDate: '2026-02-14', limitMgM3: 1 }]))[0]?.limitMgM3,
    ).toBe(350);
  });
});
