import type { Range, Region } from '../reasoning/index.js';

export type AmountKind = 'ml' | 'rags';

const LITRE_ML = 1000;
/** US customary measures (NIST Handbook 44, appendix C): ml in one. */
const TEASPOON_ML = 4.929;
const FLUID_OUNCE_ML = 29.574;
const QUART_ML = 946.353;

const NUMBERS = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 3 });

/** A number as people write it, no more digits than it has. */
export const numberText = (value: number): string => NUMBERS.format(value);

/** "15 to 40"; one number when least and most are the same. */
export const rangeText = (range: Range): string =>
  range.low === range.high
    ? numberText(range.low)
    : `${numberText(range.low)} to ${numberText(range.high)}`;

/**
 * An amount with its unit; in US units beside it where the region counts in them.
 *
 * @example amountText({ low: 15, high: 40 }, 'ml', 'us') // '15 to 40 ml (0.5 to 1.5 fl oz)'
 */
export function amountText(range: Range, kind: AmountKind, units: Region['units']): string {
  if (kind === 'rags') return `${rangeText(range)} ${range.high === 1 ? 'rag' : 'rags'}`;
  const metric =
    range.high >= LITRE_ML
      ? `${rangeText(inUnits(range, LITRE_ML, 0.1))} ${range.high === LITRE_ML ? 'litre' : 'litres'}`
      : `${rangeText(range)} ml`;
  return units === 'us' ? `${metric} (${customary(range)})` : metric;
}

function customary(range: Range): string {
  if (range.high >= QUART_ML) return `${rangeText(inUnits(range, QUART_ML, 0.1))} qt`;
  return range.high < FLUID_OUNCE_ML
    ? `${rangeText(inUnits(range, TEASPOON_ML, 0.5))} tsp`
    : `${rangeText(inUnits(range, FLUID_OUNCE_ML, 0.5))} fl oz`;
}

/** The range in a larger unit, each end to the nearest step and never less than one step. */
function inUnits(range: Range, unit: number, step: number): Range {
  const to = (ml: number) => Math.max(1, Math.round(ml / unit / step)) * step;
  return { low: to(range.low), high: to(range.high) };
}
