import { type Bench, SCALES, type ScaleId } from '../types.js';
import type { Book } from '../book/book.js';
import { type BenchFacts, tagBench } from '../facts/tagBench.js';
import { type AgentHazard, agentHazard, hazardFacts } from '../hazard/agentHazard.js';
import { type Demand, type Held, holdRules } from '../precautions/holdRules.js';
import type { Candidate } from '../routes/candidate.js';
import { type Task, tasksOf } from '../routes/candidates.js';
import { type LeastHazardRoutes, leastHazardRoutes } from '../routes/leastHazardRoutes.js';

/** All that is computed of a bench before it is put into lines; swaps are compared on this. */
export interface Assessment {
  readonly facts: BenchFacts;
  readonly tasks: readonly Task[];
  readonly plan: LeastHazardRoutes;
  /** The choice for each task; undefined where nothing is to be done, or nothing can be. */
  readonly choices: readonly (Candidate | undefined)[];
  readonly hazards: readonly AgentHazard[];
  /** Tags of the bench, its plan and its bands. */
  readonly tags: ReadonlySet<string>;
  readonly bearers: ReadonlyMap<string, readonly string[]>;
  readonly demands: readonly Demand[];
  readonly held: Held;
}

/** Facts, plan, tags and the precautions that follow. */
export const assess = (book: Book, bench: Bench): Assessment => {
  const facts = tagBench(book, bench);
  const hazards = hazardsOf(book, bench);
  const tasks = tasksOf(book, bench, facts.surfaces, hazards);
  const open = tasks.filter((task) => task.choices.length > 0);
  const plan = leastHazardRoutes(open.map((task) => task.choices));
  const chosen = new Map(open.map((task, index) => [task, plan.chosen[index]]));
  const choices = tasks.map((task) => chosen.get(task));

  const tags = new Set(facts.tags);
  const bearers = new Map(facts.bearers);
  const bear = (tag: string, row: string): void => {
    tags.add(tag);
    const rows = bearers.get(tag) ?? [];
    if (!rows.includes(row)) bearers.set(tag, [...rows, row]);
  };
  book.agents.forEach((agent, index) => {
    if ((plan.agents & (1 << index)) === 0) return;
    bear(`agent.${agent.id}`, `agent.${agent.id}`);
    for (const mark of agent.marks) bear(`mark.${mark}`, `agent.${agent.id}`);
  });
  const demands = bandDemands(book, bench, tasks, choices, hazards, bear);
  return {
    facts,
    tasks,
    plan,
    choices,
    hazards,
    tags,
    bearers,
    demands,
    held: holdRules(book, tags, demands),
  };
};

/** Hazards of the agents, with the studio's own bottles laid over the generic rows. */
const hazardsOf = (book: Book, bench: Bench): readonly AgentHazard[] => {
  if (bench.bottles.length === 0) return book.agentHazards;
  return book.agents.map((agent, index) => {
    const bottle = bench.bottles.find((each) => each.agent === agent.id);
    const substance = book.substances.get(agent.substance);
    const generic = book.agentHazards[index] as AgentHazard;
    if (bottle === undefined || substance === undefined) return generic;
    return agentHazard(hazardFacts(substance, bottle), book.catalogue.bandRules);
  });
};

/**
 * What the bands in use ask for. Bands count upwards: a route at band 3 is also at 0, 1 and 2, so
 * that a rule on band 2 holds for it. A stuck task counts as the worst band, as nobody knows what
 * will be used; one that only lacks an agent at hand counts as the band of what would do.
 */
const bandDemands = (
  book: Book,
  bench: Bench,
  tasks: readonly Task[],
  choices: readonly (Candidate | undefined)[],
  hazards: readonly AgentHazard[],
  bear: (tag: string, row: string) => void,
): readonly Demand[] => {
  const reached = new Set<number>();
  let counted = -1;
  const count = (band: number): void => {
    counted = Math.max(counted, band);
  };
  tasks.forEach((task, index) => {
    const band = choices[index]?.band ?? task.wouldDo[0]?.band;
    if (band !== undefined) {
      reached.add(band);
      count(band);
    } else if (task.stuck !== undefined) {
      bear('state.stuck', `surface.${task.surfaceId}`);
      count(book.worstBand);
    }
  });
  for (const use of bench.uses) {
    const band = hazards[book.agentIndex.get(use.agent) ?? -1]?.band;
    if (band !== undefined) reached.add(band);
    count(band ?? book.worstBand);
  }
  for (let band = 0; band <= counted; band += 1)
    bear(`band.${String(band)}`, `band.band-${String(band)}`);
  return book.catalogue.bandRules.bands
    .filter((band) => reached.has(band.band))
    .flatMap((band) =>
      Object.entries(band.require).map(([scale, level]) => ({
        row: `band.${band.id}`,
        scale: SCALES.indexOf(scale as ScaleId),
        height: book.heightOf(scale as ScaleId, level),
      })),
    );
};
