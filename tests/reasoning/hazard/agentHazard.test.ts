import { describe, expect, it } from 'vitest';
import type { Substance } from '../../../server/reasoning/index.js';
import {
  type HazardFacts,
  agentHazard,
  hazardFacts,
  vapourRatio,
} from '../../../server/reasoning/hazard/agentHazard.js';
import { catalogue } from '../../support/rules.js';

const { bandRules } = catalogue;

const NOTHING: HazardFacts = {
  flashPointC: undefined,
  boilingPointC: undefined,
  vapourPressurePa: undefined,
  molarMassGMol: undefined,
  longTermMgM3: [],
  longTermPpm: [],
  hazardCodes: [],
  hasOwnFlashPoint: false,
};

const hazard = (facts: Partial<HazardFacts>, rules = bandRules) =>
  agentHazard({ ...NOTHING, ...facts }, rules);

const spirit: Substance = {
  id: 'some-spirit',
  name: 'Some spirit',
  kind: 'solvent',
  how: 'common practice',
  sources: [],
  molarMassGMol: 144,
  flashPointC: 39,
  boilingPointC: 150,
  vapourPressurePa: 267,
  limits: [
    { region: 'us', body: 'one', kind: 'long-term', mgM3: 525, ppm: 100, how: 'read', source: 's' },
    { region: 'uk', body: 'two', kind: 'long-term', mgM3: 350, how: 'read', source: 's' },
    { region: 'de', body: 'three', kind: 'long-term', ppm: 50, how: 'read', source: 's' },
    { region: 'us', body: 'four', kind: 'ceiling', mgM3: 1, ppm: 1, how: 'read', source: 's' },
  ],
  hazardCodes: ['H226', 'H336'],
  precautionaryCodes: [],
  pictograms: [],
};

describe('hazard of an agent', () => {
  it('is nothing for what gives off nothing, does not burn and harms nobody', () => {
    expect(hazard({})).toEqual({
      vapourRatio: undefined,
      vapourRank: 0,
      fireCategory: null,
      fireRank: 0,
      healthRank: 0,
      band: 0,
      hazard: 0,
    });
  });

  it('reads only long-term limits, each in its own unit', () => {
    const facts = hazardFacts(spirit);
    expect(facts.longTermMgM3).toEqual([525, 350]);
    expect(facts.longTermPpm).toEqual([100, 50]);
  });

  it("lets a bottle's own facts stand in place of the table's, and keeps the others", () => {
    const facts = hazardFacts(spirit, {
      agent: 'white-spirit',
      sdsDate: '2026-01-01',
      flashPointC: 62,
      limitMgM3: 200,
      hazardCodes: ['H304'],
    });
    expect(facts).toEqual({
      flashPointC: 62,
      boilingPointC: 150,
      vapourPressurePa: 267,
      molarMassGMol: 144,
      longTermMgM3: [200],
      longTermPpm: [],
      hazardCodes: ['H304'],
      hasOwnFlashPoint: false,
    });
  });

  it("lets a bottle's own flash point say how it burns, unless it has codes of its own", () => {
    const own = { agent: 'white-spirit', sdsDate: '2026-01-01', flashPointC: 62 };
    expect(agentHazard(hazardFacts(spirit), bandRules).fireRank).toBe(3);
    expect(agentHazard(hazardFacts(spirit, own), bandRules).fireRank).toBe(2);
    const coded = { ...own, hazardCodes: ['H226'] };
    expect(agentHazard(hazardFacts(spirit, coded), bandRules).fireRank).toBe(3);
  });

  it('takes the worst ratio of saturated vapour to a limit', () => {
    const ppm = (267 / 101_325) * 1e6;
    const mgM3 = ((267 * 144) / (8.314462618 * 293.15)) * 1e3;
    expect(vapourRatio(hazardFacts(spirit))).toBeCloseTo(Math.max(ppm / 50, mgM3 / 350), 6);
    expect(vapourRatio({ ...NOTHING, vapourPressurePa: 101.325, longTermPpm: [10] })).toBeCloseTo(
      100,
    );
  });

  it('knows no ratio without a limit, nor from mg/m3 alone without a molar mass', () => {
    expect(vapourRatio({ ...NOTHING, vapourPressurePa: 500 })).toBeUndefined();
    expect(vapourRatio({ ...NOTHING, vapourPressurePa: 500, longTermMgM3: [10] })).toBeUndefined();
    expect(vapourRatio({ ...NOTHING, longTermPpm: [10] })).toBe(0);
  });

  it('counts a vapour pressure from 10 Pa on, and the worst when no limit is known', () => {
    expect(hazard({ vapourPressurePa: 9.9 }).vapourRank).toBe(0);
    expect(hazard({ vapourPressurePa: 10 }).vapourRank).toBe(bandRules.noLimitRank);
  });

  it.each([
    [0.99, 1],
    [1, 2],
    [99.9, 2],
    [100, 3],
    [999, 3],
    [1000, 4],
    [100_000, 4],
  ])('ranks a vapour ratio of %s as %s', (ratio, rank) => {
    const vapourPressurePa = 101.325;
    expect(hazard({ vapourPressurePa, longTermPpm: [1000 / ratio] }).vapourRank).toBe(rank);
  });

  it.each([
    [22.9, 4],
    [23, 3],
    [60, 3],
    [60.1, 2],
    [93, 2],
    [93.1, 0],
  ])('ranks a flash point of %s C as %s', (flashPointC, rank) => {
    expect(hazard({ flashPointC, boilingPointC: 100 }).fireRank).toBe(rank);
  });

  it('believes a code that says it burns more than the flash point does', () => {
    expect(hazard({ flashPointC: 150, hazardCodes: ['H225'] })).toMatchObject({
      fireCategory: null,
      fireRank: 4,
      healthRank: 0,
    });
    expect(hazard({ flashPointC: 10, boilingPointC: 80, hazardCodes: ['H227'] }).fireRank).toBe(4);
  });

  it('takes the worst of the health codes, and the worst of all for one that no table ranks', () => {
    expect(hazard({ hazardCodes: ['H315', 'H350', 'H319'] }).healthRank).toBe(5);
    expect(hazard({ hazardCodes: ['H999'] })).toMatchObject({ healthRank: 5, band: 5 });
  });

  it('takes the worst of all for a fire category that no table ranks', () => {
    expect(hazard({ flashPointC: 30 }, { ...bandRules, fire: {} }).fireRank).toBe(5);
  });

  it('has the worst of the three ranks as its band and their sum as its hazard', () => {
    expect(agentHazard(hazardFacts(spirit), bandRules)).toMatchObject({
      vapourRank: 2,
      fireRank: 3,
      healthRank: 3,
      band: 3,
      hazard: 8,
    });
  });
});
