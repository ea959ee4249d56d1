import swagger from '@fastify/swagger';
import type { FastifyInstance } from 'fastify';
import {
  jsonSchemaTransform,
  validatorCompiler,
  type ZodTypeProvider,
} from 'fastify-type-provider-zod';

/**
 * Bodies are checked, and /api/openapi.json is written, from the same zod
 * schemas. Answers are only described by theirs: tests hold the two together,
 * so that no request pays for it.
 */
export async function useOpenApi(app: FastifyInstance, version: string): Promise<void> {
  app.setValidatorCompiler(validatorCompiler);
  app.setSerializerCompiler(() => (data) => JSON.stringify(data));
  await app.register(swagger, {
    openapi: {
      openapi: '3.1.0',
      info: {
        title: 'Slab & Rag',
        version,
        description: 'Wash-up sheets for print studios. Data sheets and local rules come first.',
      },
    },
    transform: jsonSchemaTransform,
  });
  app
    .withTypeProvider<ZodTypeProvider>()
    .get('/api/openapi.json', { schema: { hide: true } }, () => app.swagger());
}
