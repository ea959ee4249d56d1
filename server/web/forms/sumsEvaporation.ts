import {
  diffusivityM2S,
  massTransfer,
  mgM3ToPpm,
  molarVolume,
  openSurfaceGS,
  outdoorPoolGS,
  penetrationGS,
  penetrationPoundsGS,
  penetrationShortGS,
  spillMgM3,
  windFactor,
} from '../../reasoning/index.js';
import { asks, mayAsk, type Fields, type Values } from './sumsFields.js';
import { aSum, type Fault } from './sumsSum.js';

const S_IN_HOUR = 3600;

const fields = {
  molarMass: asks('molarMass', 2, 1000),
  vapourPressure: asks('pressure', 0, 1_000_000),
  temperature: asks('temperature', -20, 60),
  area: asks('area', 0.0001, 100),
  airSpeed: mayAsk('airSpeed', 0, 10),
  length: mayAsk('length', 0.01, 20),
  liquid: mayAsk('liquid', 0, 20_000),
  density: mayAsk('liquidDensity', 0.3, 3),
  volume: mayAsk('volume', 1, 100_000),
} satisfies Fields;
type Asked = Values<typeof fields>;

const surfaceOf = ({ molarMass, vapourPressure, temperature, area }: Asked) => ({
  molarMassGMol: molarMass.base,
  vapourPressurePa: vapourPressure.base,
  temperatureC: temperature.base,
  areaM2: area.base,
});

/** Grams an hour by the forms that count with moving air; nothing where it is not known. */
const movingAir = (asked: Asked) => {
  const { airSpeed, length } = asked;
  if (airSpeed === undefined || length === undefined) return {};
  const surface = surfaceOf(asked);
  const over = { airSpeedMS: airSpeed.base, lengthM: length.base };
  return {
    byAir: penetrationGS(surface, over) * S_IN_HOUR,
    byAirShort: penetrationShortGS(surface, over) * S_IN_HOUR,
    byAirPounds: penetrationPoundsGS(surface, over) * S_IN_HOUR,
    outdoors: outdoorPoolGS(surface, windFactor(airSpeed.base)) * S_IN_HOUR,
  };
};

/** All of it in the air of the room, in both units; undefined where the spill is not described. */
const spillOf = (asked: Asked) => {
  const { liquid, density, volume } = asked;
  if (liquid === undefined || density === undefined || volume === undefined) return undefined;
  const vapour = surfaceOf(asked);
  const mgM3 = spillMgM3({
    ml: liquid.base,
    densityKgL: density.base,
    volumeM3: volume.base,
    vapour,
  });
  const { molarMassGMol, temperatureC } = vapour;
  return { Ppm: mgM3ToPpm(mgM3, molarMassGMol, molarVolume({ temperatureC })), MgM3: mgM3 };
};

/** Faults of a group of fields of which some are given and some are not. */
const allOrNone = (asked: Asked, keys: Readonly<Record<string, string>>): readonly Fault[] => {
  const missing = Object.keys(keys).filter((name) => asked[name as keyof Asked] === undefined);
  return missing.length === Object.keys(keys).length
    ? []
    : missing.map((name) => ({ path: `/${keys[name] ?? name}`, accepts: 'sums.wrong.together' }));
};

/** How fast a liquid lying open evaporates by several published forms, and what a spill comes to. */
export const evaporation = aSum({
  id: 'evaporation',
  fields,
  lists: {},
  answers: {
    highest: 'rate',
    byTransfer: 'rate',
    byAir: 'rate',
    byAirShort: 'rate',
    byAirPounds: 'rate',
    outdoors: 'rate',
    spill: 'level',
    transfer: 'speed',
    spread: 'spread',
  },
  rowAnswers: {},
  sources: [
    'process-safety-textbook',
    'ceb-manual-1991',
    'open-surface-1996',
    'offsite-guidance-1999',
    'spill-example',
    'evaporation-models-1997',
  ],
  wrong: (asked) => [
    ...allOrNone(asked, { airSpeed: 'airSpeedMPerSec', length: 'lengthM' }),
    ...allOrNone(asked, { liquid: 'liquidMl', density: 'densityKgL', volume: 'volumeM3' }),
  ],
  work: (asked) => {
    const surface = surfaceOf(asked);
    const byTransfer = openSurfaceGS(surface) * S_IN_HOUR;
    const moving = movingAir(asked);
    return {
      figures: {
        highest: Math.max(byTransfer, ...Object.values(moving)),
        byTransfer,
        ...moving,
        spill: spillOf(asked),
        transfer: massTransfer(surface.molarMassGMol),
        spread: diffusivityM2S(surface.molarMassGMol, surface.temperatureC),
      },
    };
  },
});
