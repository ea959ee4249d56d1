import { z } from 'zod';
import type {
  Breakthrough,
  GloveChartRow,
  GloveMaterial,
  GloveRules,
} from '../../reasoning/index.js';
import { Grades } from './agents.js';
import { Text, row } from './row.js';

export const GloveMaterialRow: z.ZodType<GloveMaterial> = z.strictObject({
  ...row,
  name: Text,
  named: z.boolean(),
});

export const GloveChartRowRow: z.ZodType<GloveChartRow> = z.strictObject({
  ...row,
  chemical: Text,
  limitedService: z.boolean(),
  grades: Grades,
});

const Minutes = z.number().min(0);

export const BreakthroughRow: z.ZodType<Breakthrough> = z.strictObject({
  ...row,
  chemical: Text,
  material: z.string(),
  thickness: z.enum(['thin', 'thick', 'unknown']),
  minutesLow: Minutes,
  minutesHigh: Minutes.optional(),
  testedWarm: z.boolean(),
});

const Share = z.number().gt(0).max(1);
const Whole = z.number().int().min(0);

/** What gloves.yaml holds beside its three lists of rows. */
export const GloveFigures: z.ZodType<Omit<GloveRules, 'materials' | 'chart' | 'breakthrough'>> =
  z.strictObject({
    mostMinutes: z.number().positive(),
    share: z.strictObject({ testedWarm: Share, testedCool: Share }),
    levels: z.array(z.strictObject({ level: Whole, overMinutes: Minutes })).min(1),
    types: z.array(z.strictObject({ type: Text, minLevel: Whole, minChemicals: Whole })).min(1),
    letters: z.array(z.strictObject({ letter: Text, chemical: Text })).min(1),
  });
