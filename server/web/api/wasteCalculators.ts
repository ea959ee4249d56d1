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
import { problemAnswers } from './problemAnswer.js';

const KG = 'kilograms in a calendar month, 0 to 1,000,000';
const kg = z.number(KG).min(0, KG).max(1e6, KG);

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
  const region = z.enum(REGION);
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
        body: z.strictObject({ region, kg, acuteKg: kg.optional() }),
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
        body: z.strictObject({
          region,
          flashPointC: z.number().min(-150).max(1000).optional(),
          alcoholInWaterPercent: z.number().min(0).max(100).optional(),
          selfHeating: z.boolean().optional(),
        }),
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
        body: z.strictObject({
          region,
          days: z.number().min(0).max(10_000),
          label: z.string().max(100),
          closed: z.boolean(),
          freeLiquid: z.boolean(),
          solvent: z.string().max(60),
          thrownAway: z.boolean(),
        }),
        response: { 200: WipesAnswer, ...problemAnswers },
      },
    },
    ({ body: { region: id, ...can } }) => {
      const faults = wipesFaults(regionOf(id), can);
      return { excluded: faults.length === 0, faults: [...faults], because: [`region.${id}`] };
    },
  );
}
