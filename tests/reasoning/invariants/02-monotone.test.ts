import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { holdRules } from '../../../server/reasoning/precautions/holdRules.js';
import {
  type BenchInput,
  type MixInput,
  type Route,
  SCALES,
  type Sheet,
} from '../../../server/reasoning/index.js';
import {
  NOBODY_KNOWS,
  aBench,
  aDose,
  aFlag,
  aMachine,
  aMixNamed,
  aPart,
  aSurface,
  aUse,
  agentIds,
  bottles,
  otherIds,
  runs,
} from '../../support/arbitraries.js';
import {
  EVERY_SURFACE,
  SURFACE_SETS,
  THINGS,
  type Thing,
  assessed,
  book,
  mixOf,
  pairsOf,
  triplesOf,
} from '../../support/everyMix.js';
import { catalogue, reasoner } from '../../support/rules.js';

/** Higher than any band: nobody knows what will be used. */
const STUCK = 99;

const bandOf = (route: Route): number =>
  route.stuck === undefined || route.stuck === 'not-at-hand' ? route.band : STUCK;

/** A mix is found again by its name, as its id is its place in the order. */
const bandsByName = (sheet: Sheet): ReadonlyMap<string, number> => {
  const names = new Map(sheet.bench.mixes.map((mix) => [mix.id, mix.name ?? '']));
  return new Map(
    sheet.plan.routes.map((route) => [
      `${names.get(route.mix) ?? ''} on ${route.surface}`,
      bandOf(route),
    ]),
  );
};

/** Tags of the bench itself and of how harsh and how stuck it is; none that only an agent brings. */
const tagsWithoutAgents = (bench: BenchInput): ReadonlySet<string> => {
  const { facts, tags } = assessed(bench);
  const harshness = [...tags].filter((tag) => tag.startsWith('band.') || tag === 'state.stuck');
  return new Set([...facts.tags, ...harshness]);
};

const rulesWithoutAgents = (bench: BenchInput) =>
  holdRules(book, tagsWithoutAgents(bench), []).rules.map(({ rule }) => rule);

/** Ids of the lines that those rules put on the sheet, and not just a level. */
const linesWithoutAgents = (bench: BenchInput, sheet: Sheet): readonly string[] =>
  rulesWithoutAgents(bench).flatMap((rule) =>
    sheet.lines
      .filter((line) => rule.lines.includes(line.text) && line.because.includes(rule.id))
      .map((line) => line.id),
  );

/** What became less careful from the one bench to the other, which has more on it. */
const lossesOf = (less: BenchInput, more: BenchInput): readonly string[] => {
  const [before, after] = [reasoner.sheet(less), reasoner.sheet(more)];
  const bands = bandsByName(after);
  const printed = new Set(after.lines.map((line) => line.id));
  return [
    ...before.levels.flatMap(({ scale, height, level }, index) => {
      const now = after.levels[index];
      return (now?.height ?? -1) < height
        ? [`${scale} ${level} to ${now?.level ?? 'nothing'}`]
        : [];
    }),
    ...[...bandsByName(before)].flatMap(([route, band]) => {
      const now = bands.get(route) ?? -1;
      return now < band ? [`${route} from band ${String(band)} to ${String(now)}`] : [];
    }),
    ...linesWithoutAgents(less, before)
      .filter((line) => !printed.has(line))
      .map((line) => `no longer says ${line}`),
  ];
};

const withMix = (
  bench: BenchInput,
  at: number,
  change: (mix: MixInput) => MixInput,
): BenchInput => ({
  ...bench,
  mixes: bench.mixes.map((mix, index) => (index === at % bench.mixes.length ? change(mix) : mix)),
});

/** Something more on the bench. To say which ink is in a mix without any is not to add to it. */
const addition: fc.Arbitrary<(bench: BenchInput) => BenchInput> = fc.oneof(
  fc.tuple(fc.nat(2), aPart).map(
    ([at, part]) =>
      (bench: BenchInput) =>
        withMix(bench, at, (mix) => ({ ...mix, parts: [...mix.parts, part] })),
  ),
  fc.tuple(fc.nat(2), aDose).map(
    ([at, dose]) =>
      (bench: BenchInput) =>
        withMix(bench, at, (mix) => ({ ...mix, additives: [...(mix.additives ?? []), dose] })),
  ),
  fc.tuple(fc.nat(2), aSurface).map(
    ([at, surface]) =>
      (bench: BenchInput) =>
        withMix(bench, at, (mix) =>
          mix.on === undefined ? mix : { ...mix, on: [...mix.on, surface] },
        ),
  ),
  aMixNamed('one more').map((mix) => (bench: BenchInput) => ({
    ...bench,
    mixes: [...bench.mixes, mix],
  })),
  aSurface.map((surface) => (bench: BenchInput) => ({
    ...bench,
    surfaces: [...bench.surfaces, surface],
  })),
  aUse.map((use) => (bench: BenchInput) => ({ ...bench, uses: [...(bench.uses ?? []), use] })),
  aMachine.map((machine) => (bench: BenchInput) => ({
    ...bench,
    equipment: [...(bench.equipment ?? []), machine],
  })),
  aFlag.map((flag) => (bench: BenchInput) => ({
    ...bench,
    people: { ...bench.people, flags: [...(bench.people?.flags ?? []), flag] },
  })),
  fc.integer({ min: 1, max: 8 }).map((more) => (bench: BenchInput) => ({
    ...bench,
    people: { ...bench.people, count: (bench.people?.count ?? 1) + more },
  })),
  fc.constant((bench: BenchInput) => ({ ...bench, people: { ...bench.people, under16: true } })),
);

