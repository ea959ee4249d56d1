import type { Fields, Lists, Rows, Values } from './sumsFields.js';
import type { Quantity } from './sumsUnits.js';

/**
 * A figure of an answer: in the base unit of its quantity, or by unit where no factor joins them.
 * Null: never. Undefined: it was not asked for.
 */
export type Figure = number | null | Readonly<Record<string, number | null>> | undefined;

/** What stands in an answer: figures of a quantity, or the id of a row. */
export type Answers = Readonly<Record<string, Quantity | 'id'>>;

export interface Outcome {
  readonly figures: Readonly<Record<string, Figure | string>>;
  /** One for each row of the list of that name. */
  readonly rows?: Readonly<Record<string, readonly Readonly<Record<string, Figure>>[]>>;
}

/** Something that does not fit together; `accepts` is a key of messages. */
export interface Fault {
  /** JSON pointer into the body. */
  readonly path: string;
  readonly accepts: string;
}

/**
 * A sum, once for programs and for people: what it asks, what it answers, where its formula is from.
 * Its words stand in messages under `sums.` and its id.
 */
export interface Sum<F extends Fields = Fields, L extends Lists = Lists> {
  readonly id: string;
  readonly fields: F;
  readonly lists: L;
  readonly answers: Answers;
  readonly rowAnswers: Readonly<Record<string, Answers>>;
  /** Ids of rules/sources.yaml. */
  readonly sources: readonly string[];
  wrong(values: Values<F>, rows: Rows<L>): readonly Fault[];
  work(values: Values<F>, rows: Rows<L>): Outcome;
}

/** A sum whose formula gets its values by their names and kinds. */
export const aSum = <F extends Fields, L extends Lists>(sum: Sum<F, L>): Sum => sum;

/** Undefined in reasoning means never; in an answer that is null. */
export const orNever = (value: number | undefined): number | null => value ?? null;

/** The fault of a list of levels whose units differ; nothing where they agree. */
export const unitsApart = (
  at: readonly { readonly path: string; readonly unit: string }[],
): readonly Fault[] =>
  at
    .filter(({ unit }) => unit !== at[0]?.unit)
    .map(({ path, unit }) => ({ path: path + unit, accepts: 'sums.wrong.units' }));
