import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BenchInput, MixInput } from '../../../server/reasoning/index.js';
import { aBench, aDose, aPart, bottles, runs } from '../../support/arbitraries.js';
import { SURFACE_SETS, THINGS, mixOf, pairsOf } from '../../support/everyMix.js';
import { catalogue, reasoner } from '../../support/rules.js';

const sheetOf = (bench: BenchInput): string => JSON.stringify(reasoner.sheet(bench));

/** Numbers from 0 up to 1, the same for the same seed (Park and Miller's generator). */
const chances = (seed: number) => {
  let state = (seed % 2147483646) + 1;
  return (): number => {
    state = (state * 16807) % 2147483647;
    return (state - 1) / 2147483646;
  };
};

/** The list in another order, with some things named again. */
const shuffled = <T>(list: readonly T[], chance: () => number): readonly T[] => {
  const again = list.filter(() => chance() < 0.3);
  return [...list, ...again]
    .map((each) => ({ each, place: chance() }))
    .sort((a, b) => a.place - b.place)
    .map(({ each }) => each);
};

/** The same thing with its keys in another order. */
const turned = <T extends object>(thing: T): T =>
  Object.fromEntries(Object.entries(thing).reverse()) as T;

const turnedMix = (mix: MixInput, chance: () => number): MixInput => ({
  ...turned(mix),
  parts: shuffled(mix.parts, chance).map(turned),
  ...(mix.additives && { additives: shuffled(mix.additives, chance).map(turned) }),
  ...(mix.on && { on: shuffled(mix.on, chance) }),
});

const otherwise = (bench: BenchInput, seed: number): BenchInput => {
  const chance = chances(seed);
  const { equipment, agentsAtHand, uses, room, people } = bench;
  return {
    ...turned(bench),
    mixes: shuffled(bench.mixes, chance).map((mix) => turnedMix(mix, chance)),
    surfaces: shuffled(bench.surfaces, chance),
    ...(equipment && { equipment: shuffled(equipment, chance) }),
    ...(agentsAtHand && { agentsAtHand: shuffled(agentsAtHand, chance) }),
    ...(uses && { uses: shuffled(uses, chance).map(turned) }),
    ...(bench.bottles && { bottles: shuffled(bench.bottles, chance).map(turned) }),
    ...(room && { room: turned(room) }),
    ...(people && {
      people: {
        ...turned(people),
        ...(people.flags && { flags: shuffled(people.flags, chance) }),
      },
    }),
  };
};

const extenders = catalogue.inks.filter((ink) => ink.extender === true).map((ink) => ink.id);

describe('order-free', { timeout: 30_000 }, () => {
  it('gives the same sheet, byte for byte, in any order and with things named twice', () => {
    fc.assert(
      fc.property(aBench, fc.nat(), (bench, seed) => {
        expect(sheetOf(otherwise(bench, seed))).toBe(sheetOf(bench));
      }),
      runs(1000),
    );
  });

  it('does so for bottles in any order, their codes too', () => {
    fc.assert(
      fc.property(aBench, bottles, fc.nat(), (bench, some, seed) => {
        const chance = chances(seed);
        const other = shuffled(some, chance).map((bottle) => ({
          ...turned(bottle),
          ...(bottle.hazardCodes && { hazardCodes: shuffled(bottle.hazardCodes, chance) }),
        }));
        expect(sheetOf({ ...bench, bottles: other })).toBe(sheetOf({ ...bench, bottles: some }));
      }),
      runs(300),
    );
  });

  it('does so for every two things, in one mix and in two', () => {
    const [, surfaces = []] = SURFACE_SETS;
    for (const [one, two] of pairsOf(THINGS)) {
      const usual = sheetOf({ mixes: [mixOf([one, two])], surfaces });
      expect(sheetOf({ mixes: [mixOf([two, one, two])], surfaces })).toBe(usual);
      const apart = sheetOf({ mixes: [mixOf([one]), mixOf([two])], surfaces });
      const turnedRound = [mixOf([two]), mixOf([one]), mixOf([two])];
      expect(sheetOf({ mixes: turnedRound, surfaces: [...surfaces].reverse() })).toBe(apart);
    }
  });

  it('takes names and ids, in any case and spacing, for the same thing', () => {
    for (const { id, name, shortName } of catalogue.inks) {
      const byId = sheetOf({ mixes: [{ parts: [{ ink: id }] }], surfaces: ['glass-slab'] });
      for (const typed of [name.toUpperCase(), `  ${shortName}  `, id.toUpperCase()]) {
        const bench = { mixes: [{ parts: [{ ink: typed }] }], surfaces: [' GLASS  ink slab '] };
        expect(sheetOf(bench), typed).toBe(byId);
      }
    }
  });

  it.each(extenders)('takes %s as a part with a share and as an additive with a percent', (id) => {
    const others = fc.array(
      aPart.filter((part) => part.ink !== id),
      { minLength: 1, maxLength: 3 },
    );
    const doses = fc.array(
      aDose.filter((dose) => dose.additive !== id),
      { maxLength: 2 },
    );
    const percents = fc.option(
      fc.integer({ min: 1, max: 1000 }).map((tenth) => tenth / 10),
      { nil: undefined },
    );
    fc.assert(
      fc.property(others, doses, percents, (parts, additives, percent) => {
        const surfaces = ['glass-slab', 'roller-polyurethane'];
        const asPart = { parts: [...parts, { ink: id, share: percent }], additives };
        const asAdditive = { parts, additives: [...additives, { additive: id, percent }] };
        expect(sheetOf({ mixes: [asAdditive], surfaces })).toBe(
          sheetOf({ mixes: [asPart], surfaces }),
        );
      }),
      runs(300),
    );
  });

  it.each(extenders)('lets the ink give way to %s put on top of a whole mix', (id) => {
    const surfaces = ['glass-slab'];
    for (let percent = 1; percent < 100; percent += 1) {
      const whole = { parts: [{ ink: 'oil-relief', share: 100 }] };
      const onTop = { ...whole, additives: [{ additive: id, percent }] };
      const asParts = {
        parts: [
          { ink: id, share: percent },
          { ink: 'oil-relief', share: 100 - percent },
        ],
      };
      expect(sheetOf({ mixes: [onTop], surfaces })).toBe(sheetOf({ mixes: [asParts], surfaces }));
    }
  });
});
