import { expOver2, expOver3 } from '../air/exponentials.js';

/**
 * A well-mixed room that fills or clears. Levels are in any one unit; times in the unit that the
 * rates are by. `V dC/dt = G - Q' C`, solved exactly. Formulas: ACGIH, Industrial Ventilation,
 * chapter 2, from memory.
 */
export interface Airing {
  readonly start: number;
  /** Effective air changes in one unit of time, `Q' / V`; 0 where nothing moves. */
  readonly changes: number;
  /** What the source adds to the level in one unit of time, `G / V`; 0 where it is gone. */
  readonly rise: number;
}

/**
 * Air changes that count, `Q / (K V)`, in one unit of the flow's time. Undefined where the room has
 * no volume. Mixing factor 1 and more.
 */
export const effectiveChanges = ({
  flow,
  volume,
  mixingFactor,
}: {
  readonly flow: number;
  readonly volume: number;
  readonly mixingFactor: number;
}): number | undefined => (volume > 0 ? flow / (mixingFactor * volume) : undefined);

/**
 * The mixing factor (1 and more, multiplies the air that is needed) of a mixing efficiency (0 to 1,
 * multiplies the air changes): `1 / k`. Undefined where nothing mixes.
 * Source: US Bureau of Reclamation, design guide (2000), p. 106, as read.
 */
export const mixingFactorOf = (efficiency: number): number | undefined =>
  efficiency > 0 ? 1 / efficiency : undefined;

/** The level where it settles, `G / Q'`; undefined where a source fills a room that has no air. */
export const steadyLevel = ({ changes, rise }: Omit<Airing, 'start'>): number | undefined => {
  if (rise === 0) return 0;
  return changes > 0 ? rise / changes : undefined;
};

/** The level after a time, `Cs + (C0 - Cs) exp(-a t)`; rises in a straight line where no air moves. */
export const levelAt = ({ start, changes, rise }: Airing, time: number): number =>
  start * Math.exp(-changes * time) + rise * time * expOver2(0, -changes * time);

/** The mean level from the beginning to a time. */
export const meanLevel = ({ start, changes, rise }: Airing, time: number): number =>
  start * expOver2(0, -changes * time) + rise * time * expOver3(0, 0, -changes * time);

/**
 * When the level is reached, `-(1/a) ln((Cs - C) / (Cs - C0))`. Undefined: never, as for a level
 * that is not between the beginning and where it settles.
 */
export const timeTo = (level: number, { start, changes, rise }: Airing): number | undefined => {
  if (level === start) return 0;
  // As long as it would take at the slope of the beginning: no digits are lost in nearly still air.
  const straight = (level - start) / (rise - changes * start);
  const way = straight * changes;
  if (!(straight > 0 && straight < Infinity && way < 1)) return undefined;
  return changes === 0 ? straight : -Math.log1p(-way) / changes;
};

/**
 * Share that is left after so many air changes of a room that mixes well, `exp(-n)`.
 * @example shareLeft(3) // 0.0498
 */
export const shareLeft = (airChanges: number): number => Math.exp(-airChanges);

/**
 * Minutes to remove a share (0 to 1) once nothing is added, `60 K ln(1 / (1 - f)) / ACH`. Undefined:
 * never, where no air moves or all of it must go. Source: CDC, guidelines (2003), table B.1, as read.
 * @example minutesToRemove(0.99, { changesPerHour: 6, mixingFactor: 1 }) // 46
 */
export const minutesToRemove = (
  share: number,
  {
    changesPerHour,
    mixingFactor,
  }: { readonly changesPerHour: number; readonly mixingFactor: number },
): number | undefined =>
  share < 1 && changesPerHour > 0
    ? (-Math.log1p(-share) * MINUTES_IN_HOUR * mixingFactor) / changesPerHour
    : undefined;

const MINUTES_IN_HOUR = 60;

/**
 * The flow of a room in which a level halves in such a time, `Q = ln 2 V / t`. Undefined where the
 * time is 0. Source: a column on a tracer-gas technique, as read.
 */
export const flowFromHalfLife = (volume: number, halfLife: number): number | undefined =>
  halfLife > 0 ? (Math.LN2 * volume) / halfLife : undefined;
