import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BenchInput, Sheet } from '../../../server/reasoning/index.js';
import { aBench, runs } from '../../support/arbitraries.js';
import { everyBench } from '../../support/everyBench.js';
import {
  EVERY_SURFACE,
  SURFACE_SETS,
  THINGS,
  mixOf,
  pairsOf,
  triplesOf,
} from '../../support/everyMix.js';
import { catalogue, reasoner, words } from '../../support/rules.js';

const PLACES = /\b(bins?|piles?|heaps?|bags?|dryers?)\b/i;
const OF_RAGS = /\b(rags?|cloths?|tarlatan|wipe|can)\b/i;
/** These name such a place to forbid it. */
const FORBIDS = new Set(['rags-never-heap']);

const markOf = new Map(
  [...catalogue.inks, ...catalogue.additives].map((row) => [row.id, row.marks] as const),
);

/** Drying and semi-drying oil and all washable oil ink, by the tables; and what nobody knows. */
const mayHeat = (id: string): boolean => {
  const marks = markOf.get(id);
  return marks === undefined || marks.includes('drying-oil') || marks.includes('emulsifying');
};

const hasHeatingOil = (sheet: Sheet): boolean =>
  sheet.bench.mixes.some(
    (mix) =>
      mix.parts.some((part) => mayHeat(part.ink)) ||
      mix.additives.some((dose) => mayHeat(dose.additive)),
  ) || sheet.plan.agents.some((agent) => ['veg-oil', 'veg-ester'].includes(agent));

/** Words that may give rags a place: the streams' own, and every line that speaks of rags. */
const ragWords = (sheet: Sheet): readonly string[] => [
  ...sheet.streams.flatMap((stream) => {
    const { container, emptied } = words.stream(stream.id);
    return [container, emptied];
  }),
  ...sheet.lines
    .filter((line) => line.phase !== 'if-it-goes-wrong' && !FORBIDS.has(line.text))
    .map((line) => {
      const { head, rest } = words.line(line, sheet.bench.region);
      return `${head} ${rest}`;
    })
    .filter((text) => OF_RAGS.test(text)),
];

const faultsOf = (sheet: Sheet): readonly string[] => {
  const heats = sheet.streams.some((stream) => stream.selfHeating);
  if (!heats) return hasHeatingOil(sheet) ? ['the rags do not count as self-heating'] : [];
  const printed = sheet.lines.map((line) => line.text);
  const mustSay = hasHeatingOil(sheet) ? ['rags-never-heap', 'can-out', 'rags-hot'] : [];
  return [
    ...ragWords(sheet).filter((text) => PLACES.test(text)),
    ...mustSay.filter((text) => !printed.includes(text)),
    ...sheet.streams.filter((stream) => stream.level === 'ordinary').map((stream) => stream.id),
  ];
};

const check = (bench: BenchInput): void => {
  expect(faultsOf(reasoner.sheet(bench)), JSON.stringify(bench)).toEqual([]);
};

describe('oil rags', { timeout: 30_000 }, () => {
  it('never puts rags that heat in a bin, a pile, a bag or a dryer', () => {
    fc.assert(fc.property(aBench, check), runs(1000));
  });

  it('does not do so on the benches that make the sheet say all it can', () => {
    for (const bench of everyBench) check(bench);
  });

  it.each([false, true])('counts each drying oil and washable ink, dried: %s', (dried) => {
    for (const thing of THINGS) {
      check({ mixes: [mixOf([thing], dried)], surfaces: EVERY_SURFACE });
      for (const surface of EVERY_SURFACE) {
        check({ mixes: [mixOf([thing], dried)], surfaces: [surface] });
      }
    }
  });

  it('counts it with any other thing, in one mix and in two', () => {
    const [, surfaces = []] = SURFACE_SETS;
    for (const pair of pairsOf(THINGS)) {
      check({ mixes: [mixOf(pair)], surfaces });
      check({ mixes: pair.map((thing) => mixOf([thing])), surfaces });
    }
  });

  it('counts it with any two others', () => {
    const [, surfaces = []] = SURFACE_SETS;
    const oils = THINGS.filter(({ id }) => id === 'transparent-base' || id === 'reducing-oil');
    const others = THINGS.filter((thing) => !oils.includes(thing));
    for (const [one, two] of pairsOf(others)) {
      for (const oil of oils) check({ mixes: [mixOf([oil, one, two])], surfaces });
    }
    expect([...triplesOf(oils)]).toEqual([]);
  });

  it('counts an ink, an additive or a cleaner that nobody knows', () => {
    const surfaces = ['glass-slab'];
    for (const bench of [
      { mixes: [{ parts: [{ ink: 'hazelnut oil' }] }], surfaces },
      {
        mixes: [{ parts: [{ ink: 'water-relief-gum' }], additives: [{ additive: 'walnut oil' }] }],
        surfaces,
      },
      { mixes: [], surfaces, uses: [{ agent: 'camelina oil', ml: 5 }] },
    ]) {
      expect(reasoner.sheet(bench).streams.some((stream) => stream.selfHeating)).toBe(true);
      check(bench);
    }
  });
});
