import type { AirAnswer, AirInput, Bench, BenchInput, Catalogue, Flag, Sheet } from '../types.js';
import { airOf } from '../air/airOf.js';
import { type Book, makeBook } from '../book/book.js';
import { sure } from '../book/sure.js';
import { normaliseBench } from '../facts/normaliseBench.js';
import { type GloveThatHolds, glovesThatHold } from '../gloves/glovesThatHold.js';
import { hazardFacts } from '../hazard/agentHazard.js';
import { levelsReached } from '../precautions/levelsReached.js';
import { itemsOf, streamsReached } from '../rags/streamsReached.js';
import { swapsOf } from '../swaps/swapsOf.js';
import { amountsOf } from './amountsOf.js';
import { type Assessment, assess, bottleHazard } from './assess.js';
import { neverTogetherOf } from './neverTogether.js';
import { planOf } from './planOf.js';
import { sheetAir } from './sheetAir.js';
import { sheetLines } from './sheetLines.js';

/** Bench in, sheet out. The same bench gives the same sheet. */
export interface Reasoner {
  readonly sheet: (input: BenchInput) => Sheet;
  /** What is in the air of a room, how long it must air and how much it takes: an estimate. */
  readonly air: (input: AirInput) => AirAnswer;
  /** The bench made plain, as the sheet echoes it. */
  readonly bench: (input: BenchInput) => Bench;
}

/**
 * A reasoner over a checked catalogue. Reads the tables once. What it remembers between sheets is only
 * choices already worked out, which would come out the same again.
 */
export const makeReasoner = (catalogue: Catalogue): Reasoner => {
  const book = makeBook(catalogue);
  return {
    air: (input) => airOf(book.air, input),
    bench: (input) => normaliseBench(book, input),
    sheet: (input) => sheetOf(book, normaliseBench(book, input)),
  };
};

const sheetOf = (book: Book, bench: Bench): Sheet => {
  const assessed = assess(book, bench);
  const levels = levelsReached(book, assessed.held, assessed.demands);
  const gloveHeight = sure(levels.find((level) => level.scale === 'gloves')).height;
  const gloveScale = sure(book.catalogue.scales.find((scale) => scale.id === 'gloves'));
  const glovesBySheet = gloveHeight === gloveScale.levels.length - 1;
  const agents = agentsInUse(book, bench, assessed);
  const thickness = gloveHeight === 0 ? 'thin' : 'thick';
  const materials = glovesBySheet ? [] : glovesThatHold(book.catalogue.gloves, agents, thickness);
  const amounts = amountsOf(book, assessed);
  const asked = sheetAir(book, bench, amounts, assessed.hazards);
  const air = asked && airOf(book.air, asked);
  const findings = {
    bench,
    levels,
    plan: planOf(book, assessed),
    gloves: {
      materials,
      ...changeAfter(materials),
      thickness,
      because: glovesBecause(agents),
    } as const,
    streams: streamsReached(book, assessed),
    neverTogether: neverTogetherOf(book, bench, assessed),
    unknown: assessed.facts.unknown,
    flags: [...assessed.facts.flags, ...bottleFlags(book, bench)],
    swaps: swapsOf(book, bench, assessed, air),
    amounts,
    ...(air === undefined ? {} : { air }),
  };
  const solvents = agents.filter((agent) => agent.marks.includes('evaporating-solvent'));
  const lines = sheetLines(book, {
    ...findings,
    rules: assessed.held.rules.map(({ rule }) => rule),
    airHave: airHave(book, bench),
    glovesBySheet,
    gloveFor: materials.length > 0 || glovesBySheet ? [] : gloveForEach(book, agents, thickness),
    harmedByUse: harmedByUse(book, bench, assessed),
    uncovered: uncovered(bench),
    itemsOf: (tags) => itemsOf(book, assessed, tags),
    region: sure(book.regions.get(bench.region)),
    solventRags: findings.streams.some((stream) => stream.level === 'closed-can'),
    solventAgents: solvents.map((agent) => agent.id),
    lowestFlashC: lowestFlash(book, bench, solvents),
  });
  return { ...findings, lines };
};

