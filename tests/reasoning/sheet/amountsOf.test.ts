import { describe, expect, it } from 'vitest';
import type { BenchInput, MixInput } from '../../../server/reasoning/index.js';
import { amountsOf } from '../../../server/reasoning/sheet/amountsOf.js';
import { assessed, book } from '../../support/everyMix.js';

const amounts = (mixes: readonly MixInput[], surfaces: readonly string[]) =>
  amountsOf(book, assessed({ mixes, surfaces } satisfies BenchInput));

const oil: MixInput = { parts: [{ ink: 'oil-relief' }] };
const another: MixInput = { parts: [{ ink: 'oil-etching' }] };

const mlOf = (agent: string) => book.agents.find((row) => row.id === agent)?.ml;

describe('amounts', () => {
  it('are nothing for a bench with nothing to do', () => {
    expect(amounts([], ['glass-slab'])).toEqual({ ml: [], rags: { low: 0, high: 0 } });
  });

  it('add up over surfaces, by their size, for each agent in working order', () => {
    const found = amounts([oil], ['glass-slab', 'lino-block']);
    expect(found.ml.map((each) => each.agent)).toEqual(['veg-oil', 'soap-water']);
    expect(found.ml[0]?.range).toEqual({
      low: (mlOf('veg-oil')?.medium.low ?? 0) + (mlOf('veg-oil')?.small.low ?? 0),
      high: (mlOf('veg-oil')?.medium.high ?? 0) + (mlOf('veg-oil')?.small.high ?? 0),
    });
    expect(found.rags).toEqual({ low: 2, high: 3 });
  });

  it('count a surface once, however many mixes are on it', () => {
    expect(amounts([oil, another], ['glass-slab'])).toEqual(amounts([oil], ['glass-slab']));
  });

  it('count rags for a surface that is not washed, but no agent', () => {
    expect(amounts([oil], ['tarlatan'])).toEqual({ ml: [], rags: { low: 1, high: 1 } });
  });

  it('take a tool that nobody knows for a large one', () => {
    expect(amounts([oil], ['mangle']).rags).toEqual({ low: 2, high: 3 });
  });

  it('name agents of one stage by their ids', () => {
    const rosin: MixInput = { parts: [{ ink: 'rosin-aquatint' }] };
    const screen: MixInput = { parts: [{ ink: 'screen-solvent' }] };
    const found = amounts([screen, rosin], ['glass-slab']).ml.map((each) => each.agent);
    expect(found).toEqual(['ethanol', 'glycol-ether']);
  });
});
