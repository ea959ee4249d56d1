import type { BandRules, Bottle, Substance } from '../types.js';
import { saturatedMgM3, saturatedPpm } from '../sums/convert.js';
import { flammableClass } from './flammableClass.js';

/** What an agent's published facts come to. */
export interface AgentHazard {
  /** Saturated vapour over the lowest long-term limit; undefined when it gives off none or has no limit. */
  readonly vapourRatio: number | undefined;
  readonly vapourRank: number;
  readonly fireCategory: 1 | 2 | 3 | 4 | null;
  readonly fireRank: number;
  readonly healthRank: number;
  /** The worst of the three ranks: agents of one band ask for the same air and people. */
  readonly band: number;
  /** The sum of the three ranks: what the planner makes least. */
  readonly hazard: number;
}

/** The facts that matter here, from a substance row with a bottle's own facts laid over it. */
export interface HazardFacts {
  readonly flashPointC: number | undefined;
  readonly boilingPointC: number | undefined;
  readonly vapourPressurePa: number | undefined;
  readonly molarMassGMol: number | undefined;
  readonly longTermMgM3: readonly number[];
  readonly longTermPpm: readonly number[];
  readonly hazardCodes: readonly string[];
  /** The flash point is a bottle's own, and says how it burns in place of the generic codes. */
  readonly hasOwnFlashPoint: boolean;
}

/** The temperature that the tables' vapour pressures stand for, C. */
const TABLE_C = 20;

/** Facts of a substance; a bottle's data sheet replaces what it states. */
export const hazardFacts = (substance: Substance, bottle?: Bottle): HazardFacts => {
  const longTerm = substance.limits.filter((limit) => limit.kind === 'long-term');
  const ownLimit = bottle?.limitMgM3;
  return {
    flashPointC: bottle?.flashPointC ?? substance.flashPointC,
    boilingPointC: bottle?.boilingPointC ?? substance.boilingPointC,
    vapourPressurePa: bottle?.vapourPressurePa ?? substance.vapourPressurePa,
    molarMassGMol: substance.molarMassGMol,
    longTermMgM3:
      ownLimit === undefined ? longTerm.flatMap((limit) => limit.mgM3 ?? []) : [ownLimit],
    longTermPpm: ownLimit === undefined ? longTerm.flatMap((limit) => limit.ppm ?? []) : [],
    hazardCodes: bottle?.hazardCodes ?? substance.hazardCodes,
    hasOwnFlashPoint: bottle?.flashPointC !== undefined && bottle.hazardCodes === undefined,
  };
};

/**
 * Saturated vapour at 20 C over the lowest long-term limit, each in its own unit (ppm by partial
 * pressure, mg/m3 by the ideal gas law). Undefined when no limit is known.
 */
export const vapourRatio = (facts: HazardFacts): number | undefined => {
  const pressure = facts.vapourPressurePa ?? 0;
  const ppm = saturatedPpm(pressure);
  const ratios = facts.longTermPpm.map((limit) => ppm / limit);
  const { molarMassGMol } = facts;
  if (molarMassGMol !== undefined) {
    const mgM3 = saturatedMgM3(pressure, molarMassGMol, TABLE_C);
    ratios.push(...facts.longTermMgM3.map((limit) => mgM3 / limit));
  }
  return ratios.length === 0 ? undefined : Math.max(...ratios);
};

/**
 * Band and hazard of an agent from published facts: vapour hazard ratio, flash-point category and
 * hazard codes, ranked by the table. A code that the table does not rank counts as the worst.
 */
export const agentHazard = (facts: HazardFacts, rules: BandRules): AgentHazard => {
  const ratio = isVolatile(facts, rules) ? vapourRatio(facts) : undefined;
  const vapour = vapourRank(facts, ratio, rules);
  const fireCategory =
    facts.flashPointC === undefined
      ? null
      : flammableClass({ flashPointC: facts.flashPointC, boilingPointC: facts.boilingPointC }).ghs
          .category;
  const fire = Math.max(
    fireRank(fireCategory ?? 'none', rules),
    ...(facts.hasOwnFlashPoint ? [] : facts.hazardCodes)
      .flatMap((code) => rules.fireCodes[code] ?? [])
      .map((category) => fireRank(category, rules)),
  );
  const health = Math.max(
    0,
    ...facts.hazardCodes
      .filter((code) => rules.fireCodes[code] === undefined)
      .map((code) => rules.health[code] ?? worstRank(rules)),
  );
  return {
    vapourRatio: ratio,
    vapourRank: vapour,
    fireCategory,
    fireRank: fire,
    healthRank: health,
    band: Math.max(vapour, fire, health),
    hazard: vapour + fire + health,
  };
};

const fireRank = (category: string | number, rules: BandRules): number =>
  rules.fire[category] ?? worstRank(rules);

const isVolatile = (facts: HazardFacts, rules: BandRules): boolean =>
  (facts.vapourPressurePa ?? 0) >= rules.nonVolatileBelowPa;

const vapourRank = (facts: HazardFacts, ratio: number | undefined, rules: BandRules): number => {
  if (!isVolatile(facts, rules)) return 0;
  if (ratio === undefined) return rules.noLimitRank;
  return rules.vapour.find((row) => ratio < row.below)?.rank ?? rules.noLimitRank;
};

const worstRank = (rules: BandRules): number => Math.max(...rules.bands.map((band) => band.band));
