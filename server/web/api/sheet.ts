import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { BenchBody, benchOfBody } from '../forms/benchBody.js';
import type { KnownIds } from '../forms/known.js';
import type { Parts } from '../parts.js';
import { SheetAnswer } from './sheetAnswer.js';
import { sheetJson } from './sheetJson.js';
import { problemAnswers } from './problemAnswer.js';

/** POST /api/sheet: a bench in, its sheet out. */
export function sheetApi(app: FastifyInstance, parts: Parts & { readonly known: KnownIds }): void {
  const { reasoner, words, known } = parts;
  app.withTypeProvider<ZodTypeProvider>().post(
    '/api/sheet',
    {
      schema: {
        summary: 'The wash-up sheet of a bench',
        body: BenchBody,
        response: { 200: SheetAnswer, ...problemAnswers },
      },
    },
    (request, reply) => {
      const { bench, problems } = benchOfBody(request.body, known);
      void reply.header('cache-control', 'no-store');
      void (bench
        ? reply.send(sheetJson(reasoner.sheet(bench), words))
        : reply.problem('BENCH_WRONG', { problems }));
    },
  );
}
