import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BenchInput, MixInput, Sheet } from '../../../server/reasoning/index.js';
import { aDose, aPart, runs } from '../../support/arbitraries.js';
import { EVERY_SURFACE, SURFACE_SETS } from '../../support/everyMix.js';
import { catalogue, reasoner } from '../../support/rules.js';

const bearing = (
  rows: readonly { readonly id: string; readonly marks: readonly string[] }[],
  mark: string,
): readonly string[] => rows.filter((row) => row.marks.includes(mark)).map((row) => row.id);

const washable = bearing(catalogue.inks, 'emulsifying');
const oilInks = bearing(catalogue.inks, 'plain-oil');
const oilAdditives = bearing(catalogue.additives, 'plain-oil');

/** Washable ink with some plain oil in it, as a part or as an additive. */
const mixWith = (ink: string, oil: string, share: number): MixInput =>
  oilAdditives.includes(oil)
    ? { parts: [{ ink, share: 100 }], additives: [{ additive: oil, percent: share }] }
    : {
        parts: [
          { ink, share: 100 - share },
          { ink: oil, share },
        ],
      };

/** What is wrong with a sheet for an oil mix. */
const faultsOf = (sheet: Sheet): readonly string[] => [
  ...sheet.plan.routes.flatMap((route) => {
    const first = route.passes.find((pass) => pass.do === 'agent')?.agent;
    return first === 'soap-water' ? [`soap first on ${route.surface}`] : [];
  }),
  ...(sheet.streams.some((stream) => stream.selfHeating) ? [] : ['rags do not heat']),
];

const check = (bench: BenchInput): void => {
  expect(faultsOf(reasoner.sheet(bench)), JSON.stringify(bench.mixes)).toEqual([]);
};

describe('any share counts', { timeout: 30_000 }, () => {
  it('knows washable inks and plain oils to try it with', () => {
    expect(washable).toContain('water-washable-oil');
    expect(oilInks).toContain('transparent-base');
    expect(oilAdditives).toContain('tack-reducer');
  });

  it.each(washable)('takes %s for oil with a tenth of a percent of oil up to 99.9', (ink) => {
    for (const oil of [...oilInks, ...oilAdditives]) {
      for (const share of [0.1, 0.2, 0.5, 1, 2, 5, 10, 25, 50, 75, 90, 98, 99, 99.8, 99.9]) {
        check({ mixes: [mixWith(ink, oil, share)], surfaces: SURFACE_SETS[1] ?? [] });
      }
      for (let tenth = 1; tenth < 1000; tenth += 7) {
        check({ mixes: [mixWith(ink, oil, tenth / 10)], surfaces: ['glass-slab'] });
      }
    }
  });

  it('does so on every surface, wet and dried', () => {
    for (const ink of washable) {
      for (const oil of [...oilInks, ...oilAdditives]) {
        const mix = mixWith(ink, oil, 2);
        check({ mixes: [mix], surfaces: EVERY_SURFACE });
        check({ mixes: [{ ...mix, dried: true }], surfaces: EVERY_SURFACE });
      }
    }
  });

  it('does so with anything else in the mix', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...washable),
        fc.constantFrom(...oilInks, ...oilAdditives),
        fc.integer({ min: 1, max: 999 }),
        fc.array(aPart, { maxLength: 2 }),
        fc.array(aDose, { maxLength: 2 }),
        fc.subarray([...EVERY_SURFACE], { minLength: 1, maxLength: 5 }),
        fc.boolean(),
        (ink, oil, tenth, parts, doses, surfaces, dried) => {
          const mix = mixWith(ink, oil, tenth / 10);
          const additives = [...(mix.additives ?? []), ...doses];
          check({ mixes: [{ parts: [...mix.parts, ...parts], additives, dried }], surfaces });
        },
      ),
      runs(1500),
    );
  });
});
