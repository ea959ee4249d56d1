import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import {
  generatorCategory,
  isIgnitableWaste,
  wipesFaults,
  type Catalogue,
  type Region,
} from '../../reasoning/index.js';
import { ACCEPTS, COLDEST_C, HOTTEST_C, MOST } from '../forms/limits.js';
import { numberOf, objectOf, oneOf, yesOrNo } from '../forms/schema.js';
import { problemAnswers } from './problemAnswer.js';

const kg = numberOf('kilograms in a calendar month', 0, 1_000_000);

const LABEL = 'the words on the label, up to 100 letters';

const CategoryAnswer = z.strictObject({
  category: z
    .enum(['very-small', 'small', 'large'])
    .nullable()
    .describe('null where the region has no such categories'),
  because: z.array(z.string()),
});

const IgnitableAnswer = z.strictObject({
  ignitable: z.boolean(),
  because: z.array(z.string()),
});

const WipesAnswer = z.strictObject({
  excluded: z.boolean().describe('the can is under the wipes rule'),
  faults: z.array(z.string()),
  because: z.array(z.string()),
});

/**
 * POST /api/calc/waste-category, ignitable-waste and wipes: what the region's waste rules make of a
 * month, a waste and a can of wipes, for users and for checks.
 */
export function wasteCalculators(
  app: FastifyInstance,
  { catalogue }: { readonly catalogue: Catalogue },
): void {
  const REGION = catalogue.regions.map((region) => region.id);
  const region = oneOf(REGION);
  const regionOf = (id: string): Region => {
    const found = catalogue.regions.find((each) => each.id === id);
    if (found === undefined) throw new Error(`no region ${id}`);
    return found;
  };
  const typed = app.withTypeProvider<ZodTypeProvider>();

  typed.post(
    '/api/calc/waste-category',
    {
      schema: {
        summary: 'Category of a studio by the hazardous waste of a month',
        body: objectOf({ region, kg, acuteKg: kg.optional() }, '{ "region": ..., "kg": ... }'),
        response: { 200: CategoryAnswer, ...problemAnswers },
      },
    },
    ({ body }) => ({
      category:
        generatorCategory(regionOf(body.region), { kg: body.kg, acuteKg: body.acuteKg ?? 0 }) ??
        null,
      because: [`region.${body.region}`],
    }),
  );

  typed.post(
    '/api/calc/ignitable-waste',
    {
      schema: {
        summary: 'Whether a waste counts as one that lights easily',
        body: objectOf(
          {
            region,
            flashPointC: numberOf('degrees Celsius', COLDEST_C, HOTTEST_C).optional(),
            alcoholInWaterPercent: numberOf('percent by volume', 0, 100).optional(),
            selfHeating: yesOrNo().optional(),
          },
          '{ "region": ..., "flashPointC": ... }',
        ),
        response: { 200: IgnitableAnswer, ...problemAnswers },
      },
    },
    ({ body: { region: id, ...waste } }) => ({
      ignitable: isIgnitableWaste(regionOf(id), waste),
      because: [`region.${id}`],
    }),
  );

  typed.post(
    '/api/calc/wipes',
    {
      schema: {
        summary: "Whether a can of solvent wipes keeps to the region's wipes rule",
        body: objectOf(
          {
            region,
            days: numberOf('days', 0, 10_000),
            label: z.string(LABEL).max(100, LABEL),
            closed: yesOrNo(),
            freeLiquid: yesOrNo(),
            solvent: z.string(ACCEPTS.name).max(MOST.letters, ACCEPTS.name),
            thrownAway: yesOrNo(),
          },
          'a can: { "region": ..., "days": ..., "label": ... }',
        ),
        response: { 200: WipesAnswer, ...problemAnswers },
      },
    },
    ({ body: { region: id, ...can } }) => {
      const faults = wipesFaults(regionOf(id), can);
      return { excluded: faults.length === 0, faults: [...faults], because: [`region.${id}`] };
    },
  );
}
