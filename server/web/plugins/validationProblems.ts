import type { FastifyError } from 'fastify';
import { PROBLEMS_TOLD, type Problem } from '../forms/problem.js';
import { shown } from '../forms/text.js';

type Issue = NonNullable<FastifyError['validation']>[number];

/** What a body that was read has wrong, from what its schema said of it. */
export function validationProblems(issues: readonly Issue[], body: unknown): readonly Problem[] {
  return issues.flatMap((issue) => problemsOf(issue, body)).slice(0, PROBLEMS_TOLD);
}

function problemsOf(issue: Issue, body: unknown): Problem[] {
  const path = issue.instancePath === '/' ? '' : issue.instancePath;
  const { keys } = issue.params;
  if (issue.keyword === 'unrecognized_keys' && Array.isArray(keys)) {
    return keys.map((key) => ({
      path: `${path}/${String(key)}`,
      field: '',
      got: 'a key that is not known',
      accepts: 'the keys that /api/openapi.json lists',
    }));
  }
  const got = gotAt(body, path);
  return [{ path, field: '', got, accepts: issue.message ?? 'something else' }];
}

/** What stands at a path (JSON pointer) of a body, in words short enough to be shown. */
export const gotAt = (body: unknown, path: string): string => gotText(valueAt(body, path));

function valueAt(body: unknown, path: string): unknown {
  const steps = path.split('/').slice(1);
  return steps.reduce<unknown>(
    (value, step) =>
      typeof value === 'object' && value !== null && Object.hasOwn(value, step)
        ? (value as Readonly<Record<string, unknown>>)[step]
        : undefined,
    body,
  );
}

function gotText(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (Array.isArray(value)) return `a list of ${value.length.toLocaleString('en-GB')}`;
  if (typeof value === 'object' && value !== null) return 'an object';
  return shown(JSON.stringify(value));
}
