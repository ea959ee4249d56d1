import type { Words } from '../../words/index.js';
import type { Problem } from '../forms/problem.js';
import { unitName } from '../forms/sumsBody.js';
import type { ChoiceField, Field } from '../forms/sumsFields.js';
import { inputName, unitChosen, unitInput } from '../forms/sumsQuery.js';
import { unitsOf } from '../forms/sumsUnits.js';
import { shown } from '../forms/text.js';

interface Option {
  readonly value: string;
  readonly label: string;
  readonly isOn: boolean;
}

/** The choice of a unit beside a number, or over a list. */
export interface SumUnitView {
  readonly id: string;
  readonly name: string;
  readonly label: string;
  readonly options: readonly Option[];
}

export interface SumFieldView {
  readonly id: string;
  readonly name: string;
  readonly label: string;
  /** Its only unit, or one that a list chooses: nothing. */
  readonly unitName: string;
  readonly isOptional: boolean;
  /** As typed. */
  readonly value: string;
  /** Null where a number has one unit, or a list chooses it. */
  readonly unit: SumUnitView | null;
  /** Null for a number. */
  readonly choice: readonly { readonly name: string; readonly options: readonly Option[] }[] | null;
  readonly wrongId: string;
  readonly got: string;
  readonly accepts: string;
}

type Entry = readonly [name: string, field: Field];

interface At {
  readonly sum: string;
  readonly list: string;
  readonly row: number;
  readonly query: URLSearchParams;
  readonly problems: ReadonlyMap<string, Problem>;
  readonly message: Words['message'];
}

/** An input of a sum, with what was typed in it and what is wrong with that. */
export function fieldView([name, field]: Entry, at: At): SumFieldView {
  const { sum, list, row, query, problems, message } = at;
  const input = inputName(name, list, row);
  const value = query.get(input) ?? '';
  const problem = problems.get(input);
  const [only, other] = field.kind === 'choice' ? [] : unitsOf(field.quantity);
  const id = `${sum}-${input}`;
  return {
    id,
    name: input,
    label: message(`sums.field.${name}`),
    unitName: only && !other ? unitName(only, message) : '',
    isOptional: field.isOptional,
    value: shown(value),
    unit: list === '' ? (unitView([name, field], at)[0] ?? null) : null,
    choice: field.kind === 'choice' ? choiceView(field, value) : null,
    wrongId: problem ? `${id}-wrong` : '',
    got: problem ? shown(problem.got) : '',
    accepts: problem?.accepts ?? '',
  };
}

/** The choice of its unit; nothing where there is only one. */
export function unitView(
  [name, field]: Entry,
  { sum, list, query, message }: Omit<At, 'row' | 'problems'>,
): readonly SumUnitView[] {
  const units = field.kind === 'choice' ? [] : unitsOf(field.quantity);
  if (units.length < 2) return [];
  const input = unitInput(name, list);
  const chosen = unitChosen(query, input, field);
  return [
    {
      id: `${sum}-${input}`,
      name: input,
      label: message('sums.unitOf', { what: message(`sums.field.${name}`) }),
      options: units.map((unit) => ({
        value: unit.suffix,
        label: unitName(unit, message),
        isOn: unit === chosen,
      })),
    },
  ];
}

const choiceView = ({ choices }: ChoiceField, value: string): SumFieldView['choice'] =>
  [...new Set(choices.map(({ group }) => group))].map((name) => ({
    name,
    options: choices
      .filter(({ group }) => group === name)
      .map((choice) => ({ value: choice.id, label: choice.name, isOn: choice.id === value })),
  }));
