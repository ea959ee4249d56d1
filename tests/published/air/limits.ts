import { z } from 'zod';
import {
  doseFactor,
  hydrocarbonLimit,
  lflOfMixture,
  longShiftFactor,
  mgM3ToPpm,
  mixtureDensity,
  mixtureLimit,
  molarVolume,
  PA_IN_MM_HG,
  ppmToMgM3,
  roundLimit,
  saturatedPpm,
  sumOfFractions,
  totalLevel,
  totalPercent,
  vapourDensity,
  vapourOver,
  weightedAverage,
  worstAverage,
} from '../../../server/reasoning/index.js';
import { catalogue } from '../../support/rules.js';
import { aCheck } from '../aCheck.js';

const number = z.number();
const numbers = z.array(number);
const MIN_IN_HOUR = 60;
const celsius = (kelvin: number): number => kelvin - 273.15;
const levels = z.array(z.strictObject({ level: number, limit: number }));
const hours = z.array(z.strictObject({ level: number, hours: number }));

/** Levels, and levels beside their limits: answered by the project's own functions; only units are changed here. */
export const limitsChecks = {
  /* Units */
  'ppm in mg/m3': aCheck(
    z.strictObject({ ppm: number, molarMassGMol: number, molarVolumeLMol: number }),
    ({ ppm, molarMassGMol, molarVolumeLMol }) => ppmToMgM3(ppm, molarMassGMol, molarVolumeLMol),
  ),
  'mg/m3 in ppm': aCheck(
    z.strictObject({ mgM3: number, molarMassGMol: number, molarVolumeLMol: number }),
    ({ mgM3, molarMassGMol, molarVolumeLMol }) => mgM3ToPpm(mgM3, molarMassGMol, molarVolumeLMol),
  ),
  'molar volume': aCheck(z.strictObject({ kelvin: numbers, pa: number }), ({ kelvin, pa }) =>
    kelvin.map((each) => molarVolume({ temperatureC: celsius(each), pressurePa: pa })),
  ),
  'vapour density': aCheck(z.strictObject({ molarMassGMol: number }), ({ molarMassGMol }) =>
    vapourDensity(molarMassGMol),
  ),
  'density of air with vapour': aCheck(
    z.strictObject({ ppm: number, molarMassGMol: number }),
    ({ ppm, molarMassGMol }) => mixtureDensity(ppm, molarMassGMol),
  ),

  /* Limits */
  'vapour over a mixture': aCheck(
    z.strictObject({ moleFraction: numbers, mmHg: numbers, limitPpm: numbers }),
    ({ moleFraction, mmHg, limitPpm }) => {
      const over = vapourOver(
        moleFraction.map((fraction, at) => ({
          moleFraction: fraction,
          vapourPressurePa: (mmHg[at] ?? 0) * PA_IN_MM_HG,
          limitPpm: limitPpm[at] ?? 0,
        })),
      );
      return { ...over, atLimitPpm: over.shares.map((share) => share * (over.limitPpm ?? 0)) };
    },
  ),
  'vapour at a pressure': aCheck(
    z.strictObject({ partialMmHg: numbers, limitPpm: numbers }),
    ({ partialMmHg, limitPpm }) => {
      const saturated = partialMmHg.map((mmHg) => saturatedPpm(mmHg * PA_IN_MM_HG));
      return {
        saturatedPpm: saturated,
        limitPpm: mixtureLimit(saturated.map((level, at) => ({ level, limit: limitPpm[at] ?? 0 }))),
      };
    },
  ),
  'average of 8 hours': aCheck(z.strictObject({ periods: hours }), ({ periods }) =>
    weightedAverage(
      periods.map((one) => ({ level: one.level, minutes: one.hours * MIN_IN_HOUR })),
      8 * MIN_IN_HOUR,
    ),
  ),
  'average of 15 minutes': aCheck(
    z.strictObject({ periods: z.array(z.strictObject({ level: number, minutes: number })) }),
    ({ periods }) => worstAverage(periods, 15),
  ),
  'vapours together': aCheck(z.strictObject({ parts: levels }), ({ parts }) => ({
    fractions: parts.map((part) => sumOfFractions([part])),
    sum: sumOfFractions(parts),
    total: totalLevel(parts),
    limit: mixtureLimit(parts),
  })),
  'long shift': aCheck(
    z.strictObject({ hours: number, limit: number }),
    ({ hours: shift, limit }) => ({
      factor: longShiftFactor(shift),
      limit: limit * longShiftFactor(shift),
      limitByDose: limit * doseFactor(shift),
    }),
  ),
  'hydrocarbon limit': aCheck(
    z.strictObject({
      parts: z.array(
        z.union([
          z.strictObject({ share: number, group: z.string() }),
          z.strictObject({ share: number, limitMgM3: number }),
        ]),
      ),
    }),
    ({ parts }) => hydrocarbonLimit(catalogue.hydrocarbons, parts),
  ),
  'rounded limit': aCheck(
    z.strictObject({ column: z.string(), limitMgM3: number }),
    ({ column, limitMgM3 }) => {
      const rounding = catalogue.hydrocarbons.columns.find(({ id }) => id === column)?.rounding;
      return rounding && roundLimit(limitMgM3, rounding);
    },
  ),
  'flammable limit of a mixture': aCheck(
    z.strictObject({
      parts: z.array(z.strictObject({ percent: number, lflPercent: number })),
    }),
    ({ parts }) => ({ lflPercent: lflOfMixture(parts), totalPercent: totalPercent(parts) }),
  ),
} as const;
