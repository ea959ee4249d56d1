/** A level that lasts for so many minutes; any one unit of level. */
export interface Period {
  readonly level: number;
  readonly minutes: number;
}

/** The working day of long-term limits: 29 CFR 1910.1000(d)(1)(i), as read. */
export const SHIFT_HOURS = 8;

const HOURS_IN_DAY = 24;

/**
 * The average over a span, `sum(C T) / span`, whatever the periods add up to: a long day still
 * counts over 8 hours. Undefined where the span is 0. Source: 29 CFR 1910.1000(d)(1)(i), as read.
 */
export const weightedAverage = (
  periods: readonly Period[],
  spanMinutes: number,
): number | undefined =>
  spanMinutes > 0
    ? periods.reduce((sum, { level, minutes }) => sum + level * minutes, 0) / spanMinutes
    : undefined;

/**
 * The worst average over any span of that length, the periods one after the other and clean air
 * before and after: short work still counts over all of it. Undefined where the span is 0.
 * Source: EH40, p. 43, from memory.
 */
export const worstAverage = (
  periods: readonly Period[],
  spanMinutes: number,
): number | undefined => {
  const laid = lay(periods);
  // The worst span begins or ends where some period does.
  const starts = laid.flatMap(({ from, to }) => [from, to - spanMinutes]);
  const averages = starts.flatMap(
    (start) => weightedAverage(within(laid, start, start + spanMinutes), spanMinutes) ?? [],
  );
  return averages.length > 0 ? Math.max(...averages) : weightedAverage([], spanMinutes);
};

interface Laid {
  readonly level: number;
  readonly from: number;
  readonly to: number;
}

const lay = (periods: readonly Period[]): readonly Laid[] => {
  let from = 0;
  return periods.map(({ level, minutes }) => {
    const to = from + minutes;
    const laid = { level, from, to };
    from = to;
    return laid;
  });
};

const within = (laid: readonly Laid[], start: number, end: number): readonly Period[] =>
  laid.map(({ level, from, to }) => ({
    level,
    minutes: Math.max(0, Math.min(to, end) - Math.max(from, start)),
  }));

/**
 * What a long-term limit is multiplied by for a shift of so many hours, `(8 / h) (24 - h) / 16`: 1
 * up to 8 hours, 0 from 24 on. Not for short-term limits or ceilings.
 * Source: Brief & Scala, Am. Ind. Hyg. Assoc. J. 36:467-469 (1975), as quoted.
 * @example longShiftFactor(10) // 0.7
 */
export const longShiftFactor = (hours: number): number => {
  const rest = Math.max(0, HOURS_IN_DAY - hours);
  return Math.min(1, doseFactor(hours) * (rest / (HOURS_IN_DAY - SHIFT_HOURS)));
};

/**
 * The same by plain dose, `8 / h`: milder, as it leaves out the shorter rest. 1 up to 8 hours.
 * Source: 29 CFR 1910.1025(c)(2), as quoted.
 */
export const doseFactor = (hours: number): number => SHIFT_HOURS / Math.max(SHIFT_HOURS, hours);
