import type { AirShare, Bottle, Limit, Region, Substance } from '../types.js';
import { compare } from '../book/compare.js';
import { REFERENCE_MOLAR_VOLUME, ppmToMgM3 } from '../sums/convert.js';

/** A limit that levels are compared with. */
export type AirLimit = Omit<AirShare, 'of'>;

/** What stretches or lowers printed limits. */
interface LimitRules {
  /** Times the long-term limit that a quarter of an hour may reach when none is printed for it. */
  readonly excursionFactor: number;
  /** What a longer shift leaves of a long-term limit, 0 to 1. */
  readonly longShift: number;
}

/** Source row of what a bottle's own data sheet says. */
const OWN_SHEET = 'own-data-sheet';

/**
 * All published limits of a substance, lowest first, each marked whether it counts in this region:
 * those of the region and of whatever it takes over; where it has none of that kind of its own, all.
 * A bottle's own limit stands for the table's long-term ones. Limits printed in ppm only are turned
 * into mg/m3 at 25 C, by the molar mass that is then named.
 */
export const limitsOf = (
  substance: Substance,
  bottles: readonly Bottle[],
  region: Region,
  rules: LimitRules,
): readonly AirLimit[] => {
  const own = bottles.flatMap((bottle) =>
    bottle.limitMgM3 === undefined ? [] : [ownLimit(bottle, bottle.limitMgM3, region)],
  );
  const isReplaced = bottles.length > 0 && own.length === bottles.length;
  const printed = [
    ...substance.limits.filter((limit) => !(isReplaced && limit.kind === 'long-term')),
    ...own,
  ];
  const here = new Set([region.id, ...(region.limitsOf ?? [])]);
  // By the table: what a bottle says never makes the limits of other places stop counting.
  const hasOwn = substance.limits.some(
    (limit) => limit.kind === 'long-term' && here.has(limit.region),
  );
  const applies = (limit: Limit): boolean => !hasOwn || here.has(limit.region);
  const found = printed.flatMap((limit) => counted(substance, limit, applies(limit), rules));
  return [...found, ...excursions(found, rules)].sort(
    (a, b) =>
      a.limitMgM3 - b.limitMgM3 ||
      compare(a.kind, b.kind) ||
      compare(a.limit, b.limit) ||
      compare(a.region, b.region),
  );
};

const ownLimit = (bottle: Bottle, mgM3: number, region: Region): Limit => ({
  region: region.id,
  body: bottle.name ?? bottle.sdsDate,
  kind: 'long-term',
  mgM3,
  how: 'read',
  source: OWN_SHEET,
});

const counted = (
  substance: Substance,
  limit: Limit,
  applies: boolean,
  { longShift }: LimitRules,
): readonly AirLimit[] => {
  const { mgM3, ppm } = limit;
  const { molarMassGMol } = substance;
  const isTurned = mgM3 === undefined && ppm !== undefined && molarMassGMol !== undefined;
  const figure = isTurned ? ppmToMgM3(ppm, molarMassGMol, REFERENCE_MOLAR_VOLUME) : mgM3;
  // A limit of nought (or none that can be counted with) has nothing to divide by.
  if (figure === undefined || figure <= 0) return [];
  return [
    {
      substance: substance.id,
      limit: limit.body,
      region: limit.region,
      kind: limit.kind,
      limitMgM3: limit.kind === 'long-term' ? figure * longShift : figure,
      printed: { ...(mgM3 === undefined ? {} : { mgM3 }), ...(ppm === undefined ? {} : { ppm }) },
      ...(isTurned ? { molarMassGMol } : {}),
      applies,
      how: limit.how,
      source: limit.source,
    },
  ];
};

/** Where no short-term limit or ceiling counts here, some multiple of the lowest long-term one. */
const excursions = (
  found: readonly AirLimit[],
  { excursionFactor, longShift }: LimitRules,
): readonly AirLimit[] => {
  const here = found.filter((limit) => limit.applies);
  if (here.some((limit) => limit.kind !== 'long-term')) return [];
  const lowest = lowestOf(here, ['long-term']);
  if (lowest === undefined) return [];
  // Longer shifts do not lower what a quarter of an hour may be.
  return [
    { ...lowest, kind: 'excursion', limitMgM3: (lowest.limitMgM3 / longShift) * excursionFactor },
  ];
};

/** Lowest of the limits of these kinds that count here. */
export const lowestOf = (
  limits: readonly AirLimit[],
  kinds: readonly AirLimit['kind'][],
): AirLimit | undefined =>
  limits
    .filter((limit) => limit.applies && kinds.includes(limit.kind))
    .reduce<AirLimit | undefined>(
      (lowest, limit) =>
        lowest === undefined || limit.limitMgM3 < lowest.limitMgM3 ? limit : lowest,
      undefined,
    );
