import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type AirSource,
  concentration,
  meanConcentration,
  oneZone,
  twoZones,
} from '../../server/reasoning/index.js';
import { makeTrack } from '../../server/reasoning/air/track.js';
import { runs } from '../support/arbitraries.js';
import { runOde } from '../support/odeSolver.js';

/** A room as the balances of its air have it; one zone where there is no exchange. */
interface Air {
  readonly airM3PerMin: number;
  readonly exchangeM3PerMin: number | undefined;
  readonly nearM3: number;
  readonly farM3: number;
}

const zonesOf = ({ airM3PerMin, exchangeM3PerMin, nearM3, farM3 }: Air) =>
  exchangeM3PerMin === undefined
    ? oneZone({ airM3PerMin, volumeM3: nearM3 + farM3 })
    : twoZones({ airM3PerMin, exchangeM3PerMin, nearM3, farM3 });

const emitted = (sources: readonly AirSource[], at: number): number =>
  sources.reduce(
    (sum, { fromMin, toMin, mgMin, fadePerMin }) =>
      at < fromMin || at >= toMin ? sum : sum + mgMin * Math.exp(-fadePerMin * (at - fromMin)),
    0,
  );

/** Levels and their sums so far at a time: near, far, sum near, sum far. Stepped from break to break. */
const byOde = (air: Air, sources: readonly AirSource[], at: number): readonly number[] => {
  const { airM3PerMin: q, exchangeM3PerMin: b, nearM3, farM3 } = air;
  const volume = nearM3 + farM3;
  const breaks = sources
    .flatMap(({ fromMin, toMin }) => [fromMin, toMin])
    .filter((min) => min < at)
    .sort((x, y) => x - y);
  const times = [0, ...breaks, at];
  let state = [0, 0, 0, 0];
  for (const [index, from] of times.slice(0, -1).entries()) {
    const to = times[index + 1] ?? from;
    const on = sources.filter(({ fromMin, toMin }) => fromMin <= from && toMin >= to);
    state = runOde(
      (t, [near = 0, far = 0]) => {
        const g = on.reduce(
          (sum, { fromMin, mgMin, fadePerMin }) =>
            sum + mgMin * Math.exp(-fadePerMin * (t - fromMin)),
          0,
        );
        return b === undefined
          ? [(g - q * near) / volume, (g - q * near) / volume, near, near]
          : [(g + b * (far - near)) / nearM3, (b * (near - far) - q * far) / farM3, near, far];
      },
      from,
      state,
      to,
    );
  }
  return state;
};

const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.double({ min, max, noNaN: true });

const anAir: fc.Arbitrary<Air> = fc.record({
  airM3PerMin: fc.oneof(fc.constant(0), between(0.001, 0.05), between(0.05, 40)),
  exchangeM3PerMin: fc.option(between(0.5, 20), { nil: undefined, freq: 3 }),
  nearM3: between(0.3, 4),
  farM3: between(5, 300),
});

/** Steady, dying away or cut off; some fade just as quickly as the room clears. */
const sourcesIn = (air: Air): fc.Arbitrary<readonly AirSource[]> => {
  const rates = zonesOf(air).modes.map(({ rate }) => -rate);
  const near = fc
    .tuple(fc.constantFrom(...rates), fc.constantFrom(0, 1e-12, -1e-9, 1e-6, 1e-4))
    .map(([rate, off]) => Math.max(0, rate + off));
  return fc.array(
    fc
      .record({
        fromMin: between(0, 300),
        lasts: fc.oneof(fc.constant(Infinity), between(0.5, 120)),
        mgMin: between(1, 5000),
        fadePerMin: fc.oneof(fc.constant(0), between(0.001, 3), near),
      })
      .map(({ fromMin, lasts, ...source }) => ({ ...source, fromMin, toMin: fromMin + lasts })),
    { minLength: 1, maxLength: 5 },
  );
};

const aDay = anAir.chain((air) =>
  fc.record({
    air: fc.constant(air),
    sources: sourcesIn(air),
    at: fc.array(between(0.1, 600), { minLength: 2, maxLength: 2 }),
  }),
);

/** Within a millionth of what there is, or of a thousandth of a milligram. */
const close = (found: number, wanted: number): void => {
  expect(Math.abs(found - wanted)).toBeLessThanOrEqual(1e-6 * Math.max(Math.abs(wanted), 1e-3));
};

describe('the air of a room', () => {
  it('is what a general solver of differential equations finds, on 500 days', () => {
    fc.assert(
      fc.property(aDay, ({ air, sources, at }) => {
        const zones = zonesOf(air);
        const [first = 0, second = 0] = [...at].sort((a, b) => a - b);
        const [one, other] = [byOde(air, sources, first), byOde(air, sources, second)];
        const { nearMgM3, farMgM3 } = concentration(zones, sources, second);
        close(nearMgM3, other[0] ?? 0);
        close(farMgM3, other[1] ?? 0);
        if (second - first < 1) return;
        const mean = meanConcentration(zones, sources, first, second);
        close(mean.nearMgM3, ((other[2] ?? 0) - (one[2] ?? 0)) / (second - first));
        close(mean.farMgM3, ((other[3] ?? 0) - (one[3] ?? 0)) / (second - first));
      }),
      runs(500),
    );
  });

  it('loses no milligram: what was let in is there still, or was carried out', () => {
    fc.assert(
      fc.property(aDay, ({ air, sources, at: [at = 0] }) => {
        const track = makeTrack(zonesOf(air), sources);
        const letIn = sources.reduce((sum, { fromMin, toMin, mgMin, fadePerMin }) => {
          const minutes = Math.max(0, Math.min(at, toMin) - fromMin);
          return (
            sum +
            (fadePerMin * minutes < 1e-12
              ? mgMin * minutes
              : (-mgMin * Math.expm1(-fadePerMin * minutes)) / fadePerMin)
          );
        }, 0);
        const { nearM3, farM3, airM3PerMin } = air;
        const there = nearM3 * track.near(at) + farM3 * track.far(at);
        const out = airM3PerMin * track.farSum(at);
        expect(Math.abs(there + out - letIn)).toBeLessThanOrEqual(1e-8 * letIn + 1e-9);
      }),
      runs(500),
    );
  });

  it('is never thinner at the bench than in the room while something is let out there', () => {
    fc.assert(
      fc.property(aDay, ({ air, sources, at: [at = 0] }) => {
        const { nearMgM3, farMgM3 } = concentration(zonesOf(air), sources, at);
        expect(nearMgM3).toBeGreaterThanOrEqual(farMgM3 * (1 - 1e-9));
        expect(farMgM3).toBeGreaterThanOrEqual(-1e-9);
        if (emitted(sources, at) === 0) return;
        expect(nearMgM3).toBeGreaterThan(0);
      }),
      runs(500),
    );
  });

  it('becomes one zone where bench and room exchange their air at once', () => {
    const sources = [{ fromMin: 0, toMin: 30, mgMin: 400, fadePerMin: 0 }];
    const two = twoZones({ airM3PerMin: 3, exchangeM3PerMin: 1e7, nearM3: 2, farM3: 58 });
    const one = oneZone({ airM3PerMin: 3, volumeM3: 60 });
    for (const at of [5, 29, 45, 200]) {
      const { nearMgM3, farMgM3 } = concentration(two, sources, at);
      const { nearMgM3: wanted } = concentration(one, sources, at);
      expect(nearMgM3 / wanted).toBeCloseTo(1, 4);
      expect(farMgM3 / wanted).toBeCloseTo(1, 4);
    }
  });
});
