import { z } from 'zod';
import { figuresOf, idsOf } from '../forms/sumsFigures.js';
import { keyOf } from '../forms/sumsFields.js';
import type { Answers, Outcome, Sum } from '../forms/sumsSum.js';
import { unitsOf } from '../forms/sumsUnits.js';

/** Figures in all their units; null: never; left out: it was not asked for. */
const shapeOf = (answers: Answers): z.ZodRawShape =>
  Object.fromEntries(
    Object.entries(answers).flatMap(([name, quantity]): [string, z.ZodType][] =>
      quantity === 'id'
        ? [[name, z.string().optional()]]
        : unitsOf(quantity).map((unit) => [keyOf(name, unit), z.number().nullable().optional()]),
    ),
  );

/** What a sum answers, as /api/openapi.json describes it. */
export const sumAnswer = (sum: Sum) =>
  z.strictObject({
    ...shapeOf(sum.answers),
    ...Object.fromEntries(
      Object.entries(sum.rowAnswers).map(([name, answers]) => [
        name,
        z.array(z.strictObject(shapeOf(answers))),
      ]),
    ),
    says: z.string().describe('what no sum can do'),
    sources: z.array(z.string()).describe('ids of published sources'),
  });

type Json = Readonly<Record<string, unknown>>;

/** The answer of a sum, each figure in all its units. */
export const sumJson = (
  sum: Sum,
  { figures, rows = {} }: Outcome,
  says: string,
): Json & { says: string; sources: string[] } => ({
  ...jsonOf(sum.answers, figures),
  ...Object.fromEntries(
    Object.entries(rows).map(([name, list]) => [
      name,
      list.map((row) => jsonOf(sum.rowAnswers[name] ?? {}, row)),
    ]),
  ),
  says,
  sources: [...sum.sources],
});

const jsonOf = (answers: Answers, found: Outcome['figures']): Json => ({
  ...Object.fromEntries(
    figuresOf(answers, found).flatMap(({ name, values }) =>
      values.map(({ unit, value }) => [keyOf(name, unit), value]),
    ),
  ),
  ...Object.fromEntries(idsOf(answers, found)),
});
