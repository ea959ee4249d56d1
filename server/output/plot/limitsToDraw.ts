import type { AirCurve, PlotLimit } from './curve.js';

/** Limits higher than so many peaks would press the curves flat. */
const MOST_PEAKS = 3;
/** Lines closer than this share of the peak cannot be told apart: the lower one stands. */
const CLOSEST = 0.07;
/** More lines than these hide the curves. */
const MOST_LINES = 4;

/** Which limits are drawn as lines, and which are only named: too high, too close, or too many. */
export const limitsToDraw = ({
  limits,
  series,
}: Pick<AirCurve, 'limits' | 'series'>): {
  readonly drawn: readonly PlotLimit[];
  readonly offTop: readonly PlotLimit[];
  /** Highest point of the curves. */
  readonly peakMgM3: number;
} => {
  const peakMgM3 = Math.max(0, ...series.map((at) => Math.max(at.nearMgM3, at.farMgM3)));
  const rising = [...limits].sort((one, other) => one.mgM3 - other.mgM3);
  const drawn = rising
    .filter(({ mgM3 }) => mgM3 <= peakMgM3 * MOST_PEAKS)
    .reduce<readonly PlotLimit[]>(
      (lines, limit) =>
        limit.mgM3 - (lines.at(-1)?.mgM3 ?? -Infinity) < peakMgM3 * CLOSEST
          ? lines
          : [...lines, limit],
      [],
    )
    .slice(0, MOST_LINES);
  return { drawn, offTop: rising.filter((limit) => !drawn.includes(limit)), peakMgM3 };
};
