import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  mgM3ToPpm,
  molarVolume,
  ppmToMgM3,
  REFERENCE_MOLAR_VOLUME,
  saturatedMgM3,
  saturatedPpm,
} from '../../../server/reasoning/index.js';

const positive = fc.double({ min: 0.001, max: 1e6, noNaN: true });

test('a level comes back the same from mg/m3', () => {
  fc.assert(
    fc.property(positive, positive, positive, (ppm, molarMass, volume) => {
      const mgM3 = ppmToMgM3(ppm, molarMass, volume);
      expect(mgM3ToPpm(mgM3, molarMass, volume) / ppm).toBeCloseTo(1, 9);
    }),
  );
});

test('the reference turns a limit into no more mg/m3 than 20 °C does', () => {
  const warmth = molarVolume({ temperatureC: 20 });
  expect(ppmToMgM3(50, 92, REFERENCE_MOLAR_VOLUME)).toBeLessThan(ppmToMgM3(50, 92, warmth));
});

test('thin air takes more room', () => {
  expect(molarVolume({ temperatureC: 20, pressurePa: 50_000 })).toBeGreaterThan(
    molarVolume({ temperatureC: 20 }),
  );
});

test('air never holds more than all of itself, as over a liquid that boils', () => {
  expect(saturatedPpm(500_000)).toBe(1e6);
  expect(saturatedMgM3(500_000, 58, 20)).toBe(saturatedMgM3(101_325, 58, 20));
});

test('turpentine at 20 °C can fill air with grams, not milligrams', () => {
  // 136 g/mol at 500 Pa: M P / (R T) by hand.
  expect(saturatedMgM3(500, 136, 20)).toBeCloseTo(27_898, -1);
});
