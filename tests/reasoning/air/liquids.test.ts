import { describe, expect, it } from 'vitest';
import type { AirAnswer, AirUse, Room } from '../../../server/reasoning/index.js';
import { catalogue, reasoner, words } from '../../support/rules.js';

const ROOM: Room = { volumeM3: 60, air: 'exhaust-fan' };
const day = (uses: readonly AirUse[], room: Room = ROOM): AirAnswer =>
  reasoner.air({ region: 'us', room, uses });
const saidOf = (answer: AirAnswer): readonly string[] =>
  answer.cautions.map((said) => words.airCaution(said));
const idsOf = (answer: AirAnswer): readonly string[] => answer.cautions.map(({ id }) => id);

describe('a liquid in the air', () => {
  it('that no table knows counts as the worst agent there is, and is named as it was typed', () => {
    const answer = day([{ agent: 'grey bottle', ml: 40 }]);
    expect(answer.mostMl[0]?.agent).toBe('grey bottle');
    expect(saidOf(answer).join()).toContain('No table knows “grey bottle”');
    for (const { id } of catalogue.agents) {
      const known = day([{ agent: id, ml: 40, minutes: 15 }]);
      const unknown = day([{ substance: 'grey bottle', ml: 40, minutes: 15 }]);
      expect(unknown.combined.longTerm, id).toBeGreaterThanOrEqual(known.combined.longTerm - 1e-9);
    }
  });

  it('counts as unknown when nobody says what it is', () => {
    expect(idsOf(day([{ ml: 5 }]))).toContain('unknown');
  });

  it('may be named as an agent, as its substance, or as a chemical that is no agent', () => {
    const [agent] = day([{ agent: 'ethanol', ml: 10 }]).mostMl;
    const [substance] = day([{ substance: 'methylated-spirit', ml: 10 }]).mostMl;
    expect(substance?.ml).toBeCloseTo(agent?.ml ?? 0, 9);
    expect(substance?.agent).toBeUndefined();
    expect(idsOf(day([{ agent: 'household-ammonia', ml: 10 }]))).not.toContain('unknown');
    const both: readonly AirUse[] = [
      { agent: 'ethanol', ml: 10 },
      { substance: 'methylated-spirit', ml: 10 },
    ];
    expect(day(both).mostMl).toMatchObject([{ agent: 'ethanol', saidMl: 20 }]);
    expect(day([...both].reverse()).mostMl).toMatchObject([{ agent: 'ethanol', saidMl: 20 }]);
  });

  it('that gives off next to no vapour is not counted, and that is said', () => {
    const answer = day([{ agent: 'veg-oil', ml: 500 }]);
    expect(answer).toMatchObject({ peakMgM3: 0, mostMl: [], airOutMin: 0 });
    expect(saidOf(answer)).toContainEqual(
      expect.stringMatching(/^Vegetable oil gives off next to no/),
    );
  });

  it('on which too little is published is not counted, which is never called none', () => {
    const answer = day([{ substance: 'talc', ml: 5 }]);
    expect(answer.mostMl).toEqual([]);
    expect(saidOf(answer).join()).toContain('Do not take that as none.');
  });

  it('of no known vapour pressure goes into the air at once, with no end to it', () => {
    const ammonia = (ml: number): AirAnswer => day([{ substance: 'household-ammonia', ml }]);
    const [little, much] = [ammonia(10), ammonia(1e7)];
    expect(much.peakMgM3 / little.peakMgM3).toBeCloseTo(1e6, 0);
    expect(idsOf(much)).not.toContain('saturated');
  });

  it('never fills the air beyond what the air can hold, however much there is', () => {
    const flood = day([{ agent: 'white-spirit', ml: 10_000_000 }]);
    // 267 Pa and 144 g/mol at 20 °C, by the ideal gas law: rules/substances.yaml.
    expect(flood.peakMgM3).toBeCloseTo(((267 * 144) / (8.314462618 * 293.15)) * 1000, 6);
    expect(flood.shareOfLel).toBeLessThan(1);
    expect(idsOf(flood)).toContain('saturated');
    for (const { nearMgM3 } of flood.series) expect(nearMgM3).toBeLessThanOrEqual(flood.peakMgM3);
  });

  it('gives off more vapour in a warmer room', () => {
    const at = (temperatureC: number): AirAnswer =>
      day([{ agent: 'white-spirit', ml: 40 }], { ...ROOM, temperatureC });
    expect(at(30).peakMgM3).toBeGreaterThan(at(20).peakMgM3);
    expect(at(5).peakMgM3).toBeLessThan(at(20).peakMgM3);
    // Limonene boils at 170 °C, white spirit at 149 °C; a liquid that boils fills the air and no more.
    expect(at(60).peakMgM3).toBeGreaterThan(at(30).peakMgM3);
  });

  it('follows its bottle where the bottle says how it evaporates', () => {
    const peak = (bottle: object): number =>
      reasoner.air({
        region: 'us',
        room: ROOM,
        uses: [{ agent: 'white-spirit', ml: 40 }],
        bottles: [{ agent: 'white-spirit', sdsDate: '2026-02-14', ...bottle }],
      }).peakMgM3;
    expect(peak({ vapourPressurePa: 2000 })).toBeGreaterThan(peak({}));
    expect(peak({ vapourPressurePa: 5 })).toBe(0);
    // It boils: there is no second point to go by, and none is needed.
    expect(peak({ vapourPressurePa: 101_325 })).toBeGreaterThan(peak({ vapourPressurePa: 2000 }));
    expect(peak({ boilingPointC: 15 })).toBe(peak({}));
  });

  it('of many substances says that it counts as one', () => {
    expect(saidOf(day([{ agent: 'white-spirit', ml: 5 }])).join()).toContain('is a mixture');
    expect(idsOf(day([{ agent: 'acetone', ml: 5 }]))).not.toContain('mixture');
  });
});

