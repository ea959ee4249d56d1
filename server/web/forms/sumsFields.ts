import { unitsOf, type Quantity, type Unit } from './sumsUnits.js';

/** A number that a sum asks for, with its bounds in the base unit. */
export interface NumberField {
  readonly kind: 'number';
  readonly quantity: Quantity;
  readonly low: number;
  readonly high: number;
  readonly isOptional: boolean;
}

/** One of a few ids of a table, or nothing. */
export interface ChoiceField {
  readonly kind: 'choice';
  readonly choices: readonly Choice[];
  readonly isOptional: true;
}

export interface Choice {
  readonly id: string;
  readonly name: string;
  /** What it stands under. */
  readonly group: string;
}

export type Field = NumberField | ChoiceField;
export type Fields = Readonly<Record<string, Field>>;

/** Rows that a sum asks for, each of these fields. */
interface List<F extends Fields = Fields> {
  readonly fields: F;
  readonly most: number;
  /** Rows that the page has room for. */
  readonly shown: number;
  readonly isOptional: boolean;
}
export type Lists = Readonly<Record<string, List>>;

/** A number as it was given: in the base unit, and the unit it came in. */
export interface Given {
  readonly base: number;
  /** The suffix of its key. */
  readonly unit: string;
}

type ValueOf<F extends Field> = F extends NumberField ? Given : string;
export type Values<F extends Fields> = {
  readonly [K in keyof F]: F[K]['isOptional'] extends false
    ? ValueOf<F[K]>
    : ValueOf<F[K]> | undefined;
};
export type Rows<L extends Lists> = {
  readonly [K in keyof L]: readonly Values<L[K]['fields']>[];
};

type Asked<Optional extends boolean> = NumberField & { readonly isOptional: Optional };

/** A number that must be given, between these bounds of its base unit. */
export const asks = (quantity: Quantity, low: number, high: number): Asked<false> => ({
  kind: 'number',
  quantity,
  low,
  high,
  isOptional: false,
});

/** A number that may be left out. */
export const mayAsk = (quantity: Quantity, low: number, high: number): Asked<true> => ({
  ...asks(quantity, low, high),
  isOptional: true,
});

/** One of these ids, or nothing. */
export const mayChoose = (choices: readonly Choice[]): ChoiceField => ({
  kind: 'choice',
  choices,
  isOptional: true,
});

/** The key of a field in one of its units: `volumeM3`. A unit with no name has none: `moleFraction`. */
export const keyOf = (name: string, unit: Unit): string => name + unit.suffix;

/** All keys that a field can be given by. */
export const keysOf = (name: string, field: Field): readonly string[] =>
  field.kind === 'choice' ? [name] : unitsOf(field.quantity).map((unit) => keyOf(name, unit));

/** The bounds of a number in one of its units, three digits long, the lower one first. */
export const boundsOf = ({ low, high }: NumberField, unit: Unit): readonly [number, number] => {
  const ends = [low, high].map((base) => Number(unit.fromBase(base).toPrecision(3)));
  return [Math.min(...ends), Math.max(...ends)];
};
