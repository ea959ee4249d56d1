import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { AirAnswer, AirInput, AirUse, Room } from '../../../server/reasoning/index.js';
import { agentIds, runs } from '../../support/arbitraries.js';
import { catalogue, reasoner } from '../../support/rules.js';

const { air } = reasoner;
const VOLATILE = agentIds.filter((id) => {
  const substance = catalogue.agents.find((row) => row.id === id)?.substance;
  const row = catalogue.substances.find((each) => each.id === substance);
  return (row?.vapourPressurePa ?? 0) >= catalogue.bandRules.nonVolatileBelowPa;
});

const ROOM: Room = { volumeM3: 60, air: 'exhaust-fan' };
const SPIRIT: AirUse = { agent: 'white-spirit', ml: 40 };
const inRoom = (room: Room, uses: readonly AirUse[] = [SPIRIT]): AirAnswer =>
  air({ region: 'us', room, uses });

const aUse: fc.Arbitrary<AirUse> = fc.record({
  agent: fc.constantFrom(...VOLATILE),
  ml: fc.integer({ min: 1, max: 400 }),
  startMin: fc.integer({ min: 0, max: 200 }),
  minutes: fc.option(fc.integer({ min: 1, max: 90 }), { nil: undefined }),
  lidded: fc.boolean(),
});
const aRoom: fc.Arbitrary<Room> = fc.record({
  volumeM3: fc.integer({ min: 8, max: 400 }),
  air: fc.constantFrom('room-air', 'window', 'cross-draught', 'exhaust-fan', 'bench-extraction'),
  mixingFactor: fc.option(fc.integer({ min: 1, max: 8 }), { nil: undefined }),
});
const aDay: fc.Arbitrary<AirInput> = fc.record({
  region: fc.constantFrom('us', 'uk', 'de', 'other'),
  room: aRoom,
  uses: fc.array(aUse, { minLength: 1, maxLength: 4 }),
  zones: fc.constantFrom(1 as const, 2 as const),
});

const NEVER = 1e12;
/** What must not get less when something gets worse. */
const worries = (answer: AirAnswer): readonly number[] => [
  answer.peakMgM3,
  answer.worst15MinMgM3,
  answer.average8hMgM3,
  answer.combinedShare,
  answer.shareOfLel,
  answer.endMin + (answer.airOutMin ?? NEVER),
  answer.fanNeededM3PerHour ?? NEVER,
];
const noLess = (worse: AirAnswer, better: AirAnswer): void => {
  const than = worries(better);
  worries(worse).forEach((value, index) => {
    const least = than[index] ?? 0;
    expect(value - least).toBeGreaterThanOrEqual(-1e-7 * Math.max(1, least));
  });
};
const changed = (day: AirInput, use: (each: AirUse) => AirUse): AirInput => ({
  ...day,
  uses: day.uses.map(use),
});

