import type { Region } from '../types.js';

/** A waste, as far as lighting easily goes. */
interface WasteFacts {
  /** Lowest closed-cup flash point of what is in it, degrees Celsius; absent when not known. */
  readonly flashPointC?: number | undefined;
  /** Percent of alcohol by volume, for a waste that is otherwise water. */
  readonly alcoholInWaterPercent?: number | undefined;
  /** Not a liquid, may heat itself and then burns hard (rags with drying oil). */
  readonly selfHeating?: boolean | undefined;
}

/**
 * Whether a waste counts as one that lights easily (US D001, EU HP 3): it heats itself, or it is a
 * liquid that flashes below the region's line. Unknown counts as yes.
 * Sources: 40 CFR 261.21; Waste Framework Directive, Annex III, HP 3; the figures are in rules/regions.
 * @example isIgnitableWaste(us, { flashPointC: 60 }) // false
 */
export const isIgnitableWaste = (region: Region, waste: WasteFacts): boolean => {
  const { flashPointC, alcoholInWaterPercent, selfHeating } = waste;
  const lineC = region.ignitableWasteBelowC;
  if (selfHeating === true || lineC === undefined || flashPointC === undefined) return true;
  const isWeakAlcohol =
    alcoholInWaterPercent !== undefined &&
    alcoholInWaterPercent < (region.notIgnitableUnderAlcoholPercent ?? 0);
  return flashPointC < lineC && !isWeakAlcohol;
};

/**
 * Category of a studio by the hazardous waste it makes in a calendar month, kg; undefined in a region
 * that has no such categories. Source: 40 CFR 262.13 to 262.17; the figures are in rules/regions.
 * @example generatorCategory(us, { kg: 100, acuteKg: 0 }) // 'very-small'
 */
export const generatorCategory = (
  region: Region,
  month: { readonly kg: number; readonly acuteKg: number },
): 'very-small' | 'small' | 'large' | undefined => {
  const lines = region.generator;
  if (lines === undefined) return undefined;
  if (month.kg >= lines.largeFromKg || month.acuteKg > lines.largeOverAcuteKg) return 'large';
  return month.kg > lines.verySmallUpToKg ? 'small' : 'very-small';
};

/** What keeps a can of solvent wipes outside the region's wipes rule. */
type WipesFault =
  'no-rule' | 'too-old' | 'open' | 'wrong-label' | 'free-liquid' | 'solvent-not-covered';

/**
 * All that keeps a can of wipes outside the region's wipes rule; nothing when the rule holds.
 * Days count from the first wipe in the can. Source: 40 CFR 261.4(a)(26) and (b)(18).
 */
export const wipesFaults = (
  region: Region,
  can: {
    readonly days: number;
    readonly label: string;
    readonly closed: boolean;
    readonly freeLiquid: boolean;
    readonly solvent: string;
    /** Thrown away, or washed and used again. */
    readonly thrownAway: boolean;
  },
): readonly WipesFault[] => {
  const rule = region.wipes;
  if (rule === undefined) return ['no-rule'];
  const faults: readonly (readonly [WipesFault, boolean])[] = [
    ['too-old', can.days > rule.days],
    ['open', !can.closed],
    ['wrong-label', can.label !== rule.label],
    ['free-liquid', can.freeLiquid],
    ['solvent-not-covered', can.thrownAway && rule.notThrownAway.includes(can.solvent)],
  ];
  return faults.filter(([, holds]) => holds).map(([fault]) => fault);
};
