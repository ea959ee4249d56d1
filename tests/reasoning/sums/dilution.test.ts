import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  airForMeasure,
  fireFlow,
  healthFlow,
  heatFactor,
  hotFlow,
  molarVolume,
  roomPpm,
  summedFlow,
  vapourCfm,
  vapourM3PerHour,
  M3_PER_HOUR_IN_CFM,
  ML_IN_US_PINT,
} from '../../../server/reasoning/index.js';

const amount = fc.double({ min: 0.01, max: 1000, noNaN: true });
const factor = fc.double({ min: 1, max: 10, noNaN: true });

describe('air for health', () => {
  it('brings the room to its limit, no more and no less', () => {
    fc.assert(
      fc.property(amount, amount, factor, (vapour, limitPpm, mixingFactor) => {
        const flow = healthFlow(vapour, { limitPpm, mixingFactor }) ?? 0;
        const found = roomPpm(vapour, { flow, mixingFactor }) ?? 0;
        expect(found / limitPpm).toBeCloseTo(1, 9);
      }),
    );
  });

  it('never gets less by worse mixing, nor the level higher by more air', () => {
    fc.assert(
      fc.property(amount, factor, factor, (vapour, one, other) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)];
        const flow = (mixingFactor: number) => healthFlow(vapour, { limitPpm: 50, mixingFactor });
        expect(flow(high)).toBeGreaterThanOrEqual(flow(low) ?? Infinity);
        const level = (air: number) => roomPpm(vapour, { flow: air, mixingFactor: 3 });
        expect(level(high)).toBeLessThanOrEqual(level(low) ?? 0);
      }),
    );
  });

  it('is never enough for a limit of nothing, and no air settles nowhere', () => {
    expect(healthFlow(1, { limitPpm: 0, mixingFactor: 1 })).toBeUndefined();
    expect(roomPpm(1, { flow: 0, mixingFactor: 1 })).toBeUndefined();
    expect(summedFlow([1, undefined])).toBeUndefined();
    expect(summedFlow([])).toBe(0);
  });

  it('never counts more vapour than all of the air', () => {
    expect(roomPpm(10, { flow: 1, mixingFactor: 5 })).toBe(1e6);
  });

  it('comes out the same in US units at 70 °F, within half a per cent', () => {
    const metric = vapourM3PerHour({
      mlPerHour: ML_IN_US_PINT * 60,
      densityKgL: 0.8,
      molarMassGMol: 100,
      molarVolumeLMol: molarVolume({ temperatureC: 21.1 }),
    });
    const us = vapourCfm({ pintsPerMin: 1, specificGravity: 0.8, molarMassGMol: 100 });
    expect((us * M3_PER_HOUR_IN_CFM) / metric).toBeGreaterThan(0.995);
    expect((us * M3_PER_HOUR_IN_CFM) / metric).toBeLessThan(1.005);
  });
});

describe('air against fire', () => {
  it('is more in hot air, which burns from less and swells', () => {
    const asked = { lelPercent: 1, shareOfLel: 0.25 };
    const cold = fireFlow(1, { ...asked, heatFactor: heatFactor(20) }) ?? 0;
    expect(cold).toBe(400);
    expect(fireFlow(1, asked)).toBe(cold);
    expect(fireFlow(1, { ...asked, heatFactor: heatFactor(160) })).toBeGreaterThan(cold);
    expect(hotFlow(cold, 160)).toBeGreaterThan(cold);
  });

  it('is never enough where nothing may be there, or the limit is nothing', () => {
    expect(fireFlow(1, { lelPercent: 1, shareOfLel: 0 })).toBeUndefined();
    expect(fireFlow(1, { lelPercent: 0, shareOfLel: 0.25 })).toBeUndefined();
    expect(airForMeasure(1, { lelPercent: 0, safetyFactor: 4 })).toBeUndefined();
  });

  it('protects no health: for white spirit it leaves far more vapour than its limit', () => {
    // LEL 0.6 %, a quarter of it: 1,500 ppm; limits are near 20 to 100 ppm.
    const flow = fireFlow(1, { lelPercent: 0.6, shareOfLel: 0.25 }) ?? 0;
    expect(roomPpm(1, { flow, mixingFactor: 1 })).toBeCloseTo(1500, 6);
  });
});
