import type { z } from 'zod';
import type { Messages } from '../../words/index.js';
import { gotAt } from '../plugins/validationProblems.js';
import { readExactly } from './number.js';
import { PROBLEMS_TOLD, type Problem } from './problem.js';
import { acceptsNumber } from './sumsBody.js';
import { keyOf, keysOf, type Field, type Fields } from './sumsFields.js';
import { readSum, type SumReading } from './sumsRead.js';
import type { Sum } from './sumsSum.js';
import { unitsOf, type Unit } from './sumsUnits.js';

/** Name of an input of the page: `volume`, or `parts-1-level` in the first row of a list. */
export const inputName = (name: string, list = '', row = 0): string =>
  list === '' ? name : `${list}-${row + 1}-${name}`;

/** Name of the choice of its unit; one for a whole list. */
export const unitInput = (name: string, list = ''): string =>
  list === '' ? `${name}-unit` : `${list}-${name}-unit`;

/** The unit that was chosen; of none, the metric one. */
export const unitChosen = (
  query: URLSearchParams,
  input: string,
  field: Field,
): Unit | undefined => {
  if (field.kind === 'choice') return undefined;
  const units = unitsOf(field.quantity);
  return units.find(({ suffix }) => suffix === query.get(input)) ?? units[0];
};

type Body = Record<string, unknown>;

/** A form of the page as a body of that sum, and which input each place of the body came from. */
interface Sent {
  readonly body: Body;
  readonly inputs: ReadonlyMap<string, string>;
  readonly problems: readonly Problem[];
}

/** The body that a query holds. A row in which nothing is typed is no row. */
function sentBody(sum: Sum, query: URLSearchParams, messages: Messages): Sent {
  const inputs = new Map<string, string>();
  const problems: Problem[] = [];
  const take = (fields: Fields, list: string, row: number, path: string): Body => {
    const taken: Body = {};
    for (const [name, field] of Object.entries(fields)) {
      const input = inputName(name, list, row);
      for (const key of keysOf(name, field)) inputs.set(`${path}/${key}`, input);
      const typed = query.get(input)?.trim() ?? '';
      const unit = unitChosen(query, unitInput(name, list), field);
      if (typed === '') continue;
      if (field.kind === 'choice' || unit === undefined) {
        taken[name] = typed;
        continue;
      }
      const value = readExactly(typed);
      if (value !== undefined) taken[keyOf(name, unit)] = value;
      else {
        const accepts = acceptsNumber(field, unit, messages);
        problems.push({ path: `${path}/${keyOf(name, unit)}`, field: input, got: typed, accepts });
      }
    }
    return taken;
  };
  const body = take(sum.fields, '', 0, '');
  for (const [list, { fields, shown }] of Object.entries(sum.lists)) {
    const names = Object.keys(fields);
    const filled = Array.from({ length: shown }, (_, row) => row).filter((row) =>
      names.some((name) => (query.get(inputName(name, list, row))?.trim() ?? '') !== ''),
    );
    inputs.set(`/${list}`, inputName(names[0] ?? '', list));
    const rows = filled.map((row, at) => take(fields, list, row, `/${list}/${at}`));
    if (rows.length > 0 || !sum.lists[list]?.isOptional) body[list] = rows;
  }
  return { body, inputs, problems };
}

/** Works out the sum of a form that was sent; each problem names the input that it is about. */
export function readSumQuery(
  sum: Sum,
  schema: z.ZodType,
  query: URLSearchParams,
  messages: Messages,
): SumReading {
  const { body, inputs, problems } = sentBody(sum, query, messages);
  const inputOf = (path: string): string => inputs.get(path) ?? '';
  const unread = new Set(problems.map(({ field }) => field));
  const parsed = schema.safeParse(body);
  const wrong = parsed.success
    ? readSum(sum, body, messages)
    : {
        problems: parsed.error.issues.map(({ path, message }) => {
          const pointer = path.map((step) => `/${String(step)}`).join('');
          return { path: pointer, field: '', got: gotAt(body, pointer), accepts: message };
        }),
      };
  if (problems.length === 0 && wrong.problems === undefined) return wrong;
  const named = (wrong.problems ?? [])
    .map((problem) => ({ ...problem, field: inputOf(problem.path) }))
    .filter(({ field }) => !unread.has(field));
  return { problems: [...problems, ...named].slice(0, PROBLEMS_TOLD) };
}
