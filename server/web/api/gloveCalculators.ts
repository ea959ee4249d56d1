import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import {
  bestGloves,
  chartGrade,
  gloveType,
  permeationLevel,
  type Catalogue,
} from '../../reasoning/index.js';
import { listOf, numberOf, objectOf, oneOf } from '../forms/schema.js';
import { problemAnswers } from './problemAnswer.js';

const minutes = numberOf('minutes', 0, 10_000);

const LETTERS = 'minutes by letter, A to T: { "J": 90, "K": 480 }';

/** More than any bench uses at one time. */
const MOST_CHEMICALS = 20;

const GradeWords = z.enum(['VG', 'G', 'F', 'P']);

const GloveAnswer = z.strictObject({
  rating: GradeWords.describe('best of the worst letters; VG very good to P poor'),
  materials: z.array(z.string()),
  grades: z.record(z.string(), z.record(z.string(), GradeWords)),
  because: z.array(z.string()),
});

const LevelAnswer = z.strictObject({
  level: z.number().nullable(),
  type: z.string().nullable(),
});

/**
 * POST /api/calc/glove-material and /api/calc/glove-level: the published chart for chemicals, and
 * the levels and types of EN ISO 374-1, for users and for checks.
 */
export function gloveCalculators(
  app: FastifyInstance,
  { catalogue }: { readonly catalogue: Catalogue },
): void {
  const { gloves } = catalogue;
  const rows = gloves.chart.flatMap((row) => [row.id, row.chemical]);
  const CHEMICAL = `a chemical of the glove chart (${gloves.chart.map((row) => row.id).join(', ')})`;
  const MATERIAL = gloves.materials.map((material) => material.id);
  const best = (chemicals: readonly string[], exclude: readonly string[]) => {
    const { rating, materials } = bestGloves(gloves, chemicals, exclude);
    return { rating, materials: [...materials] };
  };
  const typed = app.withTypeProvider<ZodTypeProvider>();

  typed.post(
    '/api/calc/glove-material',
    {
      schema: {
        summary: 'Materials that the glove chart grades best for chemicals used together',
        body: objectOf(
          {
            chemicals: listOf(
              z.string(CHEMICAL).refine((name) => rows.includes(name), CHEMICAL),
              MOST_CHEMICALS,
              'chemicals',
            ).min(1, CHEMICAL),
            exclude: listOf(oneOf(MATERIAL), MATERIAL.length, 'glove materials').optional(),
          },
          '{ "chemicals": [...], "exclude": [...] }',
        ),
        response: { 200: GloveAnswer, ...problemAnswers },
      },
    },
    ({ body: { chemicals, exclude } }) => ({
      ...best(chemicals, exclude ?? []),
      grades: Object.fromEntries(
        chemicals.map((chemical) => [
          chemical,
          Object.fromEntries(
            MATERIAL.map((material) => [material, chartGrade(gloves, chemical, material) ?? 'P']),
          ),
        ]),
      ),
      because: gloves.chart
        .filter((row) => chemicals.includes(row.id) || chemicals.includes(row.chemical))
        .map((row) => `glove-chart.${row.id}`),
    }),
  );

  typed.post(
    '/api/calc/glove-level',
    {
      schema: {
        summary: 'EN ISO 374-1 level of a breakthrough time, and type of a glove',
        body: objectOf(
          {
            minutes: minutes.optional(),
            minutesByLetter: z
              .record(z.string().regex(/^[A-Z]$/, LETTERS), minutes, LETTERS)
              .optional(),
          },
          '{ "minutes": ..., "minutesByLetter": ... }',
        ),
        response: { 200: LevelAnswer, ...problemAnswers },
      },
    },
    ({ body }) => ({
      level: body.minutes === undefined ? null : permeationLevel(gloves, body.minutes),
      type: body.minutesByLetter === undefined ? null : gloveType(gloves, body.minutesByLetter),
    }),
  );
}
