import { z } from 'zod';

/**
 * Parts of the bodies that programs send. Each says in plain words what it
 * accepts, whatever is wrong: a wrong type as well as a wrong value.
 */

/** What a number in those bounds is asked for with. */
export const numberAccepts = (unit: string, low: number, high: number): string =>
  `a number of ${unit}, ${low} to ${high.toLocaleString('en-GB')}`;

/** A number in those bounds, of that unit. */
export function numberOf(unit: string, low: number, high: number) {
  const accepts = numberAccepts(unit, low, high);
  return z.number(accepts).min(low, accepts).max(high, accepts);
}

/** Words with at least one letter and at most `most`. */
export const wordsOf = (accepts: string, most: number) =>
  z.string(accepts).trim().min(1, accepts).max(most, accepts);

/** A list of at most `most` things. */
export function listOf<T extends z.ZodType>(item: T, most: number, things: string) {
  const accepts = `a list of up to ${most} ${things}`;
  return z.array(item, accepts).max(most, accepts);
}

/** One of a few ids. */
export const oneOf = (ids: readonly string[]) => z.enum(ids, `one of ${ids.join(', ')}`);

/** True or false. */
export const yesOrNo = () => z.boolean('true or false');

/** An object of these keys and no others; `accepts` says so to whom sends something else. */
export const objectOf = <T extends z.ZodRawShape>(shape: T, accepts: string) =>
  z.strictObject(shape, {
    error: (issue) => (issue.code === 'invalid_type' ? accepts : undefined),
  });
