import type { AirInput, AirSaid, AirUse, Bottle, Region, Substance } from '../types.js';
import { compare } from '../book/compare.js';
import { sure } from '../book/sure.js';
import { longShiftFactor } from '../sums/exposure.js';
import type { AirBook } from './airBook.js';
import { liquidCautions, nameOf } from './liquidCautions.js';
import { type AirLimit, limitsOf, lowestOf } from './limits.js';
import { type NoVapour, type Vapour, vapourOf } from './vapour.js';

/** One liquid of the day, all its uses together. */
export interface Liquid {
  /** What was typed, where no table knows it. */
  readonly unknown?: string;
  readonly agent?: string;
  readonly substance: Substance;
  readonly vapour: Vapour;
  readonly limits: readonly AirLimit[];
  /** mg/m3 that shares count with: of a day, of a quarter of an hour, of a moment. */
  readonly longMgM3: number;
  readonly shortMgM3: number;
  readonly ceilingMgM3: number;
  readonly uses: readonly AirUse[];
}

/** The liquids that give off vapour, and what is to be said of those and of the others. */
export interface Liquids {
  readonly liquids: readonly Liquid[];
  readonly said: readonly AirSaid[];
}

interface Named {
  readonly key: string;
  readonly agent?: string;
  readonly unknown?: string;
  readonly substance: Substance;
  readonly bottles: readonly Bottle[];
  readonly uses: readonly AirUse[];
}

/** Resolves the uses of a day against the tables. Order does not matter. */
export const liquidsOf = (
  book: AirBook,
  input: AirInput,
  region: Region,
  temperatureC: number,
): Liquids => {
  const { figures } = book;
  const longShift = longShiftFactor(input.shiftHours ?? figures['shift-hours']);
  const rules = { excursionFactor: figures['excursion-factor'], longShift };
  const limitsFor = (substance: Substance, bottles: readonly Bottle[]): readonly AirLimit[] =>
    limitsOf(substance, bottles, region, rules);
  const vapourFor = (substance: Substance, bottles: readonly Bottle[]): Vapour | NoVapour =>
    vapourOf(substance, bottles, temperatureC, figures, book.nonVolatileBelowPa);
  /** Lowest long-term limit that counts here; where none is published, the lowest of any agent. */
  const longOf = (limits: readonly AirLimit[]): number =>
    lowestOf(limits, ['long-term'])?.limitMgM3 ??
    Math.min(
      ...book.agentSubstances.map(
        (substance) => lowestOf(limitsFor(substance, []), ['long-term'])?.limitMgM3 ?? Infinity,
      ),
    );
  const said: AirSaid[] = [];
  const liquids = namedIn(book, input, () =>
    worstOf(book.agentSubstances, (substance) => {
      const vapour = vapourFor(substance, []);
      return typeof vapour === 'string' ? 0 : vapour.mgMl / longOf(limitsFor(substance, []));
    }),
  ).flatMap((named): readonly Liquid[] => {
    const { substance, bottles, agent, unknown, uses } = named;
    const what = nameOf(named);
    const vapour = vapourFor(substance, bottles);
    if (typeof vapour === 'string') {
      said.push({ id: vapour, values: { what } });
      return [];
    }
    const limits = limitsFor(substance, bottles);
    const long = lowestOf(limits, ['long-term']);
    said.push(...liquidCautions({ what, unknown, substance, limits, long, bottles }));
    const longMgM3 = longOf(limits);
    return [
      {
        ...(unknown === undefined ? {} : { unknown }),
        ...(agent === undefined ? {} : { agent }),
        ...{ substance, vapour, limits, longMgM3, uses },
        shortMgM3:
          lowestOf(limits, ['short-term', 'excursion'])?.limitMgM3 ??
          (longMgM3 / longShift) * figures['excursion-factor'],
        ceilingMgM3: lowestOf(limits, ['ceiling'])?.limitMgM3 ?? Infinity,
      },
    ];
  });
  return { liquids, said };
};

const worstOf = (
  substances: readonly Substance[],
  badness: (substance: Substance) => number,
): Substance =>
  sure(
    [...substances]
      .map((substance) => ({ substance, bad: badness(substance) }))
      .sort((a, b) => b.bad - a.bad || compare(a.substance.id, b.substance.id))[0],
  ).substance;

/** Uses by what they are of, sorted, so that the order they were said in does not matter. */
const namedIn = (book: AirBook, input: AirInput, worst: () => Substance): readonly Named[] => {
  const found = new Map<string, Named>();
  for (const use of input.uses) {
    const named = resolved(book, use, worst);
    const seen = found.get(named.key);
    const bottles = (input.bottles ?? []).filter((bottle) => bottle.agent === named.agent);
    found.set(named.key, {
      ...named,
      ...(seen?.agent === undefined ? {} : { agent: seen.agent }),
      bottles: bottles.length > 0 ? bottles : (seen?.bottles ?? []),
      uses: [...(seen?.uses ?? []), use],
    });
  }
  return [...found.values()].sort((a, b) => compare(a.key, b.key));
};

const resolved = (
  book: AirBook,
  use: AirUse,
  worst: () => Substance,
): Pick<Named, 'key' | 'agent' | 'unknown' | 'substance'> => {
  const agent = book.agents.get(use.agent ?? '');
  // What is no agent may still be a substance that is known ("household-ammonia").
  const substance = book.substances.get(agent?.substance ?? use.substance ?? use.agent ?? '');
  if (substance === undefined) {
    const unknown = use.agent ?? use.substance ?? '';
    return { key: `? ${unknown}`, unknown, substance: worst() };
  }
  return {
    key: substance.id,
    ...(agent === undefined ? {} : { agent: agent.id }),
    substance,
  };
};
