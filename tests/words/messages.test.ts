import { expect, it } from 'vitest';
import { makeMessages } from '../../server/words/index.js';

const t = makeMessages({ 'ready.chosen': 'the least of {n} plans', plain: 'Slab {x}' });

it('fills messages and leaves what it is not given', () => {
  expect(t('ready.chosen', { n: 12 })).toBe('the least of 12 plans');
  expect(t('plain')).toBe('Slab {x}');
});

it('refuses a key that has no words', () => {
  expect(() => t('toString')).toThrow('no words for "toString"');
});
