import { describe, expect, it } from 'vitest';
import { catalogue } from '../support/rules.js';
import { files } from '../support/views.js';

/**
 * Flesch-Kincaid grade (Kincaid and others, US Navy, 1975): 0.39 words a sentence + 11.8 syllables
 * a word - 15.59. Sentences end at . ! ? and at a colon that opens the action.
 */
const gradeOf = (text: string): number => {
  const sentences = text.split(/[.!?:]+(?:\s|$)/).filter((each) => /\w/.test(each)).length;
  const words = text.match(/[\p{L}\d'-]+/gu) ?? [];
  const syllables = words.reduce((sum, word) => sum + syllablesOf(word), 0);
  return 0.39 * (words.length / sentences) + 11.8 * (syllables / words.length) - 15.59;
};

/** Groups of vowels, a silent last e aside. */
const syllablesOf = (word: string): number =>
  Math.max(
    1,
    word
      .toLowerCase()
      .replace(/e$/, '')
      .match(/[aeiouy]+/g)?.length ?? 1,
  );

/** Words of the trade that no shorter word stands for count as two syllables. */
const PLAIN: readonly [RegExp, string][] = [
  [/\{\w+\}/g, 'ink'],
  [/alumin\w+|ammonia|oxidisers?|extraction|acetone|peroxide|vegetable/gi, 'metal'],
];

const inPlainWords = (text: string): string =>
  PLAIN.reduce((rest, [pattern, plain]) => rest.replace(pattern, plain), text);

describe('the reading grade', () => {
  it('knows an easy line from a hard one', () => {
    expect(gradeOf('Hang rollers up.')).toBeLessThan(4);
    expect(
      gradeOf('Occupational exposure necessitates appropriate respiratory protection.'),
    ).toBeGreaterThan(12);
  });

  it('of every line of a sheet is 8 or below', () => {
    const hard = catalogue.lines
      .map((line) => ({ id: line.id, grade: gradeOf(inPlainWords(`${line.head} ${line.rest}`)) }))
      .filter(({ grade }) => grade > 8);
    expect(hard).toEqual([]);
  });

  it('of what the small sums say of themselves is 8 or below', () => {
    const hard = Object.entries(files.messages)
      .filter(([key]) => /^sums\..*(lead|words|says)$/.test(key))
      .map(([key, text]) => ({ key, grade: gradeOf(inPlainWords(text)) }))
      .filter(({ grade }) => grade > 8);
    expect(hard).toEqual([]);
  });

  it('of every sentence about the air is 8 or below', () => {
    const hard = Object.entries(files.messages)
      .filter(([key, text]) => /^air\./.test(key) && text.endsWith('.'))
      .map(([key, text]) => ({ key, grade: gradeOf(inPlainWords(text)) }))
      .filter(({ grade }) => grade > 8);
    expect(hard).toEqual([]);
  });

  it('of every stop line and every first-aid row is 8 or below', () => {
    const texts = [
      ...catalogue.neverTogether.map(({ id, words }) => ({ id, text: words })),
      ...catalogue.firstAid.map(({ id, steps, never = [] }) => ({
        id,
        text: [...steps, ...never].join(' '),
      })),
    ];
    const hard = texts
      .map(({ id, text }) => ({ id, grade: gradeOf(inPlainWords(text)) }))
      .filter(({ grade }) => grade > 8);
    expect(hard).toEqual([]);
  });
});
