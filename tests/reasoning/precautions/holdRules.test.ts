import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { holdRules, joinHeights } from '../../../server/reasoning/precautions/holdRules.js';
import { SCALES } from '../../../server/reasoning/index.js';
import { runs } from '../../support/arbitraries.js';
import { book } from '../../support/everyMix.js';

const holding = (...tags: readonly string[]) =>
  holdRules(book, new Set(tags), []).rules.map(({ rule }) => rule.id);

const heights = (...tags: readonly string[]) => holdRules(book, new Set(tags), []).heights;

describe('rules that hold', () => {
  it('are those of which every tag is there', () => {
    expect(holding('mark.plain-oil')).toContain('oil-ink-needs-oil');
    expect(holding('mark.plain-oil')).not.toContain('any-share-of-oil');
    expect(holding('mark.plain-oil', 'mark.emulsifying')).toContain('any-share-of-oil');
  });

  it('and one of any, where a rule asks for one of several', () => {
    expect(holding('person.pregnant')).not.toContain('pregnancy-and-spirit');
    expect(holding('mark.carcinogen')).not.toContain('pregnancy-and-spirit');
    expect(holding('person.pregnant', 'mark.carcinogen')).toContain('pregnancy-and-spirit');
    expect(holding('person.pregnant', 'band.2', 'mark.carcinogen')).toContain(
      'pregnancy-and-spirit',
    );
  });

  it('are none when nothing is there, and tags that no rule asks for change nothing', () => {
    expect(holding()).toEqual([]);
    expect(holding('mark.of-the-beast')).toEqual([]);
  });

  it('raise each scale to the strictest that is asked for, by a rule or by a band', () => {
    const air = SCALES.indexOf('air');
    const asked = (level: string) => ({
      row: 'band.x',
      scale: air,
      height: book.heightOf('air', level),
    });
    expect(heights()).toEqual(SCALES.map(() => 0));
    expect(heights('always', 'mark.plain-oil')[air]).toBe(book.heightOf('air', 'window'));
    const both = [asked('exhaust-fan'), asked('room-air')];
    expect(holdRules(book, new Set(['mark.plain-oil']), both).heights[air]).toBe(3);
    expect(holdRules(book, new Set(['unknown.ink']), both).heights[air]).toBe(5);
  });

  it('are all still there, and no scale lower, when more is there', () => {
    const tags = fc.uniqueArray(fc.constantFrom(...book.tags.keys()), { maxLength: 12 });
    fc.assert(
      fc.property(tags, tags, (some, more) => {
        const [less, all] = [some, [...some, ...more]].map((each) =>
          holdRules(book, new Set(each), []),
        );
        expect(all?.rules).toEqual(expect.arrayContaining([...(less?.rules ?? [])]));
        expect(less?.heights.every((height, at) => height <= (all?.heights[at] ?? -1))).toBe(true);
      }),
      runs(300),
    );
  });
});

describe('joining two levels', () => {
  const height = fc.nat(6);

  it('takes the more careful, in any order and however often', () => {
    fc.assert(
      fc.property(height, height, height, (a, b, c) => {
        expect(joinHeights(a, b)).toBe(joinHeights(b, a));
        expect(joinHeights(a, joinHeights(b, c))).toBe(joinHeights(joinHeights(a, b), c));
        expect(joinHeights(a, a)).toBe(a);
        expect(joinHeights(a, 0)).toBe(a);
        expect(joinHeights(a, b)).toBeGreaterThanOrEqual(a);
      }),
      runs(300),
    );
  });
});
