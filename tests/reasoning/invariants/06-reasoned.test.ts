import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BenchInput, Sheet } from '../../../server/reasoning/index.js';
import { aBench, runs } from '../../support/arbitraries.js';
import { everyBench } from '../../support/everyBench.js';
import { EVERY_SURFACE, SURFACE_SETS, THINGS, mixOf, pairsOf } from '../../support/everyMix.js';
import { reasonsOf } from '../../support/spokenOf.js';
import { reasoner, words } from '../../support/rules.js';

/** Ids that lead to no row, and rows that say neither where they are from nor that nobody wrote it. */
const loose = (ids: readonly string[]): readonly string[] =>
  ids.filter((id) => {
    const row = words.row(id);
    return row === undefined || (row.sources.length === 0 && row.how !== 'common practice');
  });

const withoutReason = (sheet: Sheet): readonly string[] => [
  ...sheet.lines.filter((line) => line.because.length === 0).map((line) => line.id),
  ...sheet.levels.filter((reached) => reached.because.length === 0).map(({ scale }) => scale),
  ...sheet.plan.routes.filter((route) => route.because.length === 0).map((route) => route.surface),
  ...sheet.streams.filter((stream) => stream.because.length === 0).map((stream) => stream.id),
  ...sheet.neverTogether.filter((row) => row.because.length === 0).map((row) => row.id),
];

const check = (bench: BenchInput): void => {
  const sheet = reasoner.sheet(bench);
  expect([...loose(reasonsOf(sheet)), ...withoutReason(sheet)], JSON.stringify(bench)).toEqual([]);
};

describe('reasoned', { timeout: 30_000 }, () => {
  it('gives each line, level and route a reason that leads to a row with its sources', () => {
    fc.assert(fc.property(aBench, check), runs(1000));
  });

  it('does so on the benches that make the sheet say all it can', () => {
    for (const bench of everyBench) check(bench);
  });

  it.each([false, true])('does so for each thing on each surface, dried: %s', (dried) => {
    for (const thing of THINGS) {
      for (const surface of EVERY_SURFACE) {
        check({ mixes: [mixOf([thing], dried)], surfaces: [surface] });
      }
    }
  });

  it('does so for every two things, in one mix and in two', () => {
    const [, surfaces = []] = SURFACE_SETS;
    for (const pair of pairsOf(THINGS)) {
      check({ mixes: [mixOf(pair)], surfaces });
      check({ mixes: pair.map((thing) => mixOf([thing])), surfaces });
    }
  });

  it('has a source, or says that it is common practice, for every row there is', () => {
    expect(loose(words.rows().map((row) => row.id))).toEqual([]);
  });
});
