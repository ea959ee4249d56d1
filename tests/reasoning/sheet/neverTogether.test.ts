import { describe, expect, it } from 'vitest';
import type { BenchInput } from '../../../server/reasoning/index.js';
import { neverTogetherOf } from '../../../server/reasoning/sheet/neverTogether.js';
import { assessed, benchOf, book } from '../../support/everyMix.js';

const stops = (more: Partial<BenchInput>) => {
  const input = { mixes: [], surfaces: [], ...more };
  return neverTogetherOf(book, benchOf(input), assessed(input)).map((row) => row.id);
};

describe('what must never meet', () => {
  it('is nothing where only one of the two is there', () => {
    expect(stops({})).toEqual([]);
    expect(stops({ agentsAtHand: ['bleach'] })).toEqual([]);
  });

  it('is stopped for things that only stand at hand', () => {
    expect(stops({ agentsAtHand: ['bleach', 'household-ammonia'] })).toContain(
      'bleach-with-ammonia',
    );
    expect(stops({ agentsAtHand: ['bleach', 'acetone'] })).toContain('bleach-with-solvent');
  });

  it('is stopped for what the plan itself takes', () => {
    const mixes = [{ parts: [{ ink: 'litho-crayon' }] }];
    const hot = { mixes, surfaces: ['glass-slab'], equipment: ['hotplate'] };
    expect(stops(hot)).toContain('hot-surface-with-solvent');
  });

  it('takes no notice of a bottle that nobody knows', () => {
    expect(stops({ agentsAtHand: ['grey bottle', 'bleach'] })).toEqual([]);
  });

  it('gives the row of the table as its reason', () => {
    const input = { mixes: [], surfaces: [], agentsAtHand: ['bleach', 'vinegar'] };
    expect(neverTogetherOf(book, benchOf(input), assessed(input))).toEqual([
      { id: 'bleach-with-acid', because: ['never.bleach-with-acid'] },
    ]);
  });
});
