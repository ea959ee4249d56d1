import { z } from 'zod';
import type { BenchInput } from '../../reasoning/index.js';
import { BottleBody, id, number, RoomBody, text } from './bodyParts.js';
import type { KnownIds } from './known.js';
import { ACCEPTS, MOST } from './limits.js';
import { readBench, type Reading } from './readBench.js';
import { listOf, objectOf, yesOrNo } from './schema.js';
import { typedOf } from './typedBench.js';

const many = <T extends z.ZodType>(
  item: T,
  name:
    'mixes' | 'parts' | 'additives' | 'surfaces' | 'equipment' | 'agentsAtHand' | 'uses' | 'flags',
) => {
  const accepts = `a list of ${ACCEPTS[name]}`;
  return z.array(item, accepts).max(MOST[name], accepts);
};

const Part = objectOf(
  {
    ink: id(ACCEPTS.ink).describe('an id of /rules, or any name: then it is unknown'),
    share: number('share').optional().describe('percent by weight of the mix'),
  },
  'an ink: { "ink": ..., "share": ... }',
);

const AdditiveGiven = objectOf(
  {
    additive: id(ACCEPTS.additive).describe('an id of /rules, or any name: then it is unknown'),
    percent: number('percent').optional().describe('percent by weight of the mix'),
  },
  'an additive: { "additive": ..., "percent": ... }',
);

const MixBody = objectOf(
  {
    name: text().optional(),
    parts: many(Part, 'parts'),
    additives: many(AdditiveGiven, 'additives').optional(),
    dried: yesOrNo().optional().describe('it has skinned over or dried'),
    on: many(id(ACCEPTS.name), 'surfaces').optional().describe('only on these surfaces'),
  },
  'a mix: { "parts": [...], "additives": [...] }',
);

const PeopleBody = objectOf(
  {
    count: number('count').int(ACCEPTS.count).optional(),
    under16: z
      .union([z.boolean(), z.number().min(0)], 'true, false, or how many')
      .optional()
      .describe('whether anyone is under 16, or how many are'),
    flags: many(id(ACCEPTS.name), 'flags')
      .optional()
      .describe('pregnant, asthma, latex-allergy, alone ...'),
  },
  'people: { "count": ..., "flags": [...] }',
);

const UseBody = objectOf(
  { agent: id(ACCEPTS.name), ml: number('ml') },
  'a use: { "agent": ..., "ml": ... }',
);

/** The bench as JSON. A key that is not listed is refused: a misspelt caution must not vanish. */
export const BenchBody = objectOf(
  {
    region: z.string('a region').max(MOST.letters, 'a region').optional(),
    mixes: many(MixBody, 'mixes'),
    surfaces: many(id(ACCEPTS.name), 'surfaces'),
    equipment: many(id(ACCEPTS.name), 'equipment').optional(),
    agentsAtHand: many(id(ACCEPTS.name), 'agentsAtHand')
      .optional()
      .describe('left out: whatever the plan wants can be had'),
    uses: many(UseBody, 'uses').optional(),
    room: RoomBody.optional(),
    people: PeopleBody.optional(),
    bottles: listOf(BottleBody, MOST.bottles, 'bottles')
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
