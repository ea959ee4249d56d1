import type { GloveRules } from '../types.js';

/**
 * Permeation level of EN ISO 374-1:2016: the highest step whose minutes are exceeded; 0 when at or
 * under the first.
 */
export const permeationLevel = (gloves: GloveRules, minutes: number): number =>
  Math.max(
    0,
    ...gloves.levels.filter((step) => minutes > step.overMinutes).map((step) => step.level),
  );

/**
 * Type of a chemical glove under EN ISO 374-1:2016 from its minutes per lettered test chemical: the
 * first type (A, B, C) that has enough letters at its level; null when none has.
 */
export const gloveType = (
  gloves: GloveRules,
  minutesByLetter: Readonly<Record<string, number>>,
): string | null => {
  const levels = Object.values(minutesByLetter).map((minutes) => permeationLevel(gloves, minutes));
  const met = gloves.types.find(
    (type) => levels.filter((level) => level >= type.minLevel).length >= type.minChemicals,
  );
  return met?.type ?? null;
};
