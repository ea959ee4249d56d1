import type { FastifyInstance } from 'fastify';
import { canonicalAddress, parseAddress, typedOfAddress } from '../forms/address.js';
import { benchOfForm, formOf, readForm, type BenchForm } from '../forms/benchForm.js';
import type { Problem } from '../forms/problem.js';
import { benchView } from '../presenters/benchView.js';
import { HIDDEN } from './hidden.js';
import { sendKept } from './keep.js';
import { queryOf } from './queryOf.js';
import type { SheetParts } from './sheet.js';

/** GET / and POST /bench: today's bench is said here, and leads to its sheet. */
export function benchPages(app: FastifyInstance, parts: SheetParts): void {
  const { catalogue, words, known } = parts;
  const view = (form: BenchForm, problems: readonly Problem[]) =>
    benchView({ catalogue, words, form, problems });

  app.get('/', HIDDEN, (request, reply) => {
    const query = queryOf(request);
    return sendKept(reply, parts, {
      key: `bench ${query}`,
      name: 'bench',
      view: () =>
        view(formOf(typedOfAddress(query), known), parseAddress(query, known).problems ?? []),
    });
  });

  app.post('/bench', HIDDEN, (request, reply) => {
    const form = readForm(request.body);
    reply.header('cache-control', 'no-store');
    if (form.wants !== 'sheet') return reply.page('bench', view(form, []));
    const { bench, problems } = benchOfForm(form, known);
    if (bench) return reply.redirect(`/sheet?${canonicalAddress(bench)}`, 303);
    return reply.code(422).page('bench', view(form, problems));
  });
}
