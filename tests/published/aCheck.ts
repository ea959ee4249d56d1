import type { z } from 'zod';

/** What a case of one kind is given, and what the project then answers. */
interface Check<Given> {
  readonly given: z.ZodType<Given>;
  readonly answer: (given: Given) => unknown;
}

export const aCheck = <Given>(
  given: z.ZodType<Given>,
  answer: (given: Given) => unknown,
): Check<Given> => ({
  given,
  answer,
});