describe('an estimate of the air', () => {
  it('never gets better when there is more liquid', () => {
    fc.assert(
      fc.property(aDay, fc.integer({ min: 11, max: 40 }), (day, tenths) => {
        noLess(air(changed(day, (use) => ({ ...use, ml: (use.ml * tenths) / 10 }))), air(day));
      }),
      runs(80),
    );
  });

  it('never gets better with one more use, nor worse with lids on', () => {
    fc.assert(
      fc.property(aDay, aUse, (day, use) => {
        const answer = air(day);
        noLess(air({ ...day, uses: [...day.uses, use] }), answer);
        noLess(answer, air(changed(day, (each) => ({ ...each, lidded: true }))));
      }),
      runs(80),
    );
  });

  it('never gets worse with more air, better mixing or a larger room with as many air changes', () => {
    const better = fc.constantFrom<(room: Room, flow: number) => Room>(
      (room, flow) => ({ ...room, fanM3PerHour: flow * 1.7 }),
      (room, flow) => ({ ...room, fanM3PerHour: flow, mixingFactor: 1 }),
    );
    fc.assert(
      fc.property(aDay, fc.integer({ min: 1, max: 900 }), better, (day, flow, change) => {
        const room = { ...day.room, fanM3PerHour: flow, mixingFactor: 2 };
        noLess(air({ ...day, room }), air({ ...day, room: change(room, flow) }));
      }),
      runs(80),
    );
    fc.assert(
      fc.property(aDay, (day) => {
        const larger = { ...day.room, volumeM3: (day.room.volumeM3 ?? 0) * 3 };
        const [small, large] = [air(day), air({ ...day, room: larger })];
        expect(large.peakMgM3).toBeLessThanOrEqual(small.peakMgM3 * (1 + 1e-9));
        expect(large.average8hMgM3).toBeLessThanOrEqual(small.average8hMgM3 * (1 + 1e-9));
      }),
      runs(60),
    );
  });

  it('does not depend on the order in which uses are named', () => {
    fc.assert(
      fc.property(aDay, (day) => {
        const [one, other] = [air(day), air({ ...day, uses: [...day.uses].reverse() })];
        expect(other.mostMl.map(({ agent }) => agent)).toEqual(
          one.mostMl.map(({ agent }) => agent),
        );
        worries(other).forEach((value, index) => {
          expect(value).toBeCloseTo(worries(one)[index] ?? 0, 6);
        });
      }),
      runs(80),
    );
  });

  it('counts a use in two halves like the whole', () => {
    const halves = [
      { ...SPIRIT, ml: 20 },
      { ...SPIRIT, ml: 20 },
    ];
    const [whole, split] = [inRoom(ROOM), inRoom(ROOM, halves)];
    worries(split).forEach((value, index) => {
      expect(value).toBeCloseTo(worries(whole)[index] ?? 0, 9);
    });
  });

  it('holds what it counts with within the range of what was guessed', () => {
    fc.assert(
      fc.property(aDay, (day) => {
        const answer = air(day);
        const ranged = ['peakMgM3', 'worst15MinMgM3', 'average8hMgM3', 'combinedShare'] as const;
        for (const key of [...ranged, 'shareOfLel' as const]) {
          const { low = NEVER, high = NEVER } = answer.ranges[key];
          expect(answer[key]).toBeGreaterThanOrEqual(low * (1 - 1e-9));
          expect(answer[key]).toBeLessThanOrEqual(high * (1 + 1e-9));
        }
        const { low = NEVER, high = NEVER } = answer.ranges.airOutMin;
        expect(answer.airOutMin ?? NEVER).toBeGreaterThanOrEqual(low);
        expect(answer.airOutMin ?? NEVER).toBeLessThanOrEqual(high);
      }),
      runs(60),
    );
  });

  it('finds nothing where nothing is out', () => {
    expect(inRoom(ROOM, [])).toMatchObject({
      ...{ peakMgM3: 0, worst15MinMgM3: 0, average8hMgM3: 0, combinedShare: 0, shareOfLel: 0 },
      ...{ airOutMin: 0, fanNeededM3PerHour: 0, mostMl: [], shares: [], endMin: 0 },
    });
    expect(inRoom(ROOM, [{ ...SPIRIT, ml: 0 }])).toMatchObject({ peakMgM3: 0, airOutMin: 0 });
  });

  it('draws its curve through the highest point, over as long as was asked', () => {
    const answer = air({ region: 'us', room: ROOM, uses: [SPIRIT], horizonMin: 1440 });
    expect(answer.series.at(-1)?.min).toBe(1440);
    const top = Math.max(...answer.series.map(({ nearMgM3 }) => nearMgM3));
    expect(top).toBeCloseTo(answer.peakMgM3, 6);
    expect(answer.series.find(({ nearMgM3 }) => nearMgM3 === top)?.min).toBe(answer.peakAtMin);
    const usual = inRoom(ROOM);
    expect(usual.horizonMin).toBeGreaterThanOrEqual(usual.endMin + (usual.airOutMin ?? 0));
    expect(inRoom({ volumeM3: 60, fanM3PerHour: 0 }).horizonMin).toBe(1440);
  });

  it('has one zone when asked for one, with the bench no different from the room', () => {
    const one = air({ region: 'us', room: ROOM, uses: [SPIRIT], zones: 1 });
    for (const { nearMgM3, farMgM3 } of one.series) expect(nearMgM3).toBe(farMgM3);
    expect(one.room.nearVolumeM3).toBeUndefined();
    expect(inRoom(ROOM).peakMgM3).toBeGreaterThan(one.peakMgM3);
  });
});

