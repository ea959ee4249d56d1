import { z } from 'zod';
import {
  airForMeasure,
  fireFlow,
  G_IN_LB,
  healthFlow,
  hotFlow,
  ML_IN_US_PINT,
  molarVolume,
  sumOfFractions,
  summedFlow,
  vapourCfm,
  vapourM3PerHour,
} from '../../../server/reasoning/index.js';
import { aCheck } from '../aCheck.js';

const number = z.number();
const numbers = z.array(number);
const S_IN_HOUR = 3600;
const MIN_IN_HOUR = 60;
const ML_IN_US_GALLON = ML_IN_US_PINT * 8;
const celsius = (kelvin: number): number => kelvin - 273.15;
const usPart = z.strictObject({
  specificGravity: number,
  pintsPerMin: number,
  molarMassGMol: number,
  limitPpm: number,
  mixingFactor: number,
});

const liquid = z.strictObject({
  densityKgL: number,
  litresPerHour: number,
  molarMassGMol: number,
  molarVolumeLMol: number,
});

const vapourOf = ({ litresPerHour, ...rest }: z.infer<typeof liquid>): number =>
  vapourM3PerHour({ mlPerHour: litresPerHour * 1000, ...rest });

/** Air that thins vapour: answered by the project's own functions; only units are changed here. */
export const thinningChecks = {
  'air for health, US': aCheck(usPart, (part) => {
    const { limitPpm, mixingFactor } = part;
    const cfm = (factor: number) => healthFlow(vapourCfm(part), { limitPpm, mixingFactor: factor });
    return { wellMixedCfm: cfm(1), cfm: cfm(mixingFactor) };
  }),
  'air for health': aCheck(
    liquid.extend({ limitPpm: number, mixingFactor: number }),
    ({ limitPpm, mixingFactor, ...made }) => {
      const flow = healthFlow(vapourOf(made), { limitPpm, mixingFactor }) ?? 0;
      return { m3PerHour: flow, m3PerSec: flow / S_IN_HOUR };
    },
  ),
  'air for two liquids, US': aCheck(
    z.strictObject({ parts: z.array(usPart), airbornePpm: numbers }),
    ({ parts, airbornePpm }) => {
      const flows = parts.map((part) => healthFlow(vapourCfm(part), part));
      return {
        sumOfFractions: sumOfFractions(
          parts.map(({ limitPpm }, at) => ({ level: airbornePpm[at] ?? 0, limit: limitPpm })),
        ),
        cfm: flows,
        totalCfm: summedFlow(flows),
      };
    },
  ),
  'air for an adhesive': aCheck(
    z.strictObject({
      gallonsPerHour: number,
      solventShare: number,
      densityKgL: number,
      molarMassGMol: number,
      kelvin: number,
      limitPpm: number,
      mixingFactor: number,
    }),
    ({ gallonsPerHour, solventShare, densityKgL, molarMassGMol, kelvin, ...limit }) => {
      const mlPerHour = gallonsPerHour * ML_IN_US_GALLON * solventShare;
      const molarVolumeLMol = molarVolume({ temperatureC: celsius(kelvin) });
      const made = { mlPerHour, densityKgL, molarMassGMol, molarVolumeLMol };
      const litresMin = (vapourM3PerHour(made) * 1000) / MIN_IN_HOUR;
      return {
        poundsPerHour: (mlPerHour * densityKgL) / G_IN_LB,
        gramsPerMin: (mlPerHour * densityKgL) / MIN_IN_HOUR,
        vapourLPerMin: litresMin,
        airLPerMin: healthFlow(litresMin, limit),
      };
    },
  ),
  'air against fire, US': aCheck(
    z.strictObject({
      specificGravity: number,
      pintsPerMin: number,
      molarMassGMol: number,
      lelPercent: number,
      safetyFactor: number,
      heatFactor: number,
      ovenF: number,
    }),
    ({ lelPercent, safetyFactor, heatFactor, ovenF, ...part }) => {
      const cfm =
        fireFlow(vapourCfm(part), { lelPercent, shareOfLel: 1 / safetyFactor, heatFactor }) ?? 0;
      return { cfm, hotCfm: hotFlow(cfm, ((ovenF - 32) * 5) / 9) };
    },
  ),
  'air against fire': aCheck(
    liquid.extend({ lelPercent: number, safetyFactor: number, heatFactor: number }),
    ({ lelPercent, safetyFactor, heatFactor, ...made }) => ({
      m3PerSec:
        (fireFlow(vapourOf(made), { lelPercent, shareOfLel: 1 / safetyFactor, heatFactor }) ?? 0) /
        S_IN_HOUR,
    }),
  ),
  'air for a gallon': aCheck(
    z.strictObject({ vapourFt3: number, lelPercent: number, safetyFactor: number }),
    ({ vapourFt3, ...limit }) => airForMeasure(vapourFt3, limit),
  ),
} as const;
