import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  doseFactor,
  longShiftFactor,
  weightedAverage,
  worstAverage,
} from '../../../server/reasoning/index.js';

const period = fc.record({
  level: fc.double({ min: 0, max: 100, noNaN: true }),
  minutes: fc.double({ min: 0, max: 120, noNaN: true }),
});

describe('the worst average', () => {
  it('finds the quarter of an hour that holds the peak, whatever lies round it', () => {
    const day = [
      { level: 10, minutes: 60 },
      { level: 100, minutes: 5 },
      { level: 40, minutes: 5 },
      { level: 0, minutes: 60 },
    ];
    // 100 and 40 for five minutes each, 10 for the other five.
    expect(worstAverage(day, 15)).toBeCloseTo((500 + 200 + 50) / 15, 9);
  });

  it('is no lower than the average over the same span from any minute on', () => {
    fc.assert(
      fc.property(fc.array(period, { minLength: 1, maxLength: 6 }), (periods) => {
        const worst = worstAverage(periods, 15) ?? NaN;
        const alone = periods.map((one) => (one.level * Math.min(15, one.minutes)) / 15);
        expect(worst).toBeGreaterThanOrEqual(Math.max(...alone) - 1e-9);
        expect(worst).toBeLessThanOrEqual(Math.max(...periods.map((one) => one.level)) + 1e-9);
      }),
    );
  });

  it('of no work at all is nothing, and over no time it cannot be said', () => {
    expect(worstAverage([], 15)).toBe(0);
    expect(worstAverage([{ level: 5, minutes: 5 }], 0)).toBeUndefined();
    expect(weightedAverage([], 0)).toBeUndefined();
  });
});

describe('a long shift', () => {
  it('never raises a limit, and lowers it the more the longer it is', () => {
    const hours = fc.double({ min: 0, max: 30, noNaN: true });
    fc.assert(
      fc.property(hours, hours, (one, other) => {
        const [short, long] = [Math.min(one, other), Math.max(one, other)];
        for (const factor of [longShiftFactor, doseFactor]) {
          expect(factor(short)).toBeLessThanOrEqual(1);
          expect(factor(long)).toBeLessThanOrEqual(factor(short));
        }
        expect(longShiftFactor(one)).toBeLessThanOrEqual(doseFactor(one));
      }),
    );
  });

  it('of a whole day and night allows nothing', () => {
    expect(longShiftFactor(24)).toBe(0);
    expect(longShiftFactor(8)).toBe(1);
  });
});
