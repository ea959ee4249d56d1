import { z } from 'zod';
import type { SdsRules, SdsSection } from '../../reasoning/index.js';
import { Text, row } from './row.js';

const Section = z.number().int().min(1).max(16);

export const SdsSectionRow: z.ZodType<SdsSection> = z.strictObject({
  ...row,
  section: Section,
  heading: Text,
  holds: z.array(Text).min(1),
});

/** What sds-sections.yaml holds beside its list of sections. */
export const SdsFigures: z.ZodType<Pick<SdsRules, 'settledBy'>> = z.strictObject({
  settledBy: z.strictObject({
    ink: Section,
    additive: Section,
    surface: Section,
    agent: Section,
    equipment: Section,
    person: Section,
    air: Section,
  }),
});
