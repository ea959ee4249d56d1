import { z } from 'zod';
import type { DryingScheme, Oil, OilRules } from '../../reasoning/index.js';
import { LowHigh, Text, row } from './row.js';

const IodineValue = z.number().min(0);

export const DryingSchemeRow: z.ZodType<DryingScheme> = z
  .strictObject({
    ...row,
    name: Text,
    semiDryingFrom: IodineValue,
    semiDryingTo: IodineValue,
  })
  .refine(({ semiDryingFrom, semiDryingTo }) => semiDryingFrom <= semiDryingTo, {
    path: ['semiDryingTo'],
    error: 'a figure no lower than semiDryingFrom',
  });

export const OilRow: z.ZodType<Oil> = z
  .strictObject({
    ...row,
    name: Text,
    iodine: LowHigh.optional(),
    byName: z.enum(['drying', 'semi-drying', 'non-drying', 'does-not-dry']).optional(),
  })
  .refine(({ iodine, byName }) => iodine !== undefined || byName !== undefined, {
    error: 'a range in iodine, a class in byName or both',
  });

/** What oils.yaml holds beside its two lists of rows. */
export const OilFigures: z.ZodType<Pick<OilRules, 'selfHeatsFrom'>> = z.strictObject({
  selfHeatsFrom: IodineValue,
});
