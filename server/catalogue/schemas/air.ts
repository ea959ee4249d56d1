import { z } from 'zod';
import {
  AIR_CAUTIONS,
  AIR_FIGURES,
  type AirCaution,
  type AirFigure,
  type AirSituation,
  type Guess,
} from '../../reasoning/index.js';
import { Text, row } from './row.js';

/** A guess between these bounds, its ends in order. */
const guess = (least: number, most: number): z.ZodType<Guess> => {
  const figure = z.number().min(least).max(most);
  return z
    .strictObject({ low: figure, counted: figure, high: figure })
    .refine(({ low, counted, high }) => low <= counted && counted <= high, {
      error: 'low, counted and high in that order',
    });
};

/** No room is aired more often in an hour than this. */
const MOST_AIR_CHANGES = 200;
const WORST_MIXING = 10;

export const AirSituationRow: z.ZodType<AirSituation> = z.strictObject({
  ...row,
  airChangesPerHour: guess(0, MOST_AIR_CHANGES),
  mixingFactor: guess(1, WORST_MIXING),
  captured: guess(0, 1),
});

export const AirFigureRow: z.ZodType<AirFigure> = z.strictObject({
  ...row,
  id: z.enum(AIR_FIGURES),
  name: Text,
  value: z.number().positive(),
  unit: Text,
});

export const AirCautionRow: z.ZodType<AirCaution> = z.strictObject({
  ...row,
  id: z.enum(AIR_CAUTIONS),
  words: Text,
});
