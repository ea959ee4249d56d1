import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mixtureLimit, sumOfFractions, vapourOver } from '../../../server/reasoning/index.js';

const part = fc.record({
  level: fc.double({ min: 0.001, max: 1000, noNaN: true }),
  limit: fc.double({ min: 0.1, max: 1000, noNaN: true }),
});

test('one more vapour never uses up less of the limit', () => {
  fc.assert(
    fc.property(fc.array(part), part, (parts, more) => {
      expect(sumOfFractions([...parts, more])).toBeGreaterThanOrEqual(sumOfFractions(parts) ?? NaN);
    }),
  );
});

test('the limit of a mixture lies between the limits of its parts', () => {
  fc.assert(
    fc.property(fc.array(part, { minLength: 1 }), (parts) => {
      const limit = mixtureLimit(parts) ?? NaN;
      const limits = parts.map((each) => each.limit);
      expect(limit).toBeGreaterThanOrEqual(Math.min(...limits) * (1 - 1e-9));
      expect(limit).toBeLessThanOrEqual(Math.max(...limits) * (1 + 1e-9));
    }),
  );
});

test('a limit of nothing, or air with nothing in it, has no answer', () => {
  expect(sumOfFractions([{ level: 1, limit: 0 }])).toBeUndefined();
  expect(mixtureLimit([{ level: 0, limit: 10 }])).toBeUndefined();
  expect(mixtureLimit([{ level: 1, limit: 0 }])).toBeUndefined();
});

test('a liquid that gives off nothing has no vapour to judge', () => {
  const oil = { moleFraction: 1, vapourPressurePa: 0, limitPpm: 50 };
  expect(vapourOver([oil])).toEqual({ saturatedPpm: [0], shares: [0], limitPpm: undefined });
});
