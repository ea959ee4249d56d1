import { z } from 'zod';
import {
  airPerPerson,
  changesByFloor,
  effectiveChanges,
  flowFromHalfLife,
  M2_IN_FT2,
  M3_PER_HOUR_IN_CFM,
  M_IN_FT,
  minutesToRemove,
  mixingFactorOf,
  shareLeft,
  steadyLevel,
  timeTo,
} from '../../../server/reasoning/index.js';
import { aCheck } from '../aCheck.js';

const number = z.number();
const numbers = z.array(number);
const S_IN_HOUR = 3600;

/** Rooms that fill and clear: answered by the project's own functions; only units are changed here. */
export const roomChecks = {
  'time to a level': aCheck(
    z.strictObject({
      vapour: number,
      flow: number,
      volume: number,
      mixingFactor: number,
      partsInAll: number,
      start: number,
      target: number,
    }),
    ({ vapour, volume, partsInAll, start, target, ...room }) => {
      const airing = {
        start,
        changes: effectiveChanges({ volume, ...room }) ?? 0,
        rise: (vapour / volume) * partsInAll,
      };
      return { rate: airing.changes, steady: steadyLevel(airing), time: timeTo(target, airing) };
    },
  ),
  'purge by efficiency': aCheck(
    z.strictObject({ efficiency: number, changesPerMin: number, start: number, target: number }),
    ({ efficiency, changesPerMin, start, target }) => {
      const mixingFactor = mixingFactorOf(efficiency) ?? 0;
      const changes = effectiveChanges({ flow: changesPerMin, volume: 1, mixingFactor }) ?? 0;
      const minutes = timeTo(target, { start, changes, rise: 0 }) ?? 0;
      return { minutes, airChanges: minutes * changesPerMin };
    },
  ),
  'flow by half-life': aCheck(
    z.strictObject({ volumeM3: number, hours: number }),
    ({ volumeM3, hours: halfLife }) => ({
      m3PerHour: flowFromHalfLife(volumeM3, halfLife),
      changesPerHour: flowFromHalfLife(1, halfLife),
    }),
  ),
  'minutes to clear': aCheck(
    z.strictObject({ changesPerHour: number, percent: numbers }),
    ({ changesPerHour, percent }) =>
      percent.map((each) => minutesToRemove(each / 100, { changesPerHour, mixingFactor: 1 })),
  ),
  'percent left': aCheck(z.strictObject({ airChanges: numbers }), ({ airChanges }) =>
    airChanges.map((each) => 100 * shareLeft(each)),
  ),
  'air for each person': aCheck(
    z.strictObject({ personRate: numbers, floorRate: numbers, peoplePerFloor: numbers }),
    ({ personRate, floorRate, peoplePerFloor }) =>
      personRate.map((rate, at) =>
        airPerPerson({
          personRate: rate,
          floorRate: floorRate[at] ?? 0,
          peoplePerFloor: peoplePerFloor[at] ?? 0,
        }),
      ),
  ),
  'air changes by the floor': aCheck(
    z.strictObject({ cfmPerFt2: number, heightFt: number, lPerSecM2: number, heightM: number }),
    ({ cfmPerFt2, heightFt, lPerSecM2, heightM }) => {
      const lPerSec = (cfmPerFt2 * M3_PER_HOUR_IN_CFM * 1000) / S_IN_HOUR / M2_IN_FT2;
      return {
        us: changesByFloor(lPerSec, heightFt * M_IN_FT),
        metric: changesByFloor(lPerSecM2, heightM),
      };
    },
  ),
} as const;
