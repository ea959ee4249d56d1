import fc from 'fast-check';
import type {
  BenchInput,
  Bottle,
  MixInput,
  PeopleInput,
  Room,
} from '../../server/reasoning/index.js';
import { catalogue } from './rules.js';

/** Other benches than usual with `SEED=7 npx vitest run tests/reasoning`. */
const seed = Number(process.env['SEED'] ?? 1);

/** Settings of a property test: the benches are the same in every run. */
export const runs = (numRuns: number): { readonly numRuns: number; readonly seed: number } => ({
  numRuns,
  seed,
});

/** Names that no table knows. */
export const NOBODY_KNOWS = ['my tin', 'grey bottle', 'old mangle'] as const;

const ids = (rows: readonly { readonly id: string }[]): readonly string[] =>
  rows.map((row) => row.id);

/** Ids of a table, and now and then one that is in no table. */
const mostly = (known: readonly string[]): fc.Arbitrary<string> =>
  fc.oneof(
    { weight: 12, arbitrary: fc.constantFrom(...known) },
    { weight: 1, arbitrary: fc.constantFrom(...NOBODY_KNOWS) },
  );

const perhaps = <T>(arbitrary: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> =>
  fc.option(arbitrary, { nil: undefined, freq: 2 });

const seldom = <T>(arbitrary: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> =>
  fc.oneof({ weight: 4, arbitrary: fc.constant(undefined) }, { weight: 1, arbitrary });

const tenths = (low: number, high: number): fc.Arbitrary<number> =>
  fc.integer({ min: low * 10, max: high * 10 }).map((each) => each / 10);

const extenders = ids(catalogue.inks.filter((ink) => ink.extender === true));
export const agentIds = ids(catalogue.agents);
export const otherIds = ids(catalogue.others);
export const regionIds = ids(catalogue.regions);

const anInk = mostly(ids(catalogue.inks));
const anAdditive = mostly([...ids(catalogue.additives), ...extenders]);
export const aSurface = mostly(ids(catalogue.surfaces));
/** Machines and baths, named as a machine or as what is in them. */
export const aMachine = mostly([...ids(catalogue.equipment), ...otherIds]);
export const aFlag = mostly(ids(catalogue.people));
/** Something poured: an agent, another chemical, or something nobody can name. */
const aLiquid = mostly([...agentIds, ...agentIds, ...otherIds]);

export const aPart = fc.record({ ink: anInk, share: perhaps(tenths(0.1, 100)) });
export const aDose = fc.record({ additive: anAdditive, percent: perhaps(tenths(0.1, 60)) });
export const aUse = fc.record({ agent: aLiquid, ml: fc.integer({ min: 1, max: 500 }) });

/** A mix with a name of its own, so that it can be found again on the sheet. */
export const aMixNamed = (name: string): fc.Arbitrary<MixInput> =>
  fc.record({
    name: fc.constant(name),
    parts: fc.array(aPart, { minLength: 1, maxLength: 3 }),
    additives: perhaps(fc.array(aDose, { maxLength: 2 })),
    dried: perhaps(fc.boolean()),
    on: seldom(fc.array(aSurface, { minLength: 1, maxLength: 2 })),
  });

const NAMES = ['tram green', 'night blue', 'brick red'] as const;

const mixes: fc.Arbitrary<readonly MixInput[]> = fc
  .integer({ min: 0, max: NAMES.length })
  .chain((count) => fc.tuple(...NAMES.slice(0, count).map(aMixNamed)));

/** What a data sheet may say of an agent; codes milder and harsher than the table's. */
export const aBottle: fc.Arbitrary<Bottle> = fc.record({
  agent: mostly(agentIds),
  name: perhaps(fc.constant('the tall can')),
  sdsDate: fc.constantFrom('2019-03-01', '2026-02-14'),
  flashPointC: perhaps(tenths(-20, 140)),
  boilingPointC: perhaps(tenths(20, 300)),
  vapourPressurePa: perhaps(tenths(0, 30_000)),
  limitMgM3: perhaps(tenths(1, 2000)),
  hazardCodes: perhaps(
    fc.uniqueArray(
      fc.constantFrom('H225', 'H226', 'H304', 'H315', 'H336', 'H350', 'H372', 'H412', 'EUH066'),
      { maxLength: 4 },
    ),
  ),
});

/** At most one bottle an agent. */
export const bottles = fc.uniqueArray(aBottle, {
  minLength: 1,
  maxLength: 3,
  selector: (bottle) => bottle.agent,
});

const aRoom: fc.Arbitrary<Room> = fc.record({
  volumeM3: perhaps(tenths(5, 500)),
  lengthM: perhaps(tenths(1, 20)),
  air: perhaps(fc.constantFrom('room-air', 'window', 'cross-draught', 'exhaust-fan', 'a cowl')),
  airChangesPerHour: perhaps(tenths(0, 20)),
  fanM3PerHour: perhaps(tenths(0, 2000)),
  temperatureC: perhaps(tenths(5, 35)),
});

const somePeople: fc.Arbitrary<PeopleInput> = fc.record({
  count: perhaps(fc.integer({ min: 1, max: 30 })),
  under16: perhaps(fc.boolean()),
  flags: perhaps(fc.array(aFlag, { maxLength: 3 })),
});

/** Any bench at all, from nothing named to a crowded studio. Mixes have names, parts may be unknown. */
export const aBench: fc.Arbitrary<BenchInput> = fc.record({
  region: perhaps(fc.constantFrom(...regionIds)),
  mixes,
  surfaces: fc.array(aSurface, { maxLength: 5 }),
  equipment: perhaps(fc.array(aMachine, { maxLength: 3 })),
  agentsAtHand: seldom(fc.array(aLiquid, { maxLength: 6 })),
  uses: perhaps(fc.array(aUse, { maxLength: 3 })),
  bottles: seldom(bottles),
  room: seldom(aRoom),
  people: perhaps(somePeople),
});
