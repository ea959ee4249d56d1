import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lflAt, lflOfMixture, shareOfLfl } from '../../../server/reasoning/index.js';

const part = fc.record({
  percent: fc.double({ min: 0, max: 10, noNaN: true }),
  lflPercent: fc.double({ min: 0.5, max: 15, noNaN: true }),
});

test('one more vapour never takes the air further from where it burns', () => {
  fc.assert(
    fc.property(fc.array(part), part, (parts, more) => {
      expect(shareOfLfl([...parts, more])).toBeGreaterThanOrEqual(shareOfLfl(parts) ?? NaN);
    }),
  );
});

test('vapours of one limit have that limit together', () => {
  const parts = [
    { percent: 0.2, lflPercent: 1.1 },
    { percent: 0.3, lflPercent: 1.1 },
  ];
  expect(lflOfMixture(parts)).toBeCloseTo(1.1, 9);
});

test('a limit of nothing, or air with nothing in it, has no answer', () => {
  expect(shareOfLfl([{ percent: 1, lflPercent: 0 }])).toBeUndefined();
  expect(lflOfMixture([{ percent: 0, lflPercent: 1 }])).toBeUndefined();
});

test('warm air burns from less, cold air is given no credit, and no limit is below nothing', () => {
  expect(lflAt(1, 125)).toBeCloseTo(0.9216, 9);
  expect(lflAt(1, -10)).toBe(1);
  expect(lflAt(1, 5000)).toBe(0);
});
