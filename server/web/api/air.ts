import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { AirBody } from '../forms/airBody.js';
import type { KnownIds } from '../forms/known.js';
import type { Problem } from '../forms/problem.js';
import { readRegion, taking } from '../forms/readParts.js';
import type { Parts } from '../parts.js';
import { AirJson } from './airAnswer.js';
import { airJson } from './airJson.js';
import { problemAnswers } from './problemAnswer.js';

/** POST /api/air: a room and its uses in, an estimate of the vapour in its air out. */
export function airApi(app: FastifyInstance, parts: Parts & { readonly known: KnownIds }): void {
  const { reasoner, words, known } = parts;
  app.withTypeProvider<ZodTypeProvider>().post(
    '/api/air',
    {
      schema: {
        summary: 'The vapour in the air of a room: an estimate, not a measurement',
        body: AirBody,
        response: { 200: AirJson, ...problemAnswers },
      },
    },
    (request, reply) => {
      const { region: typed = '', ...day } = request.body;
      const problems: Problem[] = [];
      const region = readRegion(typed, '', known, taking(problems));
      void reply.header('cache-control', 'no-store');
      void (problems.length === 0
        ? reply.send(airJson(reasoner.air({ ...day, ...(region !== '' && { region }) }), words))
        : reply.problem('BODY_WRONG', { problems }));
    },
  );
}
