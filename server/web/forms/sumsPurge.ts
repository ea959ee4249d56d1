import {
  effectiveChanges,
  levelAt,
  meanLevel,
  shareLeft,
  steadyLevel,
  timeTo,
  type Airing,
} from '../../reasoning/index.js';
import { asks, mayAsk, type Fields, type Values } from './sumsFields.js';
import { aSum, orNever, unitsApart, type Figure } from './sumsSum.js';

const PPM_IN_ALL = 1e6;
const MG_IN_G = 1000;
const MIN_IN_HOUR = 60;
const PERCENT = 100;

const fields = {
  volume: asks('volume', 1, 100_000),
  air: asks('air', 0, 1_000_000),
  mixing: asks('mixing', 1, 10),
  start: asks('level', 0, 10_000_000),
  target: asks('level', 0, 10_000_000),
  vapour: mayAsk('vapourRate', 0, 1_000_000),
  time: mayAsk('time', 0, 10_080),
} satisfies Fields;

/** The room as the sum counts with it, by the hour; the unit of its levels beside it. */
const airingOf = ({ volume, air, mixing, start, vapour }: Values<typeof fields>) => {
  const flow = air.unit === 'ChangesPerHour' ? air.base * volume.base : air.base;
  const room = { flow, volume: volume.base, mixingFactor: mixing.base };
  const much = vapour?.unit === 'GPerHour' ? MG_IN_G : PPM_IN_ALL;
  const airing: Airing = {
    start: start.base,
    changes: effectiveChanges(room) ?? 0,
    rise: ((vapour?.base ?? 0) * much) / volume.base,
  };
  return { airing, realChanges: flow / volume.base };
};

/** How long a well-mixed room takes to fill or to clear. */
export const purge = aSum({
  id: 'purge',
  fields,
  lists: {},
  answers: {
    reach: 'minutes',
    airChanges: 'plain',
    steady: 'level',
    levelThen: 'level',
    mean: 'level',
    leftThen: 'percent',
    halfLife: 'minutes',
    effective: 'changes',
  },
  rowAnswers: {},
  sources: ['acgih-ventilation', 'usbr-ventilation-guide', 'mixing-primer'],
  wrong: ({ start, target, vapour }) => [
    ...unitsApart([
      { path: '/start', unit: start.unit },
      { path: '/target', unit: target.unit },
    ]),
    ...(vapour && (vapour.unit === 'GPerHour') !== (start.unit === 'MgM3')
      ? [{ path: `/vapour${vapour.unit}`, accepts: 'sums.wrong.vapourUnit' }]
      : []),
  ],
  work: (values) => {
    const { airing, realChanges } = airingOf(values);
    const { target, start, time } = values;
    const inUnit = (level: number | undefined): Figure => ({ [start.unit]: orNever(level) });
    const hours = time && time.base / MIN_IN_HOUR;
    const reach = timeTo(target.base, airing);
    return {
      figures: {
        reach: reach === undefined ? null : reach * MIN_IN_HOUR,
        airChanges: reach === undefined ? null : reach * realChanges,
        steady: inUnit(steadyLevel(airing)),
        levelThen: hours === undefined ? undefined : inUnit(levelAt(airing, hours)),
        mean: hours === undefined ? undefined : inUnit(meanLevel(airing, hours)),
        leftThen: hours === undefined ? undefined : PERCENT * shareLeft(airing.changes * hours),
        halfLife: airing.changes > 0 ? (Math.LN2 / airing.changes) * MIN_IN_HOUR : null,
        effective: airing.changes,
      },
    };
  },
});
