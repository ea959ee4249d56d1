import type { HydrocarbonRules, RoundingStep } from '../types.js';

/** A part of a hydrocarbon liquid: its share by mass (0 to 1), and its group or a limit of its own. */
export type HydrocarbonPart = { readonly share: number } & (
  { readonly group: string } | { readonly limitMgM3: number }
);

/** The limit of a hydrocarbon liquid by the values of one column. */
export interface HydrocarbonLimit {
  /** The column that the groups are of; undefined where every part has a limit of its own. */
  readonly column: string | undefined;
  readonly rawMgM3: number;
  /** As the column rounds it; undefined where no rounding rule is known. */
  readonly roundedMgM3: number | undefined;
}

/**
 * Long-term limit of a hydrocarbon liquid by the reciprocal procedure, mg/m3: `1 / sum(F / GGV)`.
 * Undefined where a group is not known, a limit is 0, nothing is in it, or its groups are of two
 * columns: their values differ up to fivefold and must not be mixed.
 * Source: ACGIH, TLVs and BEIs, appendix H, and EH40, p. 47, both from memory.
 */
export const hydrocarbonLimit = (
  { groups, columns }: HydrocarbonRules,
  parts: readonly HydrocarbonPart[],
): HydrocarbonLimit | undefined => {
  const found = parts.map((part) =>
    'group' in part ? groups.find(({ id }) => id === part.group) : part,
  );
  const sum = parts.reduce(
    (all, { share }, place) => all + share / (found[place]?.limitMgM3 ?? 0),
    0,
  );
  const used = new Set(found.flatMap((row) => (row && 'column' in row ? row.column : [])));
  if (used.size > 1 || !(sum > 0 && sum < Infinity)) return undefined;
  const column = columns.find(({ id }) => used.has(id));
  return {
    column: column?.id,
    rawMgM3: 1 / sum,
    roundedMgM3: column?.rounding && roundLimit(1 / sum, column.rounding),
  };
};

/** So that a half is a half, whatever the last digit of a quotient is. */
const HAIR = 1e-9;

/**
 * A limit to the nearest step of the rule that holds from there on, mg/m3. A half goes down, to the
 * careful side; one that would round to nothing stays as it is.
 * @example roundLimit(531, [{ from: 0, to: 25 }, { from: 100, to: 50 }]) // 550
 */
export const roundLimit = (limitMgM3: number, rounding: readonly RoundingStep[]): number => {
  const step = rounding.findLast(({ from }) => limitMgM3 >= from)?.to;
  return step === undefined
    ? limitMgM3
    : Math.ceil(limitMgM3 / step - 1 / 2 - HAIR) * step || limitMgM3;
};
