import { z } from 'zod';
import type { Additive, Ink, Mark } from '../../reasoning/index.js';
import { HowKnown, Ids, LowHigh, Percent, Text, row } from './row.js';

export const MarkRow: z.ZodType<Mark> = z.strictObject({ ...row, means: Text });

const dose = { usualPercent: LowHigh.optional(), highestPercent: Percent.optional() };

export const InkRow: z.ZodType<Ink> = z.strictObject({
  ...row,
  name: Text,
  shortName: Text,
  group: z.enum(['oil', 'washable-oil', 'water', 'screen', 'litho-drawing', 'ground-and-resist']),
  binder: Text,
  marks: Ids,
  liftsWet: Ids,
  liftsDried: Ids,
  never: Ids,
  neverWhy: Text.optional(),
  finishWith: Ids.optional(),
  extender: z.boolean().optional(),
  ...dose,
  milder: Ids.optional(),
  common: z.boolean().optional(),
  clean: Text,
});

export const AdditiveRow: z.ZodType<Additive> = z.strictObject({
  ...row,
  name: Text,
  shortName: Text,
  purpose: Text,
  marks: Ids,
  substances: Ids,
  ...dose,
  doseHow: HowKnown,
  lifts: Ids.optional(),
  never: Ids.optional(),
  milder: Ids.optional(),
  common: z.boolean().optional(),
  clean: Text,
  rags: Text,
});
