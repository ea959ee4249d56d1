import {
  doseFactor,
  longShiftFactor,
  mixtureLimit,
  SHIFT_HOURS,
  sumOfFractions,
  totalLevel,
  vapourOver,
  weightedAverage,
  worstAverage,
} from '../../reasoning/index.js';
import { asks, mayAsk } from './sumsFields.js';
import { aSum, orNever, unitsApart, type Figure } from './sumsSum.js';

const MIN_IN_HOUR = 60;
/** The span of short-term limits. */
const SHORT_MINUTES = 15;

const level = asks('level', 0, 10_000_000);
const limit = asks('level', 0.001, 10_000_000);
const lists = {
  parts: { fields: { level, limit }, most: 20, shown: 3, isOptional: true },
  liquids: {
    fields: {
      moleFraction: asks('plain', 0, 1),
      vapourPressure: asks('pressure', 0, 1_000_000),
      limit: asks('ppm', 0.001, 1_000_000),
    },
    most: 20,
    shown: 3,
    isOptional: true,
  },
  periods: {
    fields: { level, time: asks('time', 0, 1440) },
    most: 40,
    shown: 4,
    isOptional: true,
  },
} as const;

/** Vapours together beside their limits, over a liquid or in the air, and averages over a day. */
export const mixture = aSum({
  id: 'mixture',
  fields: { shift: mayAsk('hours', 1, 24) },
  lists,
  answers: {
    sumOfFractions: 'plain',
    total: 'level',
    mixtureLimit: 'level',
    liquidLimit: 'ppm',
    average8h: 'level',
    worst15Min: 'level',
    shiftFactor: 'plain',
    doseFactor: 'plain',
    sumForShift: 'plain',
  },
  rowAnswers: { liquids: { saturated: 'ppm', shareOfVapour: 'plain', atLimit: 'ppm' } },
  sources: ['osha-1910-1000-d', 'process-safety-textbook', 'brief-scala-1975', 'osha-1910-1000'],
  wrong: (_values, { parts, liquids, periods }) => [
    ...unitsApart(
      parts.flatMap((part, row) => [
        { path: `/parts/${row}/level`, unit: part.level.unit },
        { path: `/parts/${row}/limit`, unit: part.limit.unit },
      ]),
    ),
    ...unitsApart(
      periods.map((period, row) => ({ path: `/periods/${row}/level`, unit: period.level.unit })),
    ),
    ...(parts.length + liquids.length + periods.length === 0
      ? [{ path: '/parts', accepts: 'sums.wrong.noRows' }]
      : []),
  ],
  work: ({ shift }, { parts, liquids, periods }) => {
    const plain = parts.map((part) => ({ level: part.level.base, limit: part.limit.base }));
    const spans = periods.map((one) => ({ level: one.level.base, minutes: one.time.base }));
    const inUnit = (unit: string | undefined, found: number | undefined): Figure =>
      unit === undefined ? undefined : { [unit]: orNever(found) };
    const [partUnit, periodUnit] = [parts[0]?.level.unit, periods[0]?.level.unit];
    const over = vapourOver(
      liquids.map((one) => ({
        moleFraction: one.moleFraction.base,
        vapourPressurePa: one.vapourPressure.base,
        limitPpm: one.limit.base,
      })),
    );
    const sum = parts.length === 0 ? undefined : sumOfFractions(plain);
    const factor = shift && longShiftFactor(shift.base);
    return {
      figures: {
        sumOfFractions: sum,
        total: inUnit(partUnit, totalLevel(plain)),
        mixtureLimit: inUnit(partUnit, mixtureLimit(plain)),
        liquidLimit: liquids.length === 0 ? undefined : orNever(over.limitPpm),
        average8h: inUnit(periodUnit, weightedAverage(spans, SHIFT_HOURS * MIN_IN_HOUR)),
        worst15Min: inUnit(periodUnit, worstAverage(spans, SHORT_MINUTES)),
        shiftFactor: factor,
        doseFactor: shift && doseFactor(shift.base),
        sumForShift:
          factor === undefined || sum === undefined ? undefined : factor > 0 ? sum / factor : null,
      },
      rows: {
        liquids: over.shares.map((share, row) => ({
          saturated: over.saturatedPpm[row],
          shareOfVapour: share,
          atLimit: over.limitPpm === undefined ? null : share * over.limitPpm,
        })),
      },
    };
  },
});
