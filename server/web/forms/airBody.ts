import { z } from 'zod';
import type { AirInput } from '../../reasoning/index.js';
import { BottleBody, id, number, RoomBody } from './bodyParts.js';
import { ACCEPTS, MOST } from './limits.js';
import { listOf, objectOf, yesOrNo } from './schema.js';

const SizedRoom = RoomBody.refine(
  ({ volumeM3, lengthM, widthM, heightM }) =>
    volumeM3 !== undefined ||
    (lengthM !== undefined && widthM !== undefined && heightM !== undefined),
  ACCEPTS.roomSize,
);

const AirUseBody = objectOf(
  {
    agent: id(ACCEPTS.liquid)
      .optional()
      .describe('an id of /rules, or any name: then it is unknown'),
    substance: id(ACCEPTS.liquid).optional().describe('instead of an agent'),
    ml: number('airMl'),
    startMin: number('startMin').optional().describe('left out: at the beginning'),
    minutes: number('minutes')
      .optional()
      .describe('the vapour comes off evenly over so long; left out: a wiped film that dies away'),
    evaporates: number('evaporates').optional().describe('share of the liquid; left out: all'),
    lidded: yesOrNo().optional().describe('what is still wet after the use goes under a lid'),
  },
  'a use: { "agent": ..., "ml": ... }',
).refine(
  ({ agent, substance }) => (agent === undefined) !== (substance === undefined),
  ACCEPTS.oneLiquid,
);

/** A day in the air of a room as JSON. A key that is not listed is refused. */
export const AirBody = objectOf(
  {
    region: z.string('a region').max(MOST.letters, 'a region').optional(),
    room: SizedRoom,
    uses: listOf(AirUseBody, MOST.airUses, 'uses'),
    horizonMin: number('horizonMin')
      .optional()
      .describe('length of the curve; left out: until the room is aired, at most a day'),
    zones: z
      .union([z.literal(1), z.literal(2)], ACCEPTS.zones)
      .optional()
      .describe('2, and what is left out: the air at the bench by itself'),
    shiftHours: number('shiftHours').optional().describe('left out: 8'),
    bottles: listOf(BottleBody, MOST.bottles, 'bottles')
      .optional()
      .describe("what the data sheets of the studio's own bottles say"),
  },
  'a room and its uses as a JSON object',
) satisfies z.ZodType<AirInput>;
