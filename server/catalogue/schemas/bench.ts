import { z } from 'zod';
import type { BenchInput, UsualBench } from '../../reasoning/index.js';
import { Ids, Percent, Text, row } from './row.js';

const Positive = z.number().positive();

const Bench: z.ZodType<BenchInput> = z.strictObject({
  region: z.string().optional(),
  mixes: z.array(
    z.strictObject({
      name: Text.optional(),
      parts: z.array(z.strictObject({ ink: z.string(), share: Positive.optional() })),
      additives: z
        .array(z.strictObject({ additive: z.string(), percent: Percent.optional() }))
        .optional(),
      dried: z.boolean().optional(),
      on: Ids.optional(),
    }),
  ),
  surfaces: Ids,
  equipment: Ids.optional(),
  agentsAtHand: Ids.optional(),
  uses: z.array(z.strictObject({ agent: z.string(), ml: Positive })).optional(),
  room: z
    .strictObject({
      volumeM3: Positive.optional(),
      lengthM: Positive.optional(),
      widthM: Positive.optional(),
      heightM: Positive.optional(),
      air: z.string().optional(),
      airChangesPerHour: Positive.optional(),
      fanM3PerHour: Positive.optional(),
      mixingFactor: Positive.optional(),
      temperatureC: z.number().optional(),
    })
    .optional(),
  people: z
    .strictObject({
      count: z.number().int().positive().optional(),
      under16: z.boolean().optional(),
      flags: Ids.optional(),
    })
    .optional(),
});

export const UsualBenchRow: z.ZodType<UsualBench> = z.strictObject({
  ...row,
  name: Text,
  short: Text,
  bench: Bench,
});
