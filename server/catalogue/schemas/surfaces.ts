import { z } from 'zod';
import type { Equipment, OtherChemical, Pair, Person, Surface } from '../../reasoning/index.js';
import { Ids, Text, known, row } from './row.js';

export const SurfaceRow: z.ZodType<Surface> = z.strictObject({
  ...row,
  name: Text,
  shortName: Text,
  what: Text,
  group: z.enum(['slab', 'roller', 'block', 'plate', 'press', 'screen', 'tool']),
  marks: Ids,
  method: z.enum(['wash', 'scrape-only', 'as-rag', 'keep-ink-off']),
  oilFilm: z.enum(['may-stay', 'must-go']),
  brings: Ids,
  turn: z.number().min(0),
  size: z.enum(['small', 'medium', 'large']),
  scrape: Text.optional(),
  last: Text,
  drawing: Text,
  common: z.boolean().optional(),
});

const Grading = z.enum(['ok', 'brief', 'harms']);

/** A pair is known by its surface and agent: its id is made from them. */
export const PairRow: z.ZodType<Pair> = z
  .strictObject({
    ...known,
    surface: z.string(),
    agent: z.string(),
    grade: Grading,
    why: Text,
    apply: Text.optional(),
    studioGrade: Grading.optional(),
    studioWhy: Text.optional(),
  })
  .transform((pair) => ({ id: `${pair.surface}.${pair.agent}`, ...pair }));

export const EquipmentRow: z.ZodType<Equipment> = z.strictObject({
  ...row,
  name: Text,
  shortName: Text,
  marks: Ids,
  drawing: Text,
});

export const PersonRow: z.ZodType<Person> = z.strictObject({ ...row, name: Text, ask: Text });

export const OtherRow: z.ZodType<OtherChemical> = z.strictObject({
  ...row,
  name: Text,
  marks: Ids,
});
