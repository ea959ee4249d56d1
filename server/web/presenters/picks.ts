import type { FormValues } from '../forms/benchForm.js';
import type { Problem } from '../forms/problem.js';

/** What was typed and what is wrong with it, by field of the bench page. */
export interface Typed {
  readonly values: FormValues;
  readonly problems: readonly Problem[];
}

/** A field to type in. Its id is its name, so that a message can lead to it. */
export interface FieldView {
  readonly name: string;
  readonly value: string;
  /** Id of the message beside it; empty when nothing is wrong. */
  readonly wrongId: string;
  readonly got: string;
  readonly accepts: string;
}

/** Something to tick, with a number beside it where it has one. */
export interface PickView {
  readonly id: string;
  readonly field: string;
  readonly value: string;
  readonly label: string;
  readonly isOn: boolean;
  /** Path of a drawing; empty when it has none. */
  readonly drawing: string;
  readonly isExtender: boolean;
  /** None, or the one field of its share or percent. */
  readonly amounts: readonly FieldView[];
}

const allTyped = (typed: Typed, field: string): readonly string[] => typed.values.get(field) ?? [];

/** What was typed into a field first; empty when nothing was. */
export const firstTyped = (typed: Typed, field: string): string =>
  typed.values.get(field)?.[0] ?? '';

/** A field with what was typed and what is wrong with it. */
export function fieldView(typed: Typed, name: string): FieldView {
  const problem = typed.problems.find((one) => one.field === name);
  return {
    name,
    value: firstTyped(typed, name),
    wrongId: problem ? `${name}-wrong` : '',
    got: problem?.got ?? '',
    accepts: problem?.accepts ?? '',
  };
}

/** A row to tick in `field`; `amount` is the name of the field for its number. */
export function pickView(
  typed: Typed,
  row: {
    readonly field: string;
    readonly value: string;
    readonly label: string;
    readonly drawing?: string;
    readonly isExtender?: boolean;
    readonly amount?: string;
  },
): PickView {
  const amounts = row.amount === undefined ? [] : [fieldView(typed, row.amount)];
  const isNumbered = amounts.some((amount) => amount.value.trim() !== '');
  return {
    id: `${row.field}.${row.value}`,
    field: row.field,
    value: row.value,
    label: row.label,
    isOn: isNumbered || allTyped(typed, row.field).includes(row.value),
    drawing: row.drawing === undefined ? '' : `tools/${row.drawing}`,
    isExtender: row.isExtender === true,
    amounts,
  };
}
