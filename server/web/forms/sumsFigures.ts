import type { Answers, Figure } from './sumsSum.js';
import { unitsOf, type Quantity, type Unit } from './sumsUnits.js';

/** A figure of an answer in each unit that it has one in; null: never. */
export interface ShownFigure {
  readonly name: string;
  readonly values: readonly { readonly unit: Unit; readonly value: number | null }[];
}

type Found = Readonly<Record<string, Figure | string>>;

/** The figures that were asked for, in all their units. */
export const figuresOf = (answers: Answers, found: Found): readonly ShownFigure[] =>
  Object.entries(answers).flatMap(([name, quantity]) => {
    const figure = found[name];
    return quantity === 'id' || figure === undefined || typeof figure === 'string'
      ? []
      : [{ name, values: valuesOf(quantity, figure) }];
  });

const valuesOf = (quantity: Quantity, figure: Exclude<Figure, undefined>): ShownFigure['values'] =>
  unitsOf(quantity).flatMap((unit) => {
    if (figure === null) return { unit, value: null };
    if (typeof figure === 'number') return { unit, value: unit.fromBase(figure) };
    const value = figure[unit.suffix];
    return value === undefined ? [] : { unit, value };
  });

/** The ids of rows in an answer, by name. */
export const idsOf = (answers: Answers, found: Found): readonly (readonly [string, string])[] =>
  Object.entries(answers).flatMap(([name, quantity]) => {
    const id = found[name];
    return quantity === 'id' && typeof id === 'string' ? [[name, id] as const] : [];
  });
