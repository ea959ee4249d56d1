import { z } from 'zod';
import {
  concentration,
  meanConcentration,
  nearField,
  oneZone,
  twoZones,
  type Zones,
} from '../../../server/reasoning/index.js';
import { aCheck } from '../aCheck.js';

const number = z.number();
/** Rates of two zones as YAML gives them. */
const zonesOf = z.strictObject({
  airM3PerMin: number,
  exchangeM3PerMin: number,
  nearM3: number,
  farM3: number,
});

const constant = (mgMin: number) => ({ fromMin: 0, toMin: Infinity, mgMin, fadePerMin: 0 });
const dyingAway = (mg: number, fadePerMin: number) => ({
  ...constant(mg * fadePerMin),
  fadePerMin,
});

/** When the curve of one dying source is highest, by halving where its slope turns. */
const peakMin = (zones: Zones, source: ReturnType<typeof dyingAway>): number => {
  const rises = (min: number): boolean =>
    concentration(zones, [source], min + 1e-6).nearMgM3 >
    concentration(zones, [source], min).nearMgM3;
  let [from, to] = [0, 1000];
  for (let step = 0; step < 60; step += 1) {
    const middle = (from + to) / 2;
    if (rises(middle)) from = middle;
    else to = middle;
  }
  return from;
};

/** Air at the bench and in the room: answered by the project's own functions; only units are changed here. */
export const zonesChecks = {
  'near field': aCheck(z.strictObject({ radiusM: number, airSpeedMMin: number }), nearField),
  'zones in the end': aCheck(zonesOf.extend({ mgMin: number }), ({ mgMin, ...room }) => {
    const { nearMgM3, farMgM3 } = concentration(twoZones(room), [constant(mgMin)], 1e6);
    return { nearMgM3, farMgM3, ratio: nearMgM3 / farMgM3 };
  }),
  'zones after a while': aCheck(
    zonesOf.extend({ mgMin: number, min: number }),
    ({ mgMin, min, ...room }) => {
      const zones = twoZones(room);
      return {
        rates: zones.modes.map(({ rate }) => rate),
        ...concentration(zones, [constant(mgMin)], min),
      };
    },
  ),
  'zones with a dying source': aCheck(
    zonesOf.extend({ mg: number, fadePerMin: number, min: number }),
    ({ mg, fadePerMin, min, ...room }) =>
      concentration(twoZones(room), [dyingAway(mg, fadePerMin)], min),
  ),
  'one room with a dying source': aCheck(
    z.strictObject({
      volumeM3: number,
      airM3PerMin: number,
      mg: number,
      fadePerMin: number,
      min: number,
      meanToMin: number,
    }),
    ({ volumeM3, airM3PerMin, mg, fadePerMin, min, meanToMin }) => {
      const zones = oneZone({ volumeM3, airM3PerMin });
      const source = dyingAway(mg, fadePerMin);
      const peak = peakMin(zones, source);
      return {
        mgM3: concentration(zones, [source], min).nearMgM3,
        peakMin: peak,
        peakMgM3: concentration(zones, [source], peak).nearMgM3,
        meanMgM3: meanConcentration(zones, [source], 0, meanToMin).nearMgM3,
      };
    },
  ),
} as const;
