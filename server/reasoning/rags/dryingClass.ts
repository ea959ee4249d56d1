import type { DryingClass, DryingScheme, Oil } from '../types.js';

/**
 * Class of an oil by iodine value (grams per 100 g) under one published scheme of rules/oils.yaml:
 * below the scheme's range it does not dry, above it dries.
 * @example dryingClass(128, { semiDryingFrom: 125, semiDryingTo: 150 }) // 'semi-drying'
 */
export const dryingClass = (
  iodineValue: number,
  scheme: Pick<DryingScheme, 'semiDryingFrom' | 'semiDryingTo'>,
): DryingClass => {
  if (iodineValue < scheme.semiDryingFrom) return 'non-drying';
  return iodineValue > scheme.semiDryingTo ? 'drying' : 'semi-drying';
};

/**
 * Whether rags with an oil are to be treated as self-heating. Ours, the cautious side of all
 * schemes: named drying or semi-drying, an iodine value that reaches `selfHeatsFrom` at the high end
 * of its range, or nothing known of it.
 */
export const mayRagsSelfHeat = (
  oil: Pick<Oil, 'byName' | 'iodine'>,
  selfHeatsFrom: number,
): boolean => {
  if (oil.byName !== undefined) return oil.byName === 'drying' || oil.byName === 'semi-drying';
  return oil.iodine === undefined || oil.iodine.high >= selfHeatsFrom;
};
