import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  massTransfer,
  openSurfaceGS,
  outdoorPoolGS,
  penetrationGS,
  penetrationPoundsGS,
  penetrationShortGS,
  saturatedMgM3,
  spillMgM3,
  windFactor,
} from '../../../server/reasoning/index.js';

const surface = { molarMassGMol: 92, vapourPressurePa: 3760, temperatureC: 25, areaM2: 1 };
const over = { airSpeedMS: 0.1, lengthM: 0.3 };

test('water passes into the air as fast as it was measured, heavier vapours more slowly', () => {
  expect(massTransfer(18)).toBe(0.0083);
  expect(massTransfer(92)).toBeLessThan(massTransfer(46));
  expect(massTransfer(18, 0.005)).toBe(0.005);
});

test('more surface, more vapour pressure and more moving air never make less vapour', () => {
  const more = fc.double({ min: 1, max: 50, noNaN: true });
  fc.assert(
    fc.property(more, (times) => {
      const larger = { ...surface, areaM2: times };
      const stronger = { ...surface, vapourPressurePa: 3760 * times };
      const faster = { ...over, airSpeedMS: 0.1 * times };
      expect(openSurfaceGS(larger)).toBeGreaterThanOrEqual(openSurfaceGS(surface));
      expect(openSurfaceGS(stronger)).toBeGreaterThanOrEqual(openSurfaceGS(surface));
      expect(penetrationGS(surface, faster)).toBeGreaterThanOrEqual(penetrationGS(surface, over));
      expect(outdoorPoolGS(surface, windFactor(times))).toBeGreaterThanOrEqual(
        outdoorPoolGS(surface, windFactor(1)),
      );
    }),
  );
});

test('the three forms of the penetration model agree within two per cent on all that is used here', () => {
  const molarMass = fc.double({ min: 40, max: 200, noNaN: true });
  const warmth = fc.double({ min: 5, max: 35, noNaN: true });
  fc.assert(
    fc.property(molarMass, warmth, (molarMassGMol, temperatureC) => {
      const one = { ...surface, molarMassGMol, temperatureC };
      const metric = penetrationGS(one, over);
      expect(penetrationShortGS(one, over) / metric).toBeCloseTo(1, 1.4);
      expect(penetrationPoundsGS(one, over) / metric).toBeCloseTo(1, 1.4);
    }),
  );
});

test('still air takes nothing away by the model of moving air', () => {
  expect(penetrationGS(surface, { ...over, airSpeedMS: 0 })).toBe(0);
});

test('a spill never fills the air with more than the air can hold', () => {
  const spill = { ml: 5000, densityKgL: 0.87, volumeM3: 20 };
  expect(spillMgM3(spill)).toBe(217_500);
  expect(spillMgM3({ ...spill, vapour: surface })).toBe(saturatedMgM3(3760, 92, 25));
  expect(spillMgM3({ ...spill, ml: 10, vapour: surface })).toBe(435);
});
