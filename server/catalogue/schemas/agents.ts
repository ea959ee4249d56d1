import { z } from 'zod';
import type { Agent, GloveGrade, HazardCode, Limit, Substance } from '../../reasoning/index.js';
import { HowKnown, Ids, LowHigh, Text, known, row } from './row.js';

export const Grades: z.ZodType<Readonly<Record<string, GloveGrade>>> = z.record(
  z.string(),
  z.enum(['VG', 'G', 'F', 'P']),
);

export const AgentRow: z.ZodType<Agent> = z.strictObject({
  ...row,
  name: Text,
  shortName: Text,
  substance: z.string(),
  marks: Ids,
  residue: z.enum(['none', 'oil-film', 'soap-film']),
  followUps: Ids,
  stage: z.number().min(0),
  apply: Text,
  applyBrief: Text,
  applyDried: Text,
  ml: z.strictObject({ small: LowHigh, medium: LowHigh, large: LowHigh }),
  glove: z.strictObject({
    chartRows: Ids,
    standIn: Grades.optional(),
    chemicals: Ids,
    words: Text,
  }),
});

const Amount = z.number().positive();

const ExposureLimit: z.ZodType<Limit> = z
  .strictObject({
    region: z.string(),
    body: Text,
    kind: z.enum(['long-term', 'short-term', 'ceiling']),
    mgM3: Amount.optional(),
    ppm: Amount.optional(),
    how: HowKnown,
    source: z.string(),
    note: Text.optional(),
  })
  .refine(({ mgM3, ppm }) => mgM3 !== undefined || ppm !== undefined, {
    error: 'a figure: mgM3, ppm or both',
  });

export const SubstanceRow: z.ZodType<Substance> = z.strictObject({
  ...row,
  name: Text,
  cas: z
    .string()
    .regex(/^\d{2,7}-\d{2}-\d(, \d{2,7}-\d{2}-\d)*$/, {
      error: 'CAS numbers like 67-64-1, with commas between them',
    })
    .optional(),
  kind: Text,
  isMixture: z.boolean().optional(),
  molarMassGMol: Amount.optional(),
  densityGMl: Amount.optional(),
  flashPointC: z.number().optional(),
  boilingPointC: z.number().optional(),
  vapourPressurePa: z.number().min(0).optional(),
  lelPercent: Amount.max(100).optional(),
  uelPercent: Amount.max(100).optional(),
  viscosityMm2S: Amount.optional(),
  limits: z.array(ExposureLimit),
  signal: z.enum(['Danger', 'Warning']).optional(),
  hazardCodes: Ids,
  precautionaryCodes: Ids,
  pictograms: z.array(z.string().regex(/^GHS0[1-9]$/, { error: 'GHS01 to GHS09' })),
});

export const HazardCodeRow: z.ZodType<HazardCode> = z.strictObject({
  ...known,
  id: z.string().regex(/^(H|P|EUH|AUH)\d{3}[A-Za-z]{0,2}(\+(H|P)\d{3}[A-Za-z]{0,2})*$/, {
    error: 'a code like H226, EUH066 or P301+P310',
  }),
  text: Text,
  kind: z.enum(['hazard', 'supplemental', 'precautionary']),
});