describe('the most that a room takes', () => {
  const burden = (answer: AirAnswer): number =>
    Math.max(answer.combinedShare, answer.shareOfLel / 0.25);

  it('is the amount with which the model comes to the limit, and to no more', () => {
    fc.assert(
      fc.property(aDay, (day) => {
        for (const { agent, saidMl, ml } of air(day).mostMl) {
          if (ml === undefined || ml === 0) continue;
          const times = ml / saidMl;
          const most = air(
            changed(day, (use) => (use.agent === agent ? { ...use, ml: use.ml * times } : use)),
          );
          expect(burden(most)).toBeCloseTo(1, 8);
        }
      }),
      runs(60),
    );
  });

  it('is nothing where the rest is too much already', () => {
    const { mostMl } = inRoom(ROOM, [SPIRIT, { agent: 'acetone', ml: 9000 }]);
    expect(mostMl.find(({ agent }) => agent === 'white-spirit')?.ml).toBe(0);
  });

  it('is said for uses that no amount was said for', () => {
    const [spirit] = inRoom(ROOM, [{ ...SPIRIT, ml: 0 }]).mostMl;
    expect(spirit?.saidMl).toBe(0);
    expect(spirit?.ml).toBeCloseTo(inRoom(ROOM).mostMl[0]?.ml ?? 0, 9);
    const [, other] = inRoom(ROOM, [
      { ...SPIRIT, ml: 0 },
      { agent: 'acetone', ml: 10 },
    ]).mostMl;
    expect(other?.ml).toBeLessThan(spirit?.ml ?? 0);
  });

  it('is less at the worst end of what was guessed, and the same where nothing was', () => {
    const [guessed] = inRoom(ROOM).mostMl;
    expect(guessed?.carefulMl).toBeLessThan(guessed?.ml ?? 0);
    const even = { ...SPIRIT, minutes: 15 };
    const [measured] = inRoom({ volumeM3: 60, fanM3PerHour: 300, mixingFactor: 2 }, [even]).mostMl;
    expect(measured?.carefulMl).toBeCloseTo(measured?.ml ?? 0, 6);
  });

  it('has no end where the air cannot hold enough to pass a limit', () => {
    const bottles = [
      { agent: 'white-spirit', sdsDate: '2026-02-14', limitMgM3: 1e9, vapourPressurePa: 11 },
    ];
    const answer = air({ region: 'us', room: ROOM, uses: [{ ...SPIRIT, ml: 1 }], bottles });
    expect(answer.mostMl[0]?.ml).toBeUndefined();
  });
});

describe('the fan that is needed', () => {
  it('is the flow at which the model comes to the limit; none is enough where the bench is over', () => {
    fc.assert(
      fc.property(aDay, (day) => {
        const { fanNeededM3PerHour: flow, room } = air(day);
        const withFlow = (fanM3PerHour: number): number => {
          const { mixingFactor } = room;
          const answer = air({ ...day, room: { ...day.room, fanM3PerHour, mixingFactor } });
          return Math.max(answer.combinedShare, answer.shareOfLel / 0.25);
        };
        if (flow === undefined) expect(withFlow(1e6)).toBeGreaterThan(1);
        else if (flow === 0) expect(withFlow(0)).toBeLessThanOrEqual(1);
        else expect(withFlow(flow)).toBeCloseTo(1, 7);
      }),
      runs(60),
    );
  });

  it('is said even where there is no air at all', () => {
    expect(inRoom({ volumeM3: 60, fanM3PerHour: 0 }).fanNeededM3PerHour).toBeGreaterThan(0);
    expect(inRoom({ fanM3PerHour: 0 }).fanNeededM3PerHour).toBeGreaterThan(0);
  });
});