describe('monotone', { timeout: 30_000 }, () => {
  it('loses no level, band or line when anything at all is added to a bench', () => {
    fc.assert(
      fc.property(aBench, addition, (bench, add) => {
        expect(lossesOf(bench, add(bench))).toEqual([]);
      }),
      runs(1200),
    );
  });

  it('loses nothing when little stands at hand, and then nothing that does', () => {
    const hand = fc.subarray([...agentIds], { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(aBench, hand, bottles, addition, (bench, agentsAtHand, own, add) => {
        expect(lossesOf({ ...bench, agentsAtHand }, add({ ...bench, agentsAtHand }))).toEqual([]);
        const bottled = { ...bench, agentsAtHand, bottles: own };
        expect(lossesOf(bottled, add(bottled))).toEqual([]);
      }),
      runs(500),
    );
  });

  it('asks for no less when white spirit, all there is, no longer takes the mix off', () => {
    const bench = (...inks: readonly string[]): BenchInput => ({
      mixes: [{ name: 'it', parts: inks.map((ink) => ({ ink })) }],
      surfaces: ['glass-slab'],
      agentsAtHand: ['white-spirit'],
    });
    expect(lossesOf(bench('oil-relief'), bench('oil-relief', 'water-washable-oil'))).toEqual([]);
  });

  it('asks for no less when another agent of the same band has to be taken', () => {
    const bench = (...additives: readonly string[]): BenchInput => ({
      mixes: [
        {
          name: 'it',
          parts: [{ ink: 'litho-tusche' }],
          additives: additives.map((additive) => ({ additive })),
        },
      ],
      surfaces: ['glass-slab'],
      bottles: [
        {
          agent: 'turpentine',
          sdsDate: '2026-01-01',
          hazardCodes: ['H319'],
          flashPointC: 70,
          vapourPressurePa: 5,
        },
      ],
    });
    expect(reasoner.sheet(bench()).plan.agents).toEqual(['turpentine']);
    expect(lossesOf(bench(), bench('aluminium-stearate'))).toEqual([]);
  });

  it('loses nothing when another liquid stands at hand that is no agent', () => {
    const atHand = fc.tuple(aBench, fc.constantFrom(...otherIds, ...NOBODY_KNOWS));
    fc.assert(
      fc.property(atHand, ([bench, other]) => {
        const agentsAtHand = bench.agentsAtHand ?? agentIds;
        expect(
          lossesOf(
            { ...bench, agentsAtHand },
            { ...bench, agentsAtHand: [...agentsAtHand, other] },
          ),
        ).toEqual([]);
      }),
      runs(300),
    );
  });

  it('loses nothing when each machine, person and liquid is added to each usual bench', () => {
    for (const { bench } of catalogue.usualBenches) {
      const { equipment = [], uses = [], people } = bench;
      const { flags = [] } = people ?? {};
      for (const id of [...book.equipment.keys(), ...NOBODY_KNOWS]) {
        expect(lossesOf(bench, { ...bench, equipment: [...equipment, id] })).toEqual([]);
      }
      for (const id of [...book.people, ...NOBODY_KNOWS]) {
        expect(lossesOf(bench, { ...bench, people: { ...people, flags: [...flags, id] } })).toEqual(
          [],
        );
      }
      for (const agent of [...agentIds, ...otherIds, ...NOBODY_KNOWS]) {
        expect(lossesOf(bench, { ...bench, uses: [...uses, { agent, ml: 20 }] })).toEqual([]);
      }
    }
  });
});

/** All that may not fall: places on the scales, and bands by surface. */
interface Mark {
  readonly heights: readonly number[];
  readonly bands: readonly number[];
}

const markOf = (mixes: readonly MixInput[], surfaces: readonly string[]): Mark => {
  const { facts, tasks, choices, held } = assessed({ mixes, surfaces });
  const bands = facts.surfaces.map(() => 0);
  tasks.forEach((task, index) => {
    const at = facts.surfaces.indexOf(task.surfaceId);
    const band = task.stuck === undefined ? (choices[index]?.band ?? 0) : STUCK;
    bands[at] = Math.max(bands[at] ?? 0, band);
  });
  return { heights: held.heights, bands };
};

const isLower = (more: readonly number[], less: readonly number[]): boolean =>
  less.some((height, at) => (more[at] ?? -1) < height);

const checkAdded = (name: string, less: Mark, more: Mark): void => {
  if (isLower(more.heights, less.heights)) {
    const lost = SCALES.filter((_, at) =>
      isLower([more.heights[at] ?? -1], [less.heights[at] ?? 0]),
    );
    expect.fail(`${name} lowers ${lost.join()}`);
  }
  if (isLower(more.bands, less.bands)) expect.fail(`${name} makes a band milder`);
};

/** Without an ink nobody knows what it is: naming the ink is not adding to it. */
const hasInk = (things: readonly Thing[]): boolean => things.some(({ kind }) => kind === 'ink');

const namesOf = (things: readonly Thing[]): string => things.map(({ id }) => id).join(' + ');

/** The marks of mixes on these surfaces, each worked out once. */
const remembered = (surfaces: readonly string[], dried: boolean) => {
  const marks = new Map<string, Mark>();
  return (things: readonly Thing[]): Mark => {
    const key = namesOf(things);
    const mark = marks.get(key) ?? markOf([mixOf(things, dried)], surfaces);
    marks.set(key, mark);
    return mark;
  };
};

/** Every two things and, if asked, every three, against all that they hold but one. */
const checkMixes = (surfaces: readonly string[], dried: boolean, most: 2 | 3): void => {
  const mark = remembered(surfaces, dried);
  const check = (things: readonly Thing[]): void => {
    const more = mark(things);
    for (const added of things) {
      const rest = things.filter((each) => each !== added);
      if (hasInk(rest)) checkAdded(`${namesOf(rest)}, then ${added.id},`, mark(rest), more);
    }
  };
  for (const pair of pairsOf(THINGS)) check(pair);
  if (most === 3) for (const triple of triplesOf(THINGS)) check(triple);
};

const [ALL, RELIEF, , , LITHO] = SURFACE_SETS;
const TRIED_WITH_THREE = [ALL, RELIEF, LITHO];

const wetAndDried = [false, true] as const;
const sets = SURFACE_SETS.flatMap((surfaces) =>
  wetAndDried.map((dried) => ({ surfaces, dried, name: surfaces.slice(0, 2).join(', ') })),
);

describe('monotone, every ink and additive', { timeout: 30_000 }, () => {
  it.each(wetAndDried)('a second thing lowers nothing on any one surface, dried: %s', (dried) => {
    for (const surface of EVERY_SURFACE) checkMixes([surface], dried, 2);
  });

  it.each(sets)('a second thing lowers nothing on $name and more, dried: $dried', (set) => {
    checkMixes(set.surfaces, set.dried, 2);
  });

  // Every surface at once for the bands; two small benches for the scales, which are high from the
  // start where everything is.
  it.each(sets.filter(({ surfaces }) => TRIED_WITH_THREE.includes(surfaces)))(
    'a third thing lowers nothing on $name and more, dried: $dried',
    (set) => {
      checkMixes(set.surfaces, set.dried, 3);
    },
  );

  it.each(sets)('a second mix lowers nothing on $name and more, dried: $dried', (set) => {
    const alone = remembered(set.surfaces, set.dried);
    for (const [one, two] of pairsOf(THINGS)) {
      const both = markOf([mixOf([one], set.dried), mixOf([two], set.dried)], set.surfaces);
      checkAdded(`${one.id}, then a mix of ${two.id},`, alone([one]), both);
      checkAdded(`${two.id}, then a mix of ${one.id},`, alone([two]), both);
    }
  });

  it.each(SURFACE_SETS.map((set) => [set.slice(0, 2).join(', '), set] as const))(
    'a second thing lets every rule hold that held before on %s and more',
    (_, surfaces) => {
      const rulesOf = (things: readonly Thing[]) =>
        rulesWithoutAgents({ mixes: [mixOf(things)], surfaces });
      const alone = new Map(THINGS.map((thing) => [thing, rulesOf([thing])]));
      for (const pair of pairsOf(THINGS)) {
        const after = new Set(rulesOf(pair));
        for (const thing of pair.filter((each) => hasInk([each]))) {
          const lost = alone.get(thing)?.filter((rule) => !after.has(rule));
          expect(lost, namesOf(pair)).toEqual([]);
        }
      }
    },
  );
});
