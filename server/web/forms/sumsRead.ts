import type { Messages } from '../../words/index.js';
import { gotAt } from '../plugins/validationProblems.js';
import type { Problem } from './problem.js';
import { acceptsNumber } from './sumsBody.js';
import {
  keyOf,
  keysOf,
  type Field,
  type Fields,
  type Given,
  type NumberField,
} from './sumsFields.js';
import type { Outcome, Sum } from './sumsSum.js';
import { unitsOf } from './sumsUnits.js';

/** The outcome of a body that its schema has let through, or what does not fit in it. */
export type SumReading =
  | { readonly outcome: Outcome; readonly problems?: undefined }
  | { readonly outcome?: undefined; readonly problems: readonly Problem[] };

type Body = Readonly<Record<string, unknown>>;
type Taken = Readonly<Record<string, Given | string | undefined>>;

/** Works a sum out. Paths of problems are JSON pointers into the body. */
export function readSum(sum: Sum, body: Body, messages: Messages): SumReading {
  const problems: Problem[] = [];
  const note = (path: string, got: string, accepts: string) =>
    problems.push({ path, field: '', got, accepts });
  const take = (fields: Fields, from: Body, path: string): Taken =>
    Object.fromEntries(
      Object.entries(fields).map(([name, field]) => {
        const keys = keysOf(name, field).filter((key) => from[key] !== undefined);
        const [key, second] = keys;
        if (second !== undefined) {
          note(`${path}/${second}`, `${keys.length} units`, messages('sums.wrong.oneUnit'));
        }
        if (key === undefined && !field.isOptional) {
          note(`${path}/${keysOf(name, field)[0] ?? name}`, 'nothing', accepted(field, messages));
        }
        return [name, key === undefined ? undefined : givenOf(name, field, from, key)];
      }),
    );
  const values = take(sum.fields, body, '');
  const rows = Object.fromEntries(
    Object.entries(sum.lists).map(([name, list]) => [
      name,
      rowsOf(body, name).map((row, at) => take(list.fields, row, `/${name}/${at}`)),
    ]),
  );
  if (problems.length > 0) return { problems };
  for (const { path, accepts } of sum.wrong(values, rows)) {
    note(path, gotAt(body, path), messages(accepts));
  }
  return problems.length > 0 ? { problems } : { outcome: sum.work(values, rows) };
}

const rowsOf = (body: Body, name: string): readonly Body[] =>
  (body[name] as readonly Body[] | undefined) ?? [];

/** What a number that is missing is asked for with: in its metric unit. */
const accepted = (field: NumberField, messages: Messages): string =>
  unitsOf(field.quantity)
    .slice(0, 1)
    .map((metric) => acceptsNumber(field, metric, messages))
    .join('');

function givenOf(name: string, field: Field, body: Body, key: string): Given | string {
  const value = body[key];
  if (field.kind === 'choice' || typeof value !== 'number') return String(value);
  const unit = unitsOf(field.quantity).find((one) => keyOf(name, one) === key);
  return { base: unit?.toBase(value) ?? value, unit: unit?.suffix ?? '' };
}
