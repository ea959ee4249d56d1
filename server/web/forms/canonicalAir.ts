import { compare, type AirInput, type AirUse } from '../../reasoning/index.js';

const BOTH_ZONES = 2;
/** Hours of a working day that nobody said is longer or shorter. */
const USUAL_SHIFT = 8;

/**
 * The same day in the air of a room, with nothing said that goes without saying and its uses in the
 * order of the clock, so that equal days have one address. Doing it twice changes nothing.
 */
export function canonicalAir({ zones, shiftHours, ...day }: AirInput): AirInput {
  return {
    ...day,
    uses: day.uses.map(canonicalUse).sort(byClock),
    ...(zones !== undefined && zones !== BOTH_ZONES && { zones }),
    ...(shiftHours !== undefined && shiftHours !== USUAL_SHIFT && { shiftHours }),
  };
}

/** Its keys come in one order, to be compared as text. */
function canonicalUse(use: AirUse): AirUse {
  const { agent, substance, ml, startMin, minutes, evaporates, lidded } = use;
  return {
    ...(substance === undefined ? { agent } : { substance }),
    ml,
    ...(startMin !== undefined && startMin !== 0 && { startMin }),
    ...(minutes !== undefined && { minutes }),
    ...(evaporates !== undefined && evaporates !== 1 && { evaporates }),
    ...(lidded === true && { lidded }),
  };
}

/** Two uses alike are two uses: none is left out. */
const byClock = (one: AirUse, other: AirUse): number =>
  (one.startMin ?? 0) - (other.startMin ?? 0) ||
  compare(JSON.stringify(one), JSON.stringify(other));
