import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import type { BenchInput } from '../../reasoning/index.js';
import { sheetText } from '../../output/text/sheetText.js';
import { problemAnswers } from '../api/problemAnswer.js';
import { SheetAnswer } from '../api/sheetAnswer.js';
import { sheetJson } from '../api/sheetJson.js';
import { canonicalAddress, parseAddress, typedOfAddress } from '../forms/address.js';
import { formOf } from '../forms/benchForm.js';
import type { KnownIds } from '../forms/known.js';
import type { Problem } from '../forms/problem.js';
import { HTML } from '../plugins/views.js';
import { wantedForm, type Form } from '../plugins/wantedForm.js';
import { benchView } from '../presenters/benchView.js';
import { sheetView } from '../presenters/sheetView.js';
import type { KeptParts } from './keep.js';
import { HIDDEN } from './hidden.js';
import { queryOf } from './queryOf.js';

export interface SheetParts extends KeptParts {
  readonly known: KnownIds;
}

const TYPES: Readonly<Record<Form, string>> = {
  html: HTML,
  json: 'application/json; charset=utf-8',
  txt: 'text/plain; charset=utf-8',
};

/** GET /sheet, /sheet.json, /sheet.txt: the address holds the whole bench, so the answer can be kept. */
export function sheetPages(app: FastifyInstance, parts: SheetParts): void {
  const { keep, clock, known, publicOrigin } = parts;
  const answer = (request: FastifyRequest, reply: FastifyReply) => {
    const form = wantedForm(request);
    const rawQuery = queryOf(request);
    const day = clock.today();
    const keyOf = (query: string) => `sheet ${form} ${day} ${query}`;
    reply.header('cache-control', 'no-cache').header('vary', 'Accept');
    const kept = keep.kept(keyOf(rawQuery));
    if (kept) return reply.finished(kept);
    const { bench, problems } = parseAddress(rawQuery, known);
    if (!bench) return wrongAddress(request, reply, problems, parts);
    const address = canonicalAddress(bench);
    const path = `/sheet?${address}`;
    const page =
      keep.kept(keyOf(address)) ??
      keep.make(keyOf(address), {
        type: TYPES[form],
        canonical: `${publicOrigin ?? ''}${path}`,
        text: () => sheetInForm(bench, { address: path, form, day }, parts),
      });
    if (address !== rawQuery) keep.also(keyOf(rawQuery), page);
    return reply.finished(page);
  };
  app.get('/sheet', HIDDEN, answer);
  app.get('/sheet.txt', HIDDEN, answer);
  app.get('/sheet.json', { schema: SHEET_JSON }, answer);
  app.post('/sheet', HIDDEN, (_request, reply) =>
    reply.header('allow', 'GET, HEAD').problem('METHOD_WRONG'),
  );
}

/** Only described: the address is read as it stands, by its own grammar. */
const SHEET_JSON = {
  summary: 'The wash-up sheet of a bench that the address holds',
  response: { 200: SheetAnswer, 422: problemAnswers[422] },
};

interface Wanted {
  readonly address: string;
  readonly form: Form;
  readonly day: string;
}

function sheetInForm(bench: BenchInput, wanted: Wanted, parts: SheetParts): string {
  const { catalogue, words, version, reasoner, renderPage } = parts;
  const { address, form, day: madeOn } = wanted;
  const sheet = reasoner.sheet(bench);
  switch (form) {
    case 'json':
      return JSON.stringify(sheetJson(sheet, words));
    case 'txt':
      return sheetText(sheet, words, { address, madeOn, version });
    case 'html':
      return renderPage('sheet', sheetView(sheet, { words, catalogue, address, madeOn, version }));
  }
}

/** People get the bench page back with all that the address said, each problem beside its field. */
function wrongAddress(
  request: FastifyRequest,
  reply: FastifyReply,
  problems: readonly Problem[],
  { catalogue, words, known }: SheetParts,
): FastifyReply | Promise<FastifyReply> {
  if (wantedForm(request) !== 'html') return reply.problem('BENCH_WRONG', { problems });
  const form = formOf(typedOfAddress(queryOf(request)), known);
  return reply
    .code(422)
    .header('cache-control', 'no-store')
    .page('bench', benchView({ catalogue, words, form, problems }));
}
