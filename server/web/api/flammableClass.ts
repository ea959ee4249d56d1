import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { flammableClass } from '../../reasoning/index.js';
import type { Words } from '../../words/index.js';
import { COLDEST_C, HOTTEST_C } from '../forms/limits.js';
import { numberOf, objectOf } from '../forms/schema.js';
import { problemAnswers } from './problemAnswer.js';

const celsius = numberOf('degrees Celsius', COLDEST_C, HOTTEST_C);

const Liquid = objectOf(
  {
    flashPointC: celsius.describe('closed cup'),
    boilingPointC: celsius
      .optional()
      .describe('where boiling begins; left out: taken as low, which is the more careful class'),
  },
  'a liquid: { "flashPointC": ..., "boilingPointC": ... }',
);

const Hazard = z.strictObject({
  category: z.number().nullable(),
  code: z.string().nullable(),
  /** The exact words of the code. */
  text: z.string().nullable(),
  signal: z.enum(['Danger', 'Warning']).nullable(),
});

export const FlammableAnswer = z.strictObject({
  clp: Hazard.describe('EU and GB'),
  ghs: Hazard.describe('UN GHS'),
  osha: Hazard.describe('29 CFR 1910.106: as UN GHS'),
  nfpa: z.strictObject({ class: z.string() }),
  because: z.array(z.string()),
});

/** GHS annex 1: categories 1 and 2 say Danger, 3 and 4 Warning. */
const DANGER_TO = 2;

/** POST /api/calc/flammable-class: the class of a liquid, for users and for checks. */
export function flammableClassApi(
  app: FastifyInstance,
  { words }: { readonly words: Words },
): void {
  app.withTypeProvider<ZodTypeProvider>().post(
    '/api/calc/flammable-class',
    {
      schema: {
        summary: 'Class of a flammable liquid under three systems',
        body: Liquid,
        response: { 200: FlammableAnswer, ...problemAnswers },
      },
    },
    (request) => {
      const { clp, ghs, nfpa } = flammableClass(request.body);
      const hazard = ({ category, code }: typeof clp | typeof ghs) => ({
        category,
        code,
        text: code === null ? null : (words.row(`code.${code}`)?.says ?? null),
        signal:
          category === null
            ? null
            : category <= DANGER_TO
              ? ('Danger' as const)
              : ('Warning' as const),
      });
      const codes = [...new Set([clp.code, ghs.code])].filter((code) => code !== null);
      return {
        clp: hazard(clp),
        ghs: hazard(ghs),
        osha: hazard(ghs),
        nfpa,
        because: codes.map((code) => `code.${code}`),
      };
    },
  );
}
