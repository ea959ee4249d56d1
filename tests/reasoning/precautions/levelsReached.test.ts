import { describe, expect, it } from 'vitest';
import { type BenchInput, SCALES } from '../../../server/reasoning/index.js';
import { levelsReached } from '../../../server/reasoning/precautions/levelsReached.js';
import { assessed, book } from '../../support/everyMix.js';

const levels = (bench: Partial<BenchInput>) => {
  const { held, demands } = assessed({ mixes: [], surfaces: [], ...bench });
  return levelsReached(book, held, demands);
};

const level = (scale: (typeof SCALES)[number], bench: Partial<BenchInput>) =>
  levels(bench).find((reached) => reached.scale === scale);

describe('levels reached', () => {
  it('speak to every scale, in its order, with nothing on the bench', () => {
    expect(levels({}).map((reached) => reached.scale)).toEqual(SCALES);
    expect(new Set(levels({}).flatMap((reached) => reached.because))).toEqual(
      new Set(['every-bench']),
    );
    expect(levels({}).every((reached) => reached.height === 0)).toBe(true);
  });

  it('name who asks for the top, and fold who asks for less', () => {
    const washed = { uses: [{ agent: 'white-spirit', ml: 20 }], people: { count: 6 } };
    expect(level('air', washed)).toMatchObject({
      level: 'bench-extraction',
      height: 4,
      because: ['band.band-4'],
      folded: ['every-bench', 'a-group'],
    });
  });

  it('name each row once, though it asks twice', () => {
    const drier = [{ additive: 'cobalt-drier' }];
    const { because = [], folded = [] } =
      level('rags', { mixes: [{ parts: [{ ink: 'oil-relief' }], additives: drier }] }) ?? {};
    expect(because).toEqual([...new Set(because)]);
    expect(because).toContain('drying-oil-rags-heat');
    expect(folded).toContain('every-bench');
    expect(folded.some((row) => because.includes(row))).toBe(false);
  });
});
