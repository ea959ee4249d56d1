/** A vapour in air and its lower flammable limit, percent by volume. */
export interface BurningPart {
  readonly percent: number;
  readonly lflPercent: number;
}

/** A fall of the limit by this share for each degree above 25 C: NFPA 86, from memory. */
const FALL_PER_C = 0.000784;
const PRINTED_C = 25;

/**
 * How much of their joint lower flammable limit vapours use up, `sum(C / LFL)`; from 1 on the air can
 * burn. Undefined where a limit is 0. Source: Le Chatelier's rule; Mashuga & Crowl, Process Safety
 * Progress 19(2) (2000), abstract as read.
 */
export const shareOfLfl = (parts: readonly BurningPart[]): number | undefined =>
  parts.every(({ lflPercent }) => lflPercent > 0)
    ? parts.reduce((sum, { percent, lflPercent }) => sum + percent / lflPercent, 0)
    : undefined;

/** All vapours together, percent by volume. */
export const totalPercent = (parts: readonly BurningPart[]): number =>
  parts.reduce((sum, { percent }) => sum + percent, 0);

/**
 * The lower flammable limit of vapours of such a make-up, `1 / sum(y / LFL)`, percent by volume.
 * Undefined where there are none or a limit is 0.
 */
export const lflOfMixture = (parts: readonly BurningPart[]): number | undefined => {
  const share = shareOfLfl(parts);
  return share ? totalPercent(parts) / share : undefined;
};

/**
 * A lower flammable limit in warm air, `LFL (1 - 0.000784 (T - 25))`, never below 0. Cold air keeps
 * the printed limit: nothing is gained by a guess that it would be higher. Source: NFPA 86, from
 * memory.
 */
export const lflAt = (lflPercent: number, temperatureC: number): number =>
  lflPercent * Math.max(0, 1 - FALL_PER_C * Math.max(0, temperatureC - PRINTED_C));
