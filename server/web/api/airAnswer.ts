import { z } from 'zod';
import { How, Source } from './answerParts.js';

/** What /api/air answers, and /api/sheet under `air`: the shape that /api/openapi.json describes. */

const id = z.string();
const never = (what: string) => z.number().nullable().describe(`${what}; null: never`);
const Ends = z.strictObject({ low: never('least'), high: never('most') });

const Limit = z.strictObject({
  substance: id.describe('a row of substances'),
  name: z.string(),
  limit: z.string().describe('who set it'),
  region: id,
  kind: z.enum(['long-term', 'short-term', 'ceiling', 'excursion']),
  of: z.number().describe('what is expected over the limit'),
  limitMgM3: z.number().describe('the limit that was counted with'),
  printed: z
    .strictObject({ mgM3: z.number().optional(), ppm: z.number().optional() })
    .describe('as its table prints it'),
  molarMassGMol: z.number().optional().describe('what turned a printed ppm into mg/m3'),
  applies: z.boolean().describe('it holds in the region, or the region has none of its own'),
  how: How,
  source: id.describe('a key of `sources`'),
});

const Most = z.strictObject({
  agent: id.optional(),
  substance: id,
  name: z.string(),
  saidMl: z.number(),
  carefulMl: z.number().nullable().describe('the same at the worst end of what was guessed'),
  ml: z.number().nullable().describe('over all its uses; null: the air never holds too much of it'),
});

const Room = z.strictObject({
  volumeM3: z.number(),
  situation: id.optional().describe('left out where the air was measured'),
  airM3PerHour: z.number(),
  airChangesPerHour: z.number(),
  mixingFactor: z.number(),
  captured: z.number(),
  temperatureC: z.number(),
  nearVolumeM3: z.number().optional(),
  exchangeM3PerMin: z.number().optional(),
});

export const AirJson = z.strictObject({
  region: id,
  room: Room.describe('as the model counts with it'),
  zones: z.union([z.literal(1), z.literal(2)]),
  horizonMin: z.number(),
  endMin: z.number().describe('when the last use ends'),
  series: z
    .array(z.strictObject({ min: z.number(), farMgM3: z.number(), nearMgM3: z.number() }))
    .readonly(),
  peakMgM3: z.number().describe('at the bench, all substances together'),
  peakPpm: z.number(),
  peakAtMin: z.number(),
  worst15MinMgM3: z.number(),
  average8hMgM3: z.number(),
  shares: z.array(Limit).readonly().describe('lowest limit first'),
  combinedShare: z.number().describe('the worst of `combined`; 1 is the limit'),
  combined: z
    .strictObject({ longTerm: z.number(), shortTerm: z.number(), ceiling: z.number() })
    .describe('summed over substances, each over its lowest limit that applies'),
  shareOfLel: z.number().describe('of the lower flammable limit'),
  airOutMin: never('minutes from the end of the last use until the room is aired'),
  mostMl: z.array(Most).readonly(),
  fanNeededM3PerHour: z.number().nullable().describe('null: no fan is enough'),
  ranges: z
    .strictObject({
      peakMgM3: Ends,
      worst15MinMgM3: Ends,
      average8hMgM3: Ends,
      combinedShare: Ends,
      shareOfLel: Ends,
      airOutMin: Ends,
    })
    .describe('least and most over all that was guessed'),
  cautions: z.array(z.string()).readonly(),
  cautionIds: z.array(id).readonly().describe('rows of the cautions, in the same order'),
  sources: z.record(z.string(), Source).describe('of the limits'),
  defer: z.array(z.string()).readonly(),
});
export type AirJson = z.infer<typeof AirJson>;
