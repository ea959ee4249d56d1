import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import {
  dryingClass,
  mayRagsSelfHeat,
  type Catalogue,
  type Oil,
  type Range,
} from '../../reasoning/index.js';
import type { Words } from '../../words/index.js';
import { numberOf, objectOf, wordsOf } from '../forms/schema.js';
import { problemAnswers } from './problemAnswer.js';

/** No oil takes up more, grams of iodine per 100 g. */
const MOST_IODINE = 400;
const NAME = 'the name of an oil, up to 60 letters';

const EITHER = 'the name of an oil, its iodine value, or both';

const OilAsked = objectOf(
  {
    oil: wordsOf(NAME, 60).optional().describe('id or name of an oil'),
    iodineValue: numberOf('grams of iodine per 100 g of oil', 0, MOST_IODINE)
      .optional()
      .describe('as measured; replaces the published range of the oil'),
  },
  EITHER,
).refine((asked) => asked.oil !== undefined || asked.iodineValue !== undefined, { error: EITHER });

const Class = z.enum(['drying', 'semi-drying', 'non-drying', 'does-not-dry', 'unknown']);

export const DryingAnswer = z.strictObject({
  oil: z.strictObject({ id: z.string(), name: z.string() }).nullable(),
  bySchemes: z.array(
    z.strictObject({
      scheme: z.string(),
      name: z.string(),
      class: Class.describe('at the high end of the range'),
      classAtLow: Class,
    }),
  ),
  rags: z.strictObject({ selfHeating: z.boolean(), words: z.string() }),
  because: z.array(z.string()),
});

export type DryingAnswer = z.infer<typeof DryingAnswer>;

/** POST /api/calc/drying-class: how an oil dries by each published scheme, and what its rags do. */
export function dryingClassApi(
  app: FastifyInstance,
  { catalogue, words }: { readonly catalogue: Catalogue; readonly words: Words },
): void {
  const { schemes, oils, selfHeatsFrom } = catalogue.oils;
  const find = (asked: string | undefined): Oil | undefined => {
    const name = asked?.toLowerCase();
    return oils.find((oil) => oil.id === name || oil.name.toLowerCase() === name);
  };
  app.withTypeProvider<ZodTypeProvider>().post(
    '/api/calc/drying-class',
    {
      schema: {
        summary: 'How an oil dries, and whether rags with it heat by themselves',
        body: OilAsked,
        response: { 200: DryingAnswer, ...problemAnswers },
      },
    },
    (request) => {
      const { oil: asked, iodineValue } = request.body;
      const oil = find(asked);
      const iodine =
        iodineValue === undefined ? oil?.iodine : { low: iodineValue, high: iodineValue };
      const selfHeating = mayRagsSelfHeat({ byName: oil?.byName, iodine }, selfHeatsFrom);
      return {
        oil: oil ? { id: oil.id, name: oil.name } : null,
        bySchemes: schemes.map((scheme) => {
          const classOf = (end: keyof Range) =>
            oil?.byName ?? (iodine ? dryingClass(iodine[end], scheme) : ('unknown' as const));
          return {
            scheme: scheme.id,
            name: scheme.name,
            class: classOf('high'),
            classAtLow: classOf('low'),
          };
        }),
        rags: { selfHeating, words: words.message(selfHeating ? 'oil.heats' : 'oil.heatsNot') },
        because: [
          ...(oil ? [`oil.${oil.id}`] : []),
          ...schemes.map((scheme) => `drying.${scheme.id}`),
        ],
      };
    },
  );
}
