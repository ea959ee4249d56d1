import { describe, expect, it } from 'vitest';
import { gloveType, permeationLevel } from '../../../server/reasoning/index.js';
import { catalogue } from '../../support/rules.js';

const { gloves } = catalogue;

describe('permeation by EN ISO 374-1', () => {
  it.each([
    [0, 0],
    [10, 0],
    [10.1, 1],
    [30, 1],
    [31, 2],
    [60, 2],
    [61, 3],
    [120, 3],
    [121, 4],
    [240, 4],
    [241, 5],
    [480, 5],
    [481, 6],
  ])('%s minutes are level %s', (minutes, level) => {
    expect(permeationLevel(gloves, minutes)).toBe(level);
  });

  const letters = (count: number, minutes: number) =>
    Object.fromEntries(
      'ABCDEFGH'
        .slice(0, count)
        .split('')
        .map((letter) => [letter, minutes]),
    );

  it('wants six letters over 30 minutes for type A, three for B, one over 10 for C', () => {
    expect(gloveType(gloves, letters(6, 31))).toBe('A');
    expect(gloveType(gloves, letters(5, 31))).toBe('B');
    expect(gloveType(gloves, letters(6, 30))).toBe('C');
    expect(gloveType(gloves, letters(3, 31))).toBe('B');
    expect(gloveType(gloves, letters(2, 31))).toBe('C');
    expect(gloveType(gloves, letters(1, 11))).toBe('C');
  });

  it('gives no type to a glove that no letter earns one', () => {
    expect(gloveType(gloves, letters(6, 10))).toBeNull();
    expect(gloveType(gloves, {})).toBeNull();
  });
});
