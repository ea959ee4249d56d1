import type { z } from 'zod';
import type { Messages } from '../../words/index.js';
import { listOf, numberAccepts, numberOf, objectOf, oneOf } from './schema.js';
import { boundsOf, keyOf, type Field, type Fields, type NumberField } from './sumsFields.js';
import type { Sum } from './sumsSum.js';
import { unitsOf, type Unit } from './sumsUnits.js';

/** The name of a unit as people read it. */
export const unitName = (unit: Unit, messages: Messages): string =>
  messages(`unit.${unit.suffix === '' ? 'none' : unit.suffix}`);

/** What is accepted for a number in one of its units. */
export const acceptsNumber = (field: NumberField, unit: Unit, messages: Messages): string =>
  numberAccepts(unitName(unit, messages), ...boundsOf(field, unit));

/** Every key may be left out here: which of them must be there, `readSum` says. */
const keysOfField = (
  [name, field]: readonly [string, Field],
  messages: Messages,
): readonly (readonly [string, z.ZodType])[] => {
  const describe = messages(`sums.field.${name}`);
  if (field.kind === 'choice') {
    const ids = field.choices.map(({ id }) => id);
    return [[name, oneOf(ids).optional().describe(describe)]];
  }
  return unitsOf(field.quantity).map((unit) => [
    keyOf(name, unit),
    numberOf(unitName(unit, messages), ...boundsOf(field, unit))
      .optional()
      .describe(`${describe}, ${unitName(unit, messages)}`),
  ]);
};

const shapeOf = (fields: Fields, messages: Messages): z.ZodRawShape =>
  Object.fromEntries(Object.entries(fields).flatMap((field) => keysOfField(field, messages)));

const example = (shape: z.ZodRawShape): string =>
  `{ ${Object.keys(shape)
    .map((key) => `"${key}": ...`)
    .join(', ')} }`;

/** The body that a program sends for a sum. */
export const bodyOf = (sum: Sum, messages: Messages) => {
  const lists = Object.entries(sum.lists).map(([name, { fields, most, isOptional }]) => {
    const row = shapeOf(fields, messages);
    const list = listOf(objectOf(row, example(row)), most, messages(`sums.list.${name}`));
    return [name, isOptional ? list.optional() : list.min(1, example(row))] as const;
  });
  const shape = { ...shapeOf(sum.fields, messages), ...Object.fromEntries(lists) };
  return objectOf(shape, example(shape));
};
