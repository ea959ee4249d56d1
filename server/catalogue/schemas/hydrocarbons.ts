import { z } from 'zod';
import type { HydrocarbonColumn, HydrocarbonGroup } from '../../reasoning/index.js';
import { Text, row } from './row.js';

const MgM3 = z.number().positive();

export const HydrocarbonColumnRow: z.ZodType<HydrocarbonColumn> = z.strictObject({
  ...row,
  name: Text,
  rounding: z
    .array(z.strictObject({ from: z.number().min(0), to: MgM3 }))
    .min(1)
    .refine((steps) => steps.every(({ from }, at) => from > (steps[at - 1]?.from ?? -1)), {
      error: 'steps in order, smallest from first',
    })
    .optional(),
});

export const HydrocarbonGroupRow: z.ZodType<HydrocarbonGroup> = z.strictObject({
  ...row,
  column: z.string(),
  name: Text,
  limitMgM3: MgM3,
});
