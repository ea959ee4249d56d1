import type { AirAnswer, AirInput } from '../types.js';
import type { AirBook } from './airBook.js';
import type { Day } from './day.js';

/** Points that a curve is drawn by, beside those where something begins or ends. */
const POINTS = 120;
const HOUR = 60;
/** An hour, when nothing is out; and a little past the end of the airing. */
const AFTER = 1.1;
const ROUND_TO = 15;

interface Times {
  readonly endMin: number;
  readonly peakAtMin: number;
  readonly airOutMin: number | undefined;
}

/** The curve, near and far, and its length: as asked, else until the room is aired, at most a day. */
export const seriesOf = (
  book: AirBook,
  input: AirInput,
  { clouds }: Day,
  times: Times,
): Pick<AirAnswer, 'horizonMin' | 'series'> => {
  const horizonMin = input.horizonMin ?? usualHorizon(book, times);
  const even = Array.from({ length: POINTS + 1 }, (_, place) => (horizonMin * place) / POINTS);
  const special = [...clouds.flatMap(({ track }) => track.breaks), times.peakAtMin, times.endMin];
  const minutes = [...new Set([...even, ...special])]
    .filter((min) => min <= horizonMin)
    .sort((a, b) => a - b);
  return {
    horizonMin,
    series: minutes.map((min) => ({
      min,
      farMgM3: sumOf(clouds, 'far', min),
      nearMgM3: sumOf(clouds, 'near', min),
    })),
  };
};

const sumOf = (clouds: Day['clouds'], of: 'near' | 'far', min: number): number =>
  clouds.reduce(
    (sum, { track, liquid }) => sum + Math.min(track[of](min), liquid.vapour.mostMgM3),
    0,
  );

const usualHorizon = (book: AirBook, { endMin, airOutMin }: Times): number => {
  const longest = Math.max(book.figures['longest-airing-min'], endMin + HOUR);
  const wanted = Math.max(HOUR, endMin + (airOutMin ?? longest) * AFTER);
  return Math.min(longest, Math.ceil(wanted / ROUND_TO) * ROUND_TO);
};
