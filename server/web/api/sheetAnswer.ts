import { z } from 'zod';
import { PHASES, SCALES } from '../../reasoning/index.js';
import { AirJson } from './airAnswer.js';
import { How, Source } from './answerParts.js';

/** What /api/sheet and /sheet.json answer: the shape that /api/openapi.json describes. */

const id = z.string();
const ids = z.array(id).readonly();
const Range = z.strictObject({ low: z.number(), high: z.number() });
const Value = z.union([z.string(), z.number(), Range, ids]);
const Because = ids.describe('ids of /rules/:id; keys of `rules`');

const Bench = z.looseObject({ region: id });

const Route = z.union([
  z.strictObject({
    surface: id,
    mix: id,
    band: z.number(),
    passes: z
      .array(
        z.strictObject({
          do: z.enum(['scrape', 'agent', 'follow-up', 'last']),
          agent: id.optional(),
          brief: z.boolean().optional(),
          dried: z.boolean().optional(),
          words: z.string(),
        }),
      )
      .readonly(),
    words: z.string(),
    because: Because,
  }),
  z.strictObject({
    surface: id,
    mix: id,
    stuck: z.literal(true),
    reason: id,
    wouldDo: ids,
    words: z.string(),
    because: Because,
  }),
]);

const EmergencyNumbers = z
  .array(z.strictObject({ name: z.string(), number: z.string(), hours: z.string().optional() }))
  .readonly();

export const SheetAnswer = z.strictObject({
  bench: Bench.describe('the bench made plain: sorted, each thing once'),
  levels: z.record(z.enum(SCALES), id),
  levelReasons: z.record(z.string(), z.strictObject({ because: Because, folded: Because })),
  agents: ids,
  plan: z.strictObject({ hazard: z.number(), chosenFrom: z.string() }),
  routes: z.array(Route).readonly(),
  gloves: z.strictObject({
    materials: ids,
    grades: z.record(z.string(), z.enum(['VG', 'G', 'F', 'P'])),
    minutes: z.record(z.string(), z.number()).describe('from first contact, by material'),
    thickness: z.enum(['thin', 'thick']),
    changeAfterMin: z.number().optional(),
    because: Because,
  }),
  rags: z.strictObject({
    level: id,
    streams: z
      .array(
        z.strictObject({
          route: id.describe('its level on the rags scale'),
          stream: id.describe('the row of rags.yaml'),
          name: z.string(),
          selfHeating: z.boolean(),
          items: ids,
          container: z.string(),
          emptied: z.string(),
          because: Because,
        }),
      )
      .readonly(),
  }),
  neverTogether: z.array(z.strictObject({ id, words: z.string(), because: Because })).readonly(),
  unknown: z
    .array(z.strictObject({ kind: id, id, words: z.string(), sdsSection: z.number() }))
    .readonly(),
  flags: z
    .array(
      z.strictObject({
        kind: id,
        subject: id,
        values: z.record(z.string(), Value),
        words: z.string(),
      }),
    )
    .readonly(),
  swaps: z
    .array(
      z.strictObject({
        kind: z.enum(['leave-out', 'swap']),
        what: id,
        for: id.optional(),
        spares: z.array(z.strictObject({ scale: z.enum(SCALES), from: id, to: id })).readonly(),
        sparesAgents: ids,
        sparesMl: z.array(z.strictObject({ agent: id, ml: z.number() })).readonly(),
        sparesAirOutMin: z.number().optional().describe('minutes'),
        words: z.string(),
      }),
    )
    .readonly(),
  amounts: z.strictObject({
    ml: z.array(z.strictObject({ agent: id, range: Range })).readonly(),
    rags: Range,
  }),
  air: AirJson.optional().describe(
    'of the routes’ own millilitres, where the room’s size is known',
  ),
  lines: z
    .array(
      z.strictObject({
        id,
        phase: z.enum(PHASES),
        head: z.string(),
        rest: z.string(),
        words: z.string(),
        because: Because,
        folded: Because,
      }),
    )
    .readonly(),
  rules: z.record(
    z.string(),
    z.strictObject({
      id,
      table: id,
      name: z.string(),
      says: z.string(),
      how: How,
      note: z.string().optional(),
      sources: ids,
    }),
  ),
  sources: z.record(z.string(), Source),
  firstAid: z
    .array(
      z.strictObject({
        id,
        door: id,
        name: z.string(),
        steps: z.array(z.string()).readonly(),
        never: z.array(z.string()).readonly(),
      }),
    )
    .readonly(),
  emergency: z.strictObject({
    region: z.string(),
    numbers: EmergencyNumbers,
    poison: EmergencyNumbers,
    checkedOn: z.string(),
    checkedIn: z.string(),
  }),
  defer: z.array(z.string()).readonly(),
});
export type SheetAnswer = z.infer<typeof SheetAnswer>;
