import { z } from 'zod';
import type { BenchInput, Bottle } from '../../reasoning/index.js';
import type { KnownIds } from './known.js';
import { ACCEPTS, MOST, NUMBERS, type NumberName } from './limits.js';
import { readBench, type Reading } from './readBench.js';
import { typedOf } from './typedBench.js';

const number = (name: NumberName) =>
  z
    .number(ACCEPTS[name])
    .min(NUMBERS[name].low, ACCEPTS[name])
    .max(NUMBERS[name].high, ACCEPTS[name]);

const id = (what: string) => z.string(what).trim().min(1, what).max(MOST.letters, what);

const many = <T extends z.ZodType>(
  item: T,
  name:
    'mixes' | 'parts' | 'additives' | 'surfaces' | 'equipment' | 'agentsAtHand' | 'uses' | 'flags',
) => z.array(item, ACCEPTS[name]).max(MOST[name], ACCEPTS[name]);

/** An object of these keys and no others; `what` says so to whom sends something else. */
const object = <T extends z.ZodRawShape>(shape: T, what: string) =>
  z.strictObject(shape, { error: (issue) => (issue.code === 'invalid_type' ? what : undefined) });

const Part = object(
  {
    ink: id(ACCEPTS.ink).describe('an id of /rules, or any name: then it is unknown'),
    share: number('share').optional().describe('percent by weight of the mix'),
  },
  'an ink: { "ink": ..., "share": ... }',
);

const AdditiveGiven = object(
  {
    additive: id(ACCEPTS.additive).describe('an id of /rules, or any name: then it is unknown'),
    percent: number('percent').optional().describe('percent by weight of the mix'),
  },
  'an additive: { "additive": ..., "percent": ... }',
);

const MixBody = object(
  {
    name: z.string(ACCEPTS.name).max(MOST.letters, ACCEPTS.name).optional(),
    parts: many(Part, 'parts'),
    additives: many(AdditiveGiven, 'additives').optional(),
    dried: z.boolean().optional().describe('it has skinned over or dried'),
    on: many(id(ACCEPTS.name), 'surfaces').optional().describe('only on these surfaces'),
  },
  'a mix: { "parts": [...], "additives": [...] }',
);

const RoomBody = object(
  {
    volumeM3: number('volumeM3').optional(),
    lengthM: number('lengthM').optional(),
    widthM: number('widthM').optional(),
    heightM: number('heightM').optional(),
    air: id(ACCEPTS.name).optional(),
    airChangesPerHour: number('airChangesPerHour').optional(),
    fanM3PerHour: number('fanM3PerHour').optional(),
    mixingFactor: number('mixingFactor').optional(),
    temperatureC: number('temperatureC').optional(),
  },
  'a room: { "volumeM3": ..., "air": ... }',
);

const PeopleBody = object(
  {
    count: number('count').int(ACCEPTS.count).optional(),
    under16: z
      .union([z.boolean(), z.number().min(0)], ACCEPTS.yesNo)
      .optional()
      .describe('whether anyone is under 16, or how many are'),
    flags: many(id(ACCEPTS.name), 'flags')
      .optional()
      .describe('pregnant, asthma, latex-allergy, alone ...'),
  },
  'people: { "count": ..., "flags": [...] }',
);

const BottleBody = z.strictObject({
  agent: id(ACCEPTS.name),
  name: z.string().max(MOST.letters).optional(),
  sdsDate: z.iso.date('a date such as 2026-03-01'),
  flashPointC: z.number().optional(),
  boilingPointC: z.number().optional(),
  vapourPressurePa: z.number().min(0).optional(),
  limitMgM3: z.number().positive().optional(),
  hazardCodes: z.array(z.string().max(MOST.letters)).max(MOST.hazardCodes).optional(),
}) satisfies z.ZodType<Bottle>;

/** The bench as JSON. A key that is not listed is refused: a misspelt caution must not vanish. */
export const BenchBody = object(
  {
    region: z.string().max(MOST.letters).optional(),
    mixes: many(MixBody, 'mixes'),
    surfaces: many(id(ACCEPTS.name), 'surfaces'),
    equipment: many(id(ACCEPTS.name), 'equipment').optional(),
    agentsAtHand: many(id(ACCEPTS.name), 'agentsAtHand')
      .optional()
      .describe('left out: whatever the plan wants can be had'),
    uses: many(z.strictObject({ agent: id(ACCEPTS.name), ml: number('ml') }), 'uses').optional(),
    room: RoomBody.optional(),
    people: PeopleBody.optional(),
    bottles: z
      .array(BottleBody)
      .max(MOST.bottles)
      .optional()
      .describe("what the data sheets of the studio's own bottles say"),
  },
  'a bench as a JSON object',
);

/** The bench of a JSON body that has the right shape, or what else is wrong with it. */
export function benchOfBody(body: z.infer<typeof BenchBody>, known: KnownIds): Reading {
  const { bottles, people, ...rest } = body;
  const under16 = people?.under16 === true || Number(people?.under16 ?? 0) > 0;
  const given: BenchInput = { ...rest, ...(people && { people: { ...people, under16 } }) };
  const reading = readBench(typedOf(given), known);
  return reading.bench && bottles ? { bench: { ...reading.bench, bottles } } : reading;
}
