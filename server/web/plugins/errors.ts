import { STATUS_CODES } from 'node:http';
import type { FastifyError, FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { type ErrorCode, errorMessage, ERRORS } from '../../errors.js';
import type { Problem } from '../forms/problem.js';
import { errorView } from '../presenters/errorView.js';
import { validationProblems } from './validationProblems.js';
import { wantedForm } from './wantedForm.js';

declare module 'fastify' {
  interface FastifyReply {
    /** Answers with what is wrong: problem+json (RFC 9457) to programs, a calm page to people. */
    problem: (code: ErrorCode, details?: ProblemDetails) => FastifyReply | Promise<FastifyReply>;
  }
}

interface ProblemDetails {
  readonly problems?: readonly Problem[];
  readonly values?: Readonly<Record<string, string>>;
  /** HTTP status, when a finer one than the code's is known. */
  readonly status?: number;
}

/** The body of an error for programs. */
function problemJson(
  code: ErrorCode,
  { problems = [], values, status = ERRORS[code].status }: ProblemDetails = {},
): object {
  return {
    type: 'about:blank',
    title: STATUS_CODES[status],
    status,
    code,
    detail: errorMessage(code, values),
    errors: problems.map(({ path, got, accepts }) => ({ path, got, accepts })),
  };
}

/** Gives each reply `problem`, and answers whatever was thrown or not found. */
export function useErrors(app: FastifyInstance): void {
  app.decorateReply('problem', function (this: FastifyReply, code, details = {}) {
    const status = details.status ?? ERRORS[code].status;
    this.code(status).header('cache-control', 'no-store');
    switch (wantedForm(this.request)) {
      case 'json':
        return this.type('application/problem+json').send(
          JSON.stringify(problemJson(code, details)),
        );
      case 'txt':
        return this.type('text/plain; charset=utf-8').send(problemText(code, details));
      case 'html': {
        const says = errorMessage(code, details.values);
        return this.page('error', errorView({ status, says, problems: details.problems ?? [] }));
      }
    }
  });
  app.setNotFoundHandler((_request, reply) => reply.problem('PAGE_UNKNOWN'));
  app.setErrorHandler(answerError);
  useJsonOnly(app);
}

function problemText(code: ErrorCode, { problems = [], values }: ProblemDetails): string {
  const lines = problems.map((one) => `- ${one.path}: got ${one.got}; accepts ${one.accepts}`);
  return `${[errorMessage(code, values), ...lines].join('\n')}\n`;
}

/** What went wrong on the way: the asker's fault is told, ours is logged and kept to ourselves. */
function answerError(
  error: Partial<FastifyError>,
  request: FastifyRequest,
  reply: FastifyReply,
): FastifyReply | Promise<FastifyReply> {
  const { validation, statusCode = 500 } = error;
  if (validation) {
    return reply.problem('BODY_WRONG', { problems: validationProblems(validation, request.body) });
  }
  if (statusCode >= 400 && statusCode < 500) {
    return reply.problem('REQUEST_UNREADABLE', unreadable(statusCode));
  }
  request.log.error({ err: error }, 'unexpected error');
  return reply.problem('UNEXPECTED');
}

/** An address that cannot be read reaches neither hooks nor pages: answered here, in plain words. */
export function answerUnreadable(
  _error: FastifyError,
  request: FastifyRequest,
  reply: FastifyReply,
): void {
  const code = 'REQUEST_UNREADABLE';
  reply.code(ERRORS[code].status).header('x-content-type-options', 'nosniff');
  void (request.url.startsWith('/api/')
    ? reply.type('application/problem+json').send(JSON.stringify(problemJson(code)))
    : reply.type('text/plain; charset=utf-8').send(problemText(code, {})));
}

const TOO_LARGE = 413;
const WRONG_TYPE = 415;

/** What was wrong with a body that was not read, in our words: the parser's tell nobody what to do. */
function unreadable(status: number): ProblemDetails {
  const [got, accepts] = UNREAD[status] ?? [
    'a body that cannot be read',
    'JSON that is whole and has no key "__proto__", or the form of the bench page',
  ];
  return { status, problems: [{ path: '', field: '', got, accepts }] };
}

const UNREAD: Readonly<Record<number, readonly [got: string, accepts: string]>> = {
  [TOO_LARGE]: ['a body that is too large', 'a smaller body'],
  [WRONG_TYPE]: ['a body of another type', 'application/json; from the bench page its form'],
};

/** The interface for programs reads JSON and nothing else; a form sent there is told so. */
function useJsonOnly(app: FastifyInstance): void {
  app.addHook('onRequest', (request, reply, done) => {
    const type = request.headers['content-type'];
    const isApi = request.url.startsWith('/api/') && type !== undefined;
    if (!isApi || /^application\/json\s*(;|$)/i.test(type)) {
      done();
      return;
    }
    void reply.problem('REQUEST_UNREADABLE', unreadable(WRONG_TYPE));
  });
}