describe('what must be said of a room', () => {
  it('is that it is an estimate, always and last', () => {
    for (const uses of [[], [{ agent: 'acetone', ml: 5 }]]) {
      expect(idsOf(day(uses)).at(-1)).toBe('estimate');
    }
  });

  it('is that its air was guessed, or not even said; nothing of the kind when it was measured', () => {
    const uses: readonly AirUse[] = [{ agent: 'acetone', ml: 5 }];
    expect(idsOf(day(uses))).toContain('guessed-air');
    for (const air of [undefined, 'a cowl', 'not-in-this-room']) {
      const answer = day(uses, { volumeM3: 60, air });
      expect(idsOf(answer)).toContain('air-not-said');
      expect(answer.room.situation).toBe('room-air');
    }
    const measured = day(uses, { volumeM3: 60, airChangesPerHour: 4 });
    expect(measured.room).toMatchObject({ airM3PerHour: 240, airChangesPerHour: 4 });
    expect(idsOf(measured).filter((id) => id.includes('air'))).toEqual([]);
  });

  it('takes the smaller of two measured flows, three sides before a volume, and no mixing below 1', () => {
    const both = { airChangesPerHour: 4, fanM3PerHour: 100, mixingFactor: 0.2 };
    const { room } = day([], { ...both, lengthM: 5, widthM: 4, heightM: 3, volumeM3: 999 });
    expect(room).toMatchObject({ volumeM3: 60, airM3PerHour: 100, mixingFactor: 1 });
  });

  it('is that nobody said how large it is: then it is no larger than the air at the bench', () => {
    const answer = day([{ agent: 'acetone', ml: 5 }], { air: 'window' });
    expect(idsOf(answer)).toContain('no-size');
    expect(answer.room.volumeM3).toBeCloseTo((2 / 3) * Math.PI, 9);
    expect(answer.peakMgM3).toBeGreaterThan(day([{ agent: 'acetone', ml: 5 }]).peakMgM3);
  });

  it('is that a limit is passed, or would be with the least air that was guessed', () => {
    expect(idsOf(day([{ agent: 'acetone', ml: 900 }]))).toContain('over-limit');
    const most = day([{ agent: 'white-spirit', ml: 1 }]).mostMl[0];
    const ml = ((most?.ml ?? 0) + (most?.carefulMl ?? 0)) / 2;
    const near = idsOf(day([{ agent: 'white-spirit', ml }]));
    expect(near).toContain('near-limit');
    expect(near).not.toContain('over-limit');
    expect(idsOf(day([{ agent: 'white-spirit', ml: 1 }])).join()).not.toContain('limit,');
  });

  it('is that it might catch fire', () => {
    expect(idsOf(day([{ agent: 'acetone', ml: 20_000 }]))).toEqual(
      expect.arrayContaining(['over-limit', 'over-lel', 'no-fan']),
    );
  });

  it('is that it does not clear, or that something begins after the end of the curve', () => {
    expect(idsOf(day([{ agent: 'acetone', ml: 5 }], { volumeM3: 60, fanM3PerHour: 0 }))).toContain(
      'never-clears',
    );
    const late = reasoner.air({
      room: ROOM,
      uses: [{ agent: 'acetone', ml: 5, startMin: 90 }],
      horizonMin: 60,
    });
    expect(idsOf(late)).toContain('starts-late');
    expect(late.peakMgM3).toBeGreaterThan(0);
    expect(late.peakAtMin).toBeGreaterThanOrEqual(90);
  });
});
