import { z } from 'zod';
import {
  PHASES,
  type EmergencyNumber,
  type FirstAid,
  type LineText,
  type Region,
} from '../../reasoning/index.js';
import { HowKnown, Id, Ids, Percent, Text, row } from './row.js';

export const LineRow: z.ZodType<LineText> = z.strictObject({
  id: Id,
  phase: z.enum(PHASES),
  rank: z.number(),
  head: Text,
  rest: z.string(),
});

export const FirstAidRow: z.ZodType<FirstAid> = z.strictObject({
  ...row,
  name: Text,
  door: z.enum(['spill', 'eye', 'skin', 'swallowed', 'breathed', 'fire']),
  steps: z.array(Text).min(1),
  never: z.array(Text).optional(),
});

const Numbers: z.ZodType<readonly EmergencyNumber[]> = z.array(
  z.strictObject({ name: Text, number: Text, hours: Text.optional() }),
);

export const RegionRow: z.ZodType<Region> = z.strictObject({
  ...row,
  name: Text,
  emergency: Numbers,
  poison: Numbers,
  call: Text,
  poisonCall: Text,
  checkedOn: z.iso.date(),
  checkedIn: Text,
  flushMinutes: z.number().positive(),
  units: z.enum(['metric', 'us']),
  wasteCodes: z.array(
    z.strictObject({
      code: Text,
      hazardous: z.boolean(),
      means: Text,
      how: HowKnown,
      for: Ids,
      isProse: z.boolean().optional(),
      onlyIgnitable: z.boolean().optional(),
      onlyAgents: Ids.optional(),
    }),
  ),
  thresholds: z.array(
    z.strictObject({
      name: Text,
      value: Text,
      unit: Text,
      how: HowKnown,
      note: Text.optional(),
    }),
  ),
  standards: z.array(z.strictObject({ title: Text, clause: Text, figure: Text, how: HowKnown })),
  limitsOf: Ids.optional(),
  wipes: z
    .strictObject({
      days: z.number().positive(),
      label: Text,
      words: Text,
      source: z.string(),
      notThrownAway: z.array(Text),
    })
    .optional(),
  ignitableWasteBelowC: z.number().optional(),
  notIgnitableUnderAlcoholPercent: Percent.optional(),
  generator: z
    .strictObject({
      verySmallUpToKg: z.number().positive(),
      largeFromKg: z.number().positive(),
      largeOverAcuteKg: z.number().positive(),
    })
    .optional(),
  deferTo: z.array(z.strictObject({ role: Text, phrase: Text })).min(1),
  fire: z.strictObject({ solvent: Text, oilRag: Text, neverOnSolvent: Text }),
});
