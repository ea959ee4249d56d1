import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BenchInput, Route, Sheet, Unknown } from '../../../server/reasoning/index.js';
import { NOBODY_KNOWS, aBench, agentIds, otherIds, runs } from '../../support/arbitraries.js';
import {
  EVERY_SURFACE,
  SURFACE_SETS,
  THINGS,
  type Thing,
  mixOf,
  pairsOf,
} from '../../support/everyMix.js';
import { spokenOf } from '../../support/spokenOf.js';
import { catalogue, reasoner, words } from '../../support/rules.js';

const NOT_KNOWN = 'the jar with no label';

/** What a data sheet settles; for a tool or a machine it is the keeper who does. */
const HAS_DATA_SHEET: readonly Unknown['kind'][] = ['ink', 'additive', 'agent'];

/** The bench with one thing replaced by a name that no table knows. */
interface Replaced {
  readonly kind: Unknown['kind'];
  readonly bench: BenchInput;
}

/** Every bench that differs from this one by one thing that is no longer known. */
const replacements = (bench: BenchInput): readonly Replaced[] => [
  ...bench.mixes.flatMap((mix, at) => {
    const withMix = (changed: typeof mix): BenchInput => ({
      ...bench,
      mixes: bench.mixes.map((each, index) => (index === at ? changed : each)),
    });
    return [
      ...mix.parts.map((part): Replaced => ({
        kind: 'ink',
        bench: withMix({
          ...mix,
          parts: mix.parts.map((each) => (each === part ? { ...part, ink: NOT_KNOWN } : each)),
        }),
      })),
      ...(mix.additives ?? []).map((dose): Replaced => ({
        kind: 'additive',
        bench: withMix({
          ...mix,
          additives: mix.additives?.map((each) =>
            each === dose ? { ...dose, additive: NOT_KNOWN } : each,
          ),
        }),
      })),
    ];
  }),
  ...bench.surfaces.map((id): Replaced => ({
    kind: 'surface',
    bench: { ...bench, surfaces: bench.surfaces.map((each) => (each === id ? NOT_KNOWN : each)) },
  })),
  ...(bench.equipment ?? []).map((id): Replaced => ({
    kind: 'equipment',
    bench: {
      ...bench,
      equipment: bench.equipment?.map((each) => (each === id ? NOT_KNOWN : each)),
    },
  })),
  ...(bench.uses ?? []).map((use): Replaced => ({
    kind: 'agent',
    bench: {
      ...bench,
      uses: bench.uses?.map((each) => (each === use ? { ...use, agent: NOT_KNOWN } : each)),
    },
  })),
];

const isStuck = (route: Route): boolean => route.stuck !== undefined && route.passes.length === 0;

/** What a sheet got wrong when something on it is no longer known. */
const faultsOf = (before: Sheet, { kind, bench }: Replaced): readonly string[] => {
  const after = reasoner.sheet(bench);
  const section = catalogue.sds.settledBy[kind];
  const hasSheet = HAS_DATA_SHEET.includes(kind);
  const text = hasSheet ? 'unknown-thing' : 'unknown-other';
  const line = after.lines.find((each) => each.id === `${text}.${NOT_KNOWN}`);
  const said =
    line === undefined ? '' : Object.values(words.line(line, bench.region ?? '')).join(' ');
  const mixes = after.bench.mixes.filter(
    (mix) =>
      mix.parts.some((part) => part.ink === NOT_KNOWN) ||
      mix.additives.some((dose) => dose.additive === NOT_KNOWN),
  );
  return [
    ...before.levels.flatMap(({ scale, height, level }, at) => {
      const now = after.levels[at];
      return (now?.height ?? -1) < height ? [`${scale}: ${level} to ${now?.level ?? ''}`] : [];
    }),
    ...(after.unknown.some((each) => each.kind === kind && each.id === NOT_KNOWN)
      ? []
      : ['is not among the unknown']),
    ...(said.includes(NOT_KNOWN) &&
    said.includes(hasSheet ? `section ${String(section)} ` : 'keeper')
      ? []
      : ['no line that says who settles it']),
    ...after.plan.routes
      .filter((route) => route.surface === NOT_KNOWN || mixes.some((mix) => mix.id === route.mix))
      .filter(
        (route) =>
          !isStuck(route) &&
          catalogue.surfaces.find((row) => row.id === route.surface)?.method === 'wash',
      )
      .map((route) => `${route.surface} is not stuck`),
  ];
};

const checkReplaced = (bench: BenchInput): void => {
  const before = reasoner.sheet(bench);
  for (const replaced of replacements(bench)) {
    expect(faultsOf(before, replaced), `${replaced.kind} of ${JSON.stringify(bench)}`).toEqual([]);
  }
};

const checkThings = (things: readonly Thing[], dried: boolean): void => {
  for (const surfaces of SURFACE_SETS.slice(1))
    checkReplaced({ mixes: [mixOf(things, dried)], surfaces });
};

describe('unknown is worst', { timeout: 30_000 }, () => {
  it('lowers nothing, on any bench, when a thing on it is no longer known', () => {
    fc.assert(fc.property(aBench, checkReplaced), runs(400));
  });

  it.each([false, true])('lowers nothing for each ink and additive, dried: %s', (dried) => {
    for (const thing of THINGS) checkThings([thing], dried);
  });

  it('lowers nothing for every two of them', () => {
    const [, surfaces = []] = SURFACE_SETS;
    for (const pair of pairsOf(THINGS)) checkReplaced({ mixes: [mixOf(pair)], surfaces });
  });

  it.each([false, true])('lowers nothing for each ink on each surface, dried: %s', (dried) => {
    for (const thing of THINGS) {
      for (const surface of EVERY_SURFACE) {
        checkReplaced({ mixes: [mixOf([thing], dried)], surfaces: [surface] });
      }
    }
  });

  it('lowers nothing for each machine and each liquid in use, on each usual bench', () => {
    for (const { bench } of catalogue.usualBenches) {
      for (const { id } of catalogue.equipment) checkReplaced({ ...bench, equipment: [id] });
      for (const agent of [...agentIds, ...otherIds]) {
        checkReplaced({ ...bench, uses: [{ agent, ml: 10 }] });
      }
    }
  });

  it('never calls anything safe, on any bench', () => {
    fc.assert(
      fc.property(aBench, (bench) => {
        const said = spokenOf(reasoner.sheet(bench)).filter((each) =>
          /\bsafe(ly|r|st)?\b/i.test(each),
        );
        expect(said).toEqual([]);
      }),
      runs(500),
    );
  });

  it('never calls anything safe in any row of any table', () => {
    const said = words
      .rows()
      .flatMap((row) => [row.name, row.says, row.note ?? ''])
      .filter((text) => /\bsafe(ly|r|st)?\b/i.test(text));
    expect(said).toEqual([]);
  });

  it.each(NOBODY_KNOWS)('has a line for %s wherever it is named', (id) => {
    const sheet = reasoner.sheet({
      mixes: [{ parts: [{ ink: id }], additives: [{ additive: id }] }],
      surfaces: [id],
      equipment: [id],
      agentsAtHand: [id],
      uses: [{ agent: id, ml: 5 }],
      people: { flags: [id] },
      room: { air: id },
    });
    const kinds = ['ink', 'additive', 'surface', 'equipment', 'agent', 'person', 'air'];
    expect(sheet.unknown.map((each) => each.kind).sort()).toEqual(kinds.sort());
  });
});
