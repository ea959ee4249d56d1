import type { FastifyRequest } from 'fastify';

const FORMS = ['html', 'json', 'txt'] as const;
/** The forms an answer can take. */
export type Form = (typeof FORMS)[number];

const TYPES: Readonly<Record<Form, string>> = {
  html: 'text/html',
  json: 'application/json',
  txt: 'text/plain',
};

/** The form that the address asks for, or else the one that Accept likes best; pages for people first. */
export function wantedForm(request: FastifyRequest): Form {
  const path = request.url.split('?', 1)[0] ?? '';
  if (path.startsWith('/api/') || path.endsWith('.json')) return 'json';
  if (path.endsWith('.txt')) return 'txt';
  return acceptedForm(request.headers.accept);
}

/** What browsers send; no need to weigh it. */
const HTML_FIRST = /^text\/html(,|$)/;

/** RFC 9110, 12.5.1: the most specific range that fits a form says how much it is liked. */
export function acceptedForm(accept: string | undefined): Form {
  if (accept === undefined || HTML_FIRST.test(accept)) return 'html';
  const ranges = accept.split(',').map(rangeOf);
  const liking = (form: Form): number => {
    const type = TYPES[form];
    const fitting = [type, `${type.slice(0, type.indexOf('/'))}/*`, '*/*'];
    const best = fitting.map((name) => ranges.find((range) => range.name === name));
    const problem =
      form === 'json' && ranges.find((range) => range.name === 'application/problem+json');
    return (best.find((range) => range !== undefined) ?? (problem || undefined))?.quality ?? 0;
  };
  const likings = FORMS.map((form) => [form, liking(form)] as const);
  const most = Math.max(...likings.map(([, quality]) => quality));
  return likings.find(([, quality]) => quality === most)?.[0] ?? 'html';
}

function rangeOf(text: string): { readonly name: string; readonly quality: number } {
  const [name = '', ...parameters] = text.split(';').map((part) => part.trim().toLowerCase());
  const quality = parameters.find((one) => one.startsWith('q='))?.slice(2);
  const liked = quality === undefined ? 1 : Number(quality);
  return { name, quality: Number.isFinite(liked) ? liked : 0 };
}
