import { z } from 'zod';

/** Parts that several answers share. */

export const How = z.enum(['read', 'from memory', 'common practice']);

export const Source = z.strictObject({
  id: z.string(),
  title: z.string(),
  publisher: z.string().optional(),
  year: z.string().optional(),
  where: z.string().optional(),
  how: How,
});
