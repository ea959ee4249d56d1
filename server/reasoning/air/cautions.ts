import type { AirInput, AirSaid } from '../types.js';
import type { AirBook } from './airBook.js';
import type { Day } from './day.js';
import { type Levels, burdenOf } from './levels.js';
import { nameOf, when } from './liquidCautions.js';
import { ONE } from './measure.js';
import { isMeasured, volumeOf } from './room.js';

interface Outcome {
  readonly day: Day;
  readonly levels: Levels;
  readonly airOutMin: number | undefined;
  readonly fan: number | undefined;
  readonly horizonMin: number;
  /** The share of all limits together, at the worst end of what was guessed. */
  readonly worstShare: number;
}

/** What must be said of a day in a room, worst first. */
export const roomCautions = (
  book: AirBook,
  input: AirInput,
  said: readonly AirSaid[],
  { day, levels, airOutMin, fan, horizonMin, worstShare }: Outcome,
): readonly AirSaid[] => {
  const { figures } = book;
  const { air = '' } = input.room;
  const isKnown = book.situations.has(air);
  const isGuess = !isMeasured(input.room);
  const hours = input.shiftHours ?? 0;
  const isOver = levels.combinedShare > figures['most-share'];
  return [
    ...when(isOver, 'over-limit'),
    ...when(!isOver && worstShare > figures['most-share'], 'near-limit'),
    ...when(levels.shareOfLel > figures['most-share-of-lel'], 'over-lel'),
    ...when(fan === undefined && burdenOf(figures, day) > 1, 'no-fan'),
    ...when(airOutMin === undefined, 'never-clears'),
    ...said,
    ...day.clouds.flatMap(({ liquid }) =>
      when(
        day.peak.highest(ONE, (each) => Number(each === liquid)).value >= liquid.vapour.mostMgM3,
        'saturated',
        { what: nameOf(liquid) },
      ),
    ),
    ...when(volumeOf(input.room) === undefined, 'no-size'),
    ...when(isGuess && !isKnown, 'air-not-said'),
    ...when(isGuess && isKnown, 'guessed-air', { level: air }),
    ...when(hours > figures['shift-hours'], 'long-shift', { hours }),
    ...when(
      input.uses.some(({ startMin = 0 }) => startMin >= horizonMin),
      'starts-late',
    ),
    ...when(true, 'estimate'),
  ];
};
