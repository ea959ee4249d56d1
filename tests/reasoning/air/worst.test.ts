import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { twoZones } from '../../../server/reasoning/index.js';
import { expOver2, expOver3 } from '../../../server/reasoning/air/exponentials.js';
import { comesDownTo, crossing } from '../../../server/reasoning/air/roots.js';
import { type Track, makeTrack } from '../../../server/reasoning/air/track.js';
import { type Paces, belowFrom, peakOf, worstMeanOf } from '../../../server/reasoning/air/worst.js';
import { runs } from '../../support/arbitraries.js';

const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.double({ min, max, noNaN: true });

const aDay: fc.Arbitrary<{ readonly track: Track; readonly paces: Paces }> = fc
  .record({
    airM3PerMin: between(0.05, 20),
    farM3: between(10, 200),
    tracks: fc.array(
      fc.record({
        weight: between(0.01, 5),
        fade: between(0.005, 2),
        uses: fc.array(
          fc.record({
            fromMin: between(0, 240),
            lasts: fc.oneof(fc.constant(Infinity), between(1, 60)),
            mgMin: between(1, 2000),
            isSteady: fc.boolean(),
          }),
          { minLength: 1, maxLength: 4 },
        ),
      }),
      { minLength: 1, maxLength: 3 },
    ),
  })
  .map(({ airM3PerMin, farM3, tracks }) => {
    const zones = twoZones({ airM3PerMin, exchangeM3PerMin: 9.4, nearM3: 2.1, farM3 });
    const paces = [...zones.modes.map(({ rate }) => -rate), ...tracks.map(({ fade }) => fade)];
    const sources = tracks.flatMap(({ weight, fade, uses }) =>
      uses.map(({ fromMin, lasts, mgMin, isSteady }) => ({
        fromMin,
        toMin: isSteady ? fromMin + Math.min(lasts, 60) : fromMin + lasts,
        mgMin: mgMin * weight,
        fadePerMin: isSteady ? 0 : fade,
      })),
    );
    return {
      track: makeTrack(zones, sources),
      paces: { quickest: Math.max(...paces), slowest: Math.min(...paces) },
    };
  });

const LAST = 900;
const scanned = (value: (min: number) => number): number => {
  let most = 0;
  for (let min = 0; min < LAST; min += 0.25) most = Math.max(most, value(min));
  return most;
};
const HAIR = 1 - 1e-9;

describe('the highest at the bench', () => {
  it('is never below what a scan of every quarter minute finds, and stands at its time', () => {
    fc.assert(
      fc.property(aDay, ({ track, paces }) => {
        const { value, atMin } = peakOf(track, paces);
        expect(value).toBeGreaterThanOrEqual(scanned((min) => track.near(min)) * HAIR);
        expect(track.near(atMin)).toBeCloseTo(value, 9);
      }),
      runs(100),
    );
  });

  it('over a quarter of an hour and a day is never below a scan either', () => {
    fc.assert(
      fc.property(aDay, fc.constantFrom(15, 480), ({ track, paces }, window) => {
        const mean = (min: number): number =>
          (track.nearSum(min) - track.nearSum(min - window)) / window;
        const { value, atMin } = worstMeanOf(track, paces, window, peakOf(track, paces).value);
        expect(value).toBeGreaterThanOrEqual(scanned(mean) * HAIR);
        expect(mean(atMin)).toBeCloseTo(value, 9);
      }),
      runs(100),
    );
  });

  it('stays below a level from when it says on, and not before', () => {
    fc.assert(
      fc.property(aDay, between(0.02, 0.9), ({ track, paces }, share) => {
        const level = peakOf(track, paces).value * share;
        const from = belowFrom(track, paces, level, 300) ?? Number.NaN;
        for (let min = from; min < from + LAST; min += 1) {
          expect(track.near(min)).toBeLessThanOrEqual(level * (1 + 1e-6));
        }
        if (from > 300) expect(track.near(from - 0.01)).toBeGreaterThan(level * HAIR);
      }),
      runs(100),
    );
  });
});

describe('what it is worked out with', () => {
  it('divides differences of exponentials without losing digits where they meet', () => {
    expect(expOver2(-3, -3)).toBe(Math.exp(-3));
    expect(expOver2(-3, -3 - 1e-9)).toBeCloseTo(Math.exp(-3), 9);
    expect(expOver2(0, -2000)).toBeCloseTo(1 / 2000, 12);
    expect(expOver3(-2, -2, -2)).toBeCloseTo(Math.exp(-2) / 2, 14);
    expect(expOver3(0, -1e-7, -2e-7)).toBeCloseTo(0.5, 6);
    // From the definition, where the three are far apart.
    const [x, y, z] = [0, -3, -11] as const;
    const wanted = (expOver2(x, y) - expOver2(y, z)) / (x - z);
    expect(expOver3(x, y, z)).toBeCloseTo(wanted, 14);
    expect(expOver3(z, x, y)).toBeCloseTo(wanted, 14);
    expect(expOver3(y, z, x)).toBeCloseTo(wanted, 14);
  });

  it('finds where a function crosses nought, from either side', () => {
    expect(crossing((x) => 2 - x * x, 0, 10)).toBeCloseTo(Math.SQRT2, 11);
    expect(crossing((x) => x * x - 2, 10, 0)).toBeCloseTo(Math.SQRT2, 11);
    expect(crossing((x) => 1 - x, 0, 1)).toBe(1);
    expect(crossing((x) => (x < 0.3 ? 1 : -1), 0, 1)).toBeCloseTo(0.3, 9);
  });

  it('finds where a function that falls comes down to a level, or that it never does', () => {
    const falling = (x: number): number => 0.5 + 20 / (x + 1);
    for (const guess of [0.1, 39, 4000]) {
      expect(comesDownTo(falling, 1, guess, 1e6)).toBeCloseTo(39, 8);
    }
    expect(comesDownTo(falling, 30, 10, 1e6)).toBe(0);
    expect(comesDownTo(falling, 0.5, 10, 1e6)).toBeUndefined();
    expect(comesDownTo(falling, 0.5, 1e7, 1e6)).toBeUndefined();
  });
});
