import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { recipeOf, type RecipeOf } from '../../../server/web/presenters/recipe.js';
import { catalogue, words } from '../../support/rules.js';

const recipe = (mix: Partial<RecipeOf>) =>
  recipeOf({ isDried: false, parts: [], additives: [], ...mix }, catalogue, words);

const share = fc.option(fc.integer({ min: 0, max: 100 }), { nil: undefined });
const ids = [...catalogue.inks.map((row) => row.id), 'my tin'];
const parts = fc.uniqueArray(
  fc.record({ ink: fc.constantFrom(...ids), share }).map(({ ink, share: much }) => ({
    ink,
    ...(much !== undefined && { share: much }),
  })),
  { minLength: 1, maxLength: 8, selector: (part) => part.ink },
);

describe('the recipe strip', () => {
  it('draws parts by share, the largest first, extenders hatched', () => {
    const { parts: drawn } = recipe({
      parts: [
        { ink: 'water-washable-oil', share: 30 },
        { ink: 'transparent-base-ww', share: 70 },
      ],
    });
    expect(drawn).toEqual([
      {
        name: words.short('ink', 'transparent-base-ww'),
        much: '70 %',
        look: 'extender',
        x: '0.00%',
        width: '70.00%',
      },
      {
        name: words.short('ink', 'water-washable-oil'),
        much: '30 %',
        look: 'ink-1',
        x: '70.00%',
        width: '30.00%',
      },
    ]);
  });

  it('divides what is left among parts without a share, and says no number for them', () => {
    const { parts: drawn } = recipe({
      parts: [{ ink: 'oil-relief' }, { ink: 'transparent-base', share: 50 }],
    });
    expect(drawn.map((part) => [part.much, part.width])).toEqual([
      ['50 %', '50.00%'],
      ['', '50.00%'],
    ]);
  });

  it('gives each ink its own look, and marks what nobody knows', () => {
    const looks = recipe({
      parts: [
        ...['oil-relief', 'oil-etching', 'oil-litho', 'oil-letterpress', 'plastisol'].map(
          (ink) => ({ ink, share: 10 }),
        ),
        { ink: 'my tin', share: 5 },
      ],
      additives: [{ additive: 'cobalt-drier', percent: 1 }, { additive: 'a drop of that' }],
    }).parts.map((part) => part.look);
    expect(looks).toEqual([
      ...['ink-1', 'ink-2', 'ink-3', 'ink-4', 'ink-4'],
      ...['unknown', 'additive', 'unknown'],
    ]);
  });

  it('fills the bar from edge to edge and leaves nothing out, whatever the mix', () => {
    fc.assert(
      fc.property(parts, (mix) => {
        const { parts: drawn } = recipe({ parts: mix });
        let filled = 0;
        for (const part of drawn) {
          expect(Number.parseFloat(part.x)).toBeCloseTo(filled, 0);
          expect(Number.parseFloat(part.width)).toBeGreaterThan(0);
          filled += Number.parseFloat(part.width);
        }
        expect(drawn).toHaveLength(mix.length);
        expect(filled).toBeCloseTo(100, 0);
      }),
      { seed: 7, numRuns: 200 },
    );
  });
});