type AgentRow = Book['agents'][number];

/** Agents of the plan and of what was said to be in use, in the order of the table. */
const agentsInUse = (book: Book, bench: Bench, assessed: Assessment): readonly AgentRow[] =>
  book.agents.filter(
    (agent, index) =>
      (assessed.plan.agents & (1 << index)) !== 0 ||
      bench.uses.some((use) => use.agent === agent.id),
  );

const changeAfter = (
  materials: readonly GloveThatHolds[],
): { readonly changeAfterMin?: number } => {
  const minutes = materials[0]?.changeAfterMin;
  return minutes === undefined ? {} : { changeAfterMin: minutes };
};

const glovesBecause = (agents: readonly AgentRow[]): readonly string[] =>
  agents.flatMap((agent) => [
    `agent.${agent.id}`,
    ...agent.glove.chartRows.map((row) => `glove-chart.${row}`),
  ]);

/** The best glove for each agent alone. */
const gloveForEach = (
  book: Book,
  agents: readonly AgentRow[],
  thickness: 'thin' | 'thick',
): readonly { readonly agent: string; readonly material: string }[] =>
  agents.flatMap((agent) => {
    const [best] = glovesThatHold(book.catalogue.gloves, [agent], thickness);
    return best === undefined ? [] : [{ agent: agent.id, material: best.id }];
  });

/** What was said to be in use may harm what is on the bench; the plan itself never does. */
const harmedByUse = (
  book: Book,
  bench: Bench,
  assessed: Assessment,
): readonly { readonly agent: string; readonly surfaces: readonly string[] }[] =>
  book.agents.flatMap((agent, index) => {
    if (!bench.uses.some((use) => use.agent === agent.id)) return [];
    const surfaces = assessed.facts.surfaces.filter((id) => {
      const ready = book.surfaces.get(id);
      return ready !== undefined && (ready.stands & (1 << index)) === 0;
    });
    return surfaces.length === 0 ? [] : [{ agent: agent.id, surfaces }];
  });

/** Surfaces that were named while every mix says that it is on others. */
const uncovered = (bench: Bench): readonly string[] =>
  bench.mixes.length === 0
    ? []
    : bench.surfaces.filter((id) => bench.mixes.every((mix) => mix.on?.includes(id) === false));

/** What the room is said to have; a name that no table knows counts as the least. */
const airHave = (book: Book, bench: Bench): number | undefined =>
  bench.room?.air === undefined ? undefined : Math.max(0, book.heightOf('air', bench.room.air));

const lowestFlash = (book: Book, bench: Bench, agents: readonly AgentRow[]): number | undefined => {
  const flashes = agents.flatMap((agent) => {
    const substance = sure(book.substances.get(agent.substance));
    const bottles = bench.bottles.filter((each) => each.agent === agent.id);
    return (bottles.length === 0 ? [undefined] : bottles).map(
      (bottle) => hazardFacts(substance, bottle).flashPointC ?? Number.NaN,
    );
  });
  const known = flashes.filter((flash) => !Number.isNaN(flash));
  return known.length === 0 ? undefined : Math.min(...known);
};

/** A line for each bottle whose facts were used, and one for each that is in any way milder than its kind. */
const bottleFlags = (book: Book, bench: Bench): readonly Flag[] =>
  bench.bottles.flatMap((bottle): readonly Flag[] => {
    const index = book.agentIndex.get(bottle.agent);
    if (index === undefined) return [];
    const own = bottleHazard(book, index, bottle);
    const generic = sure(book.agentHazards[index]);
    const subject = `agent.${bottle.agent}`;
    const values = { what: subject, date: bottle.sdsDate };
    const isMilder =
      own.vapourRank < generic.vapourRank ||
      own.fireRank < generic.fireRank ||
      own.healthRank < generic.healthRank;
    return [
      { kind: 'bottle-used', subject, values },
      ...(isMilder ? [{ kind: 'bottle-milder' as const, subject, values }] : []),
    ];
  });
