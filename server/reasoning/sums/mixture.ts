import { saturatedPpm } from './convert.js';

/** A vapour in the air beside its limit, both in one unit. */
export interface LevelAndLimit {
  readonly level: number;
  readonly limit: number;
}

/** A liquid of a mixture, and the limit of its vapour in ppm. */
export interface LiquidPart {
  readonly moleFraction: number;
  readonly vapourPressurePa: number;
  readonly limitPpm: number;
}

/**
 * How much of their joint limit vapours that act alike use up, `sum(C / L)`; 1 is the limit.
 * Undefined where a limit is 0. Source: 29 CFR 1910.1000(d)(2)(i), as read.
 */
export const sumOfFractions = (parts: readonly LevelAndLimit[]): number | undefined =>
  parts.every(({ limit }) => limit > 0)
    ? parts.reduce((sum, { level, limit }) => sum + level / limit, 0)
    : undefined;

/** All levels together, in their unit. */
export const totalLevel = (parts: readonly LevelAndLimit[]): number =>
  parts.reduce((sum, { level }) => sum + level, 0);

/**
 * The limit of air of such a make-up, `sum(C) / sum(C / L)`, in the unit of the levels. Undefined
 * where nothing is in the air or a limit is 0. Source: Crowl & Louvar, chapter 3, from memory.
 */
export const mixtureLimit = (parts: readonly LevelAndLimit[]): number | undefined => {
  const fractions = sumOfFractions(parts);
  return fractions ? totalLevel(parts) / fractions : undefined;
};

/** The vapour over an ideal mixture of liquids, in the order of its parts. */
export interface VapourOver {
  /** What air over it can hold of each, ppm: `1e6 x P / 1 atm`. */
  readonly saturatedPpm: readonly number[];
  /** Share of each in the vapour, 0 to 1. */
  readonly shares: readonly number[];
  /** Limit of that vapour; undefined where there is none or a limit is 0. */
  readonly limitPpm: number | undefined;
}

/**
 * The vapour over a mixture of liquids by Raoult's law, `p = x P`, and its limit. The mixture is
 * taken as ideal. Source: Crowl & Louvar, chapter 3, from memory.
 */
export const vapourOver = (parts: readonly LiquidPart[]): VapourOver => {
  const sum = parts.reduce((all, part) => all + pressureOf(part), 0);
  return {
    saturatedPpm: parts.map((part) => saturatedPpm(pressureOf(part))),
    shares: parts.map((part) => (sum > 0 ? pressureOf(part) / sum : 0)),
    limitPpm: mixtureLimit(
      parts.map((part) => ({ level: pressureOf(part), limit: part.limitPpm })),
    ),
  };
};

const pressureOf = ({ moleFraction, vapourPressurePa }: LiquidPart): number =>
  moleFraction * vapourPressurePa;
