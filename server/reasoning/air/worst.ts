import { sure } from '../book/sure.js';
import { crossing } from './roots.js';
import type { Track } from './track.js';

/** How quickly things happen in the air of a room, per minute; the slowest is never 0. */
export interface Paces {
  readonly quickest: number;
  readonly slowest: number;
}

/** A value and the time at which it stands; of a mean, the end of its window. */
export interface Worst {
  readonly value: number;
  readonly atMin: number;
}

/** After so many times the slowest time nothing is left to happen. */
const TAILS = 40;
/** Each sample is so many times as far from the last break as the one before. */
const STRIDE = 5;
/** Just before a break, where a slope may jump. */
const BEFORE = 1 - 1e-12;

/** Highest level at the bench. */
export const peakOf = ({ near, nearSlope, breaks }: Track, paces: Paces): Worst =>
  highest({ value: near, slope: nearSlope, steepest: Infinity, breaks }, paces);

/**
 * Highest mean at the bench over any window of so many minutes; clean air before the beginning.
 * `peak` is the highest level.
 */
export const worstMeanOf = (
  { near, nearSum, breaks }: Track,
  paces: Paces,
  windowMin: number,
  peak: number,
): Worst =>
  highest(
    {
      value: (min) => (nearSum(min) - nearSum(min - windowMin)) / windowMin,
      slope: (min) => near(min) - near(min - windowMin),
      steepest: peak / windowMin,
      breaks: [...new Set([...breaks, ...breaks.map((min) => min + windowMin)])].sort(
        (a, b) => a - b,
      ),
    },
    paces,
  );

/** From when on the level at the bench stays at or below another; undefined: never. */
export const belowFrom = (
  { near, breaks }: Track,
  paces: Paces,
  level: number,
  fromMin: number,
): number | undefined => {
  const excess = (min: number): number => near(min) - level;
  const start = Math.max(fromMin, ...breaks);
  const times = samples(start, start + TAILS / paces.slowest, paces.quickest);
  const last = times.findLastIndex((min) => excess(min) > 0);
  if (last < 0) return fromMin;
  const [over, under] = [times[last], times[last + 1]];
  return over === undefined || under === undefined ? undefined : crossing(excess, over, under);
};

/** Something whose highest is sought: smooth between breaks, 0 before them. */
interface Hill {
  readonly value: (min: number) => number;
  /** Has the sign of the slope. */
  readonly slope: (min: number) => number;
  /** The value never rises or falls by more than this in a minute. */
  readonly steepest: number;
  readonly breaks: readonly number[];
}

/** The highest: at a break, or between two where the slope turns. Stretches too low are passed by. */
const highest = ({ value, slope, steepest, breaks }: Hill, paces: Paces): Worst => {
  let worst: Worst = { value: 0, atMin: breaks[0] ?? 0 };
  const meet = (atMin: number, found: number): void => {
    if (found > worst.value) worst = { value: found, atMin };
  };
  const tops = breaks.map(value);
  tops.forEach((top, index) => {
    meet(sure(breaks[index]), top);
  });
  for (const [index, from] of breaks.entries()) {
    const next = breaks[index + 1];
    const to = next ?? from + TAILS / paces.slowest;
    const reach = (sure(tops[index]) + (tops[index + 1] ?? 0) + (to - from) * steepest) / 2;
    if (next !== undefined && reach <= worst.value) continue;
    const times = samples(from, to, paces.quickest);
    let isRising = slope(from) > 0;
    for (let at = 1; at < times.length; at += 1) {
      const [before = from, now = to] = [times[at - 1], times[at]];
      const rises = slope(now) > 0;
      if (isRising && !rises) {
        const turn = crossing(slope, before, now);
        meet(turn, value(turn));
      }
      isRising = rises;
    }
    if (isRising && next === undefined) meet(to, value(to));
  }
  return worst;
};

/** Times from one to another, close together at first, where all is quick. */
const samples = (from: number, to: number, quickest: number): readonly number[] => {
  const times = [from];
  for (let step = 0.2 / quickest; step < to - from; step *= STRIDE) times.push(from + step);
  times.push(from + (to - from) * BEFORE);
  return times;
};
