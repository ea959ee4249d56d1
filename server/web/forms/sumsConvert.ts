import {
  mgM3ToPpm,
  mixtureDensity,
  molarVolume,
  ppmToMgM3,
  REFERENCE_MOLAR_VOLUME,
  saturatedPpm,
  vapourDensity,
} from '../../reasoning/index.js';
import { asks, mayAsk, type Given } from './sumsFields.js';
import { aSum, type Figure } from './sumsSum.js';

/** The temperature of the reference molar volume. */
const REFERENCE_C = 25;

/** The molar volume of the temperature and pressure that were given; of neither, the reference. */
export const molarVolumeOf = (temperature: Given | undefined, pressure?: Given): number =>
  temperature || pressure
    ? molarVolume({
        temperatureC: temperature?.base ?? REFERENCE_C,
        ...(pressure && { pressurePa: pressure.base }),
      })
    : REFERENCE_MOLAR_VOLUME;

/** A level in ppm, whichever unit it came in. */
export const ppmOf = ({ base, unit }: Given, molarMassGMol: number, volumeLMol: number): number =>
  unit === 'Ppm' ? base : mgM3ToPpm(base, molarMassGMol, volumeLMol);

/** A level in both units; null where there is none. */
export const bothLevels = (
  ppm: number | undefined,
  molarMassGMol: number,
  volumeLMol: number,
): Figure =>
  ppm === undefined
    ? { Ppm: null, MgM3: null }
    : { Ppm: ppm, MgM3: ppmToMgM3(ppm, molarMassGMol, volumeLMol) };

/** A level from ppm to mg/m3 or back, and how it stands to what the air can hold. */
export const convert = aSum({
  id: 'convert',
  fields: {
    level: mayAsk('level', 0, 10_000_000),
    molarMass: asks('molarMass', 2, 1000),
    vapourPressure: mayAsk('pressure', 0, 1_000_000),
    temperature: mayAsk('temperature', -20, 60),
    pressure: mayAsk('pressure', 10_000, 200_000),
  },
  lists: {},
  answers: {
    level: 'level',
    saturated: 'level',
    saturatedTimes: 'plain',
    vapourDensity: 'plain',
    mixtureDensity: 'plain',
    molarVolume: 'molarVolume',
  },
  rowAnswers: {},
  sources: ['ccohs-conversion', 'prudent-practices-1981'],
  wrong: () => [],
  work: ({ level, molarMass, vapourPressure, temperature, pressure }) => {
    const mass = molarMass.base;
    const volume = molarVolumeOf(temperature, pressure);
    const ppm = level && ppmOf(level, mass, volume);
    const held = vapourPressure && saturatedPpm(vapourPressure.base);
    return {
      figures: {
        level: ppm === undefined ? undefined : bothLevels(ppm, mass, volume),
        saturated: held === undefined ? undefined : bothLevels(held, mass, volume),
        saturatedTimes: held !== undefined && ppm ? held / ppm : undefined,
        vapourDensity: vapourDensity(mass),
        mixtureDensity: ppm === undefined ? undefined : mixtureDensity(ppm, mass),
        molarVolume: volume,
      },
    };
  },
});
