import { z } from 'zod';
import type { How, Range, Source } from '../../reasoning/index.js';

/** Lower-case words joined by hyphens. */
export const Id = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, {
  error: 'lower-case words joined by hyphens',
});

/** An id of a source: letters and digits, as short as can be. */
const SourceId = z
  .string()
  .regex(/^[A-Za-z][A-Za-z0-9-]*$/, { error: 'a source id (letters, digits, hyphens)' });

/** Text that somebody reads. */
export const Text = z.string().regex(/\S/, { error: 'some text' });

export const HowKnown: z.ZodType<How> = z.enum(['read', 'from memory', 'common practice']);

/** Ids of rows of other tables; whether they exist is checked once all tables are read. */
export const Ids = z.array(z.string());

export const SourceRow: z.ZodType<Source> = z.strictObject({
  id: SourceId,
  title: Text,
  publisher: Text.optional(),
  year: Text.optional(),
  where: Text.optional(),
  how: HowKnown,
});

/** The columns that every row has, beside its id. */
export const known = {
  how: HowKnown,
  sources: z.array(z.string()).min(1, { error: 'at least one source id' }),
  note: Text.optional(),
};

/** The columns that every row has. */
export const row = { id: Id, ...known };

/** Least and most. */
export const LowHigh: z.ZodType<Range> = z
  .strictObject({ low: z.number().min(0), high: z.number().min(0) })
  .refine(({ low, high }) => low <= high, { error: 'low no higher than high' });

export const Percent = z.number().min(0).max(100);
