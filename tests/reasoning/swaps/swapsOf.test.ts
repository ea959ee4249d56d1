import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BenchInput, SCALES, type Swap } from '../../../server/reasoning/index.js';
import { aBench, runs } from '../../support/arbitraries.js';
import { assessed } from '../../support/everyMix.js';
import { catalogue, reasoner } from '../../support/rules.js';

const swaps = (bench: Partial<BenchInput>): readonly Swap[] =>
  reasoner.sheet({ mixes: [], surfaces: ['glass-slab'], ...bench }).swaps;

const heights = (bench: BenchInput): readonly number[] => assessed(bench).held.heights;

/** The bench with a swap made, wherever the thing stands. */
const changed = (bench: BenchInput, swap: Swap): readonly BenchInput[] => {
  const [kind = '', what = ''] = split(swap.what);
  const instead = swap.for === undefined ? undefined : split(swap.for)[1];
  if (kind === 'agent') {
    return (bench.uses ?? [])
      .filter((use) => use.agent === what)
      .map((use) => ({ ...bench, uses: bench.uses?.filter((each) => each !== use) }));
  }
  const swapped = <T>(
    list: readonly T[],
    idOf: (each: T) => string,
    put: (each: T, id: string) => T,
  ) =>
    list.flatMap((each) =>
      idOf(each) !== what ? [each] : instead === undefined ? [] : [put(each, instead)],
    );
  return bench.mixes.map((mix) => ({
    ...bench,
    mixes: bench.mixes.map((each) =>
      each !== mix
        ? each
        : {
            ...mix,
            parts: swapped(
              mix.parts,
              (part) => part.ink,
              (part, ink) => ({ ...part, ink }),
            ),
            additives: swapped(
              mix.additives ?? [],
              (dose) => dose.additive,
              (dose, additive) => ({ ...dose, additive }),
            ),
          },
    ),
  }));
};

const split = (row: string): readonly string[] => [
  row.slice(0, row.indexOf('.')),
  row.slice(row.indexOf('.') + 1),
];

describe('swaps', () => {
  it('are none for a bench that is as mild as can be', () => {
    expect(swaps({})).toEqual([]);
    expect(swaps({ mixes: [{ parts: [{ ink: 'water-relief-gum' }] }] })).toEqual([]);
  });

  it('name the milder kind of an ink, and what it spares', () => {
    const [swap] = swaps({ mixes: [{ parts: [{ ink: 'oil-relief' }] }] });
    expect(swap).toMatchObject({
      kind: 'swap',
      what: 'ink.oil-relief',
      for: 'ink.water-washable-oil',
      spares: [{ scale: 'air', from: 'window', to: 'room-air' }],
      sparesAgents: ['veg-oil'],
    });
  });

  it('leave a drier out, as the first choice', () => {
    const mixes = [{ parts: [{ ink: 'oil-relief' }], additives: [{ additive: 'cobalt-drier' }] }];
    expect(swaps({ mixes })[0]).toMatchObject({ kind: 'leave-out', what: 'additive.cobalt-drier' });
  });

  it('name the milder kind of an additive', () => {
    const mixes = [{ parts: [{ ink: 'oil-relief' }], additives: [{ additive: 'oxime-antiskin' }] }];
    expect(swaps({ mixes })).toEqual([
      expect.objectContaining({ kind: 'leave-out', what: 'additive.oxime-antiskin' }),
      expect.objectContaining({
        kind: 'swap',
        what: 'additive.oxime-antiskin',
        for: 'additive.clove-oil',
      }),
    ]);
  });

  it('are none for ink that has dried: what is done is done', () => {
    const mixes = [
      { parts: [{ ink: 'oil-relief' }], additives: [{ additive: 'cobalt-drier' }], dried: true },
    ];
    expect(swaps({ mixes })).toEqual([]);
  });

  it('leave out one ink of two, but never the only one', () => {
    const parts = [{ ink: 'plastisol' }, { ink: 'rubber-letterpress' }];
    expect(swaps({ mixes: [{ parts }] })).toContainEqual(
      expect.objectContaining({ kind: 'leave-out', what: 'ink.rubber-letterpress' }),
    );
    const one = swaps({ mixes: [{ parts: [{ ink: 'screen-solvent' }] }] });
    expect(one.every((swap) => swap.kind === 'swap')).toBe(true);
  });

  it('leave out a spirit that is used for nothing', () => {
    expect(swaps({ uses: [{ agent: 'acetone', ml: 50 }] })).toEqual([
      expect.objectContaining({ kind: 'leave-out', what: 'agent.acetone', sparesAgents: [] }),
    ]);
  });

  it('are at most two, and each brings something down and nothing up', () => {
    fc.assert(
      fc.property(aBench, (input) => {
        const sheet = reasoner.sheet(input);
        const { bench } = sheet;
        expect(sheet.swaps.length).toBeLessThanOrEqual(2);
        for (const swap of sheet.swaps) {
          expect(swap.spares.length).toBeGreaterThan(0);
          const levels = new Map(sheet.levels.map((each) => [each.scale, each]));
          for (const { scale, from, to } of swap.spares) {
            expect(levels.get(scale)?.level).toBe(from);
            const scaleLevels = catalogue.scales.find((each) => each.id === scale)?.levels ?? [];
            expect(scaleLevels.findIndex((each) => each.id === to)).toBeLessThan(
              scaleLevels.findIndex((each) => each.id === from),
            );
          }
          const after = changed(bench, swap).map(heights);
          const spared = SCALES.map((scale) => {
            const to = swap.spares.find((each) => each.scale === scale)?.to;
            const scaleLevels = catalogue.scales.find((each) => each.id === scale)?.levels ?? [];
            return to === undefined
              ? levels.get(scale)?.height
              : scaleLevels.findIndex((each) => each.id === to);
          });
          expect(after).toContainEqual(spared);
        }
      }),
      runs(400),
    );
  });
});
