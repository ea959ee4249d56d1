import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import type { Catalogue } from '../../reasoning/index.js';
import type { Messages, Words } from '../../words/index.js';
import { makeSums } from '../forms/sums.js';
import { bodyOf } from '../forms/sumsBody.js';
import { readSum } from '../forms/sumsRead.js';
import type { Sum } from '../forms/sumsSum.js';
import { problemAnswers } from './problemAnswer.js';
import { sumAnswer, sumJson } from './sumsAnswer.js';

/** POST /api/calc/… : the small sums of ventilation, for users and for checks. */
export function sumsApi(
  app: FastifyInstance,
  { catalogue, words }: { readonly catalogue: Catalogue; readonly words: Words },
): void {
  const { message } = words;
  for (const sum of makeSums(catalogue)) {
    app.withTypeProvider<ZodTypeProvider>().post(
      `/api/calc/${sum.id}`,
      {
        schema: {
          summary: message(`sums.${sum.id}.title`),
          description: describe(sum, catalogue, message),
          body: bodyOf(sum, message),
          response: { 200: sumAnswer(sum), ...problemAnswers },
        },
      },
      (request, reply) => {
        const { outcome, problems } = readSum(sum, request.body, message);
        void (outcome
          ? reply.send(sumJson(sum, outcome, message('sums.says')))
          : reply.problem('BODY_WRONG', { problems }));
      },
    );
  }
}

/** What it answers, its formula in words and in signs, and where that is from. */
const describe = (sum: Sum, { sources }: Catalogue, message: Messages): string =>
  [
    message(`sums.${sum.id}.lead`),
    message(`sums.${sum.id}.words`),
    message(`sums.${sum.id}.formula`),
    ...sources
      .filter(({ id }) => sum.sources.includes(id))
      .map(({ title, how }) => `${title} (${message(`how.${how}`)}).`),
  ].join('\n\n');
