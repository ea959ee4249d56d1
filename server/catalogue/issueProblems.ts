import type { z } from 'zod';
import { childOf, type Path } from './tableFile.js';

/** What a schema found wrong, in the tables' terms. */
export interface SchemaProblem {
  readonly path: Path;
  readonly found: unknown;
  readonly accepts: string;
}

/** What zod says about `value`, as places, findings and what would do instead. */
export function issueProblems(issue: z.core.$ZodIssue, value: unknown): readonly SchemaProblem[] {
  const found = issue.path.reduce<unknown>(childOf, value);
  const at = (accepts: string): readonly SchemaProblem[] => [{ path: issue.path, found, accepts }];
  if (issue.code === 'unrecognized_keys') {
    const accepts = 'only the columns that rules/README.md names';
    return issue.keys.map((key) => ({ path: [...issue.path, key], found: key, accepts }));
  }
  if (issue.code === 'invalid_type') return at(`a ${NAMES[issue.expected] ?? issue.expected}`);
  if (issue.code === 'invalid_value') return at(issue.values.join(' | '));
  return at(issue.message);
}

const NAMES: Readonly<Record<string, string>> = {
  array: 'list',
  object: 'mapping of columns',
  record: 'mapping',
  string: 'text (quote it if it looks like a number)',
  boolean: 'true or false',
};
