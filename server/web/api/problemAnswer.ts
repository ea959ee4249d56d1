import { z } from 'zod';

/** RFC 9457, with what was got and what is accepted at each path. */
export const ProblemAnswer = z.strictObject({
  type: z.string(),
  title: z.string(),
  status: z.number(),
  code: z.string(),
  detail: z.string(),
  errors: z.array(
    z.strictObject({
      path: z.string().describe('JSON pointer (RFC 6901) into the body'),
      got: z.string(),
      accepts: z.string(),
    }),
  ),
});

export const problemAnswers = {
  400: ProblemAnswer.describe('the body cannot be read'),
  415: ProblemAnswer.describe('the body is not JSON'),
  422: ProblemAnswer.describe('the body was read, and something in it is wrong'),
} as const;
