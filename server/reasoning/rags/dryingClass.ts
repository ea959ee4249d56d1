/** Drying class of an oil by iodine value under one published scheme. */
export type DryingClass = 'drying' | 'semi-drying' | 'non-drying';

/** Where a scheme draws its lines, in grams of iodine per 100 g of oil; both ends are semi-drying. */
export interface DryingScheme {
  readonly id: string;
  readonly semiDryingFrom: number;
  readonly semiDryingTo: number;
}

/** Class of an oil by one scheme: below the range it does not dry, above it dries. */
export const dryingClass = (iodineValue: number, scheme: DryingScheme): DryingClass => {
  if (iodineValue < scheme.semiDryingFrom) return 'non-drying';
  return iodineValue > scheme.semiDryingTo ? 'drying' : 'semi-drying';
};

/** An oil with what is published of it. */
export interface OilFacts {
  /** Set where the name decides and not the number (tung, boiled or bodied oils, mineral oil). */
  readonly byName?: DryingClass | 'does-not-dry' | undefined;
  readonly iodineValue?: number | undefined;
}

/**
 * Whether rags with an oil are to be treated as self-heating. Ours, the cautious side of all
 * schemes: named drying or semi-drying, an iodine value of `selfHeatsFrom` or more, or unknown.
 */
export const mayRagsSelfHeat = (oil: OilFacts, selfHeatsFrom: number): boolean => {
  if (oil.byName !== undefined) return oil.byName === 'drying' || oil.byName === 'semi-drying';
  return oil.iodineValue === undefined || oil.iodineValue >= selfHeatsFrom;
};
