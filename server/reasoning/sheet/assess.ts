import { type Bench, type Bottle, SCALES, type StuckReason } from '../types.js';
import type { AgentSet } from '../book/agentSet.js';
import type { Book, Demand } from '../book/book.js';
import { sure } from '../book/sure.js';
import { type BenchFacts, tagBench } from '../facts/tagBench.js';
import { type AgentHazard, agentHazard, hazardFacts } from '../hazard/agentHazard.js';
import { type Held, holdRules } from '../precautions/holdRules.js';
import type { Candidate } from '../routes/candidate.js';
import { type Task, tasksOf } from '../routes/candidates.js';
import { type LeastHazardRoutes, leastHazardRoutes } from '../routes/leastHazardRoutes.js';
import { airDemand } from './airDemand.js';

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
  /** Rows present, agents of the plan among them. */
  readonly rows: ReadonlySet<string>;
  /** Rows of agents that are not taken, but whose cautions hold. */
  readonly mightRows: readonly string[];
  readonly demands: readonly Demand[];
  readonly held: Held;
}

const AIR = SCALES.indexOf('air');

/** Facts, plan, tags and the precautions that follow. */
export const assess = (book: Book, bench: Bench): Assessment => {
  const facts = tagBench(book, bench);
  const hazards = hazardsOf(book, bench);
  const tasks = tasksOf(book, bench, facts.surfaces, hazards);
  const open = tasks.filter((task) => task.choices.length > 0);
  const plan = leastHazardRoutes(open.map((task) => task.choices));
  let next = 0;
  const choices = tasks.map((task) => (task.choices.length > 0 ? plan.chosen[next++] : undefined));

  const tags = new Set(facts.tags);
  const rows = new Set(facts.rows);
  const mightRows: string[] = [];
  const mightBeUsed = agentsThatMightBeUsed(tasks, hazards);
  for (const [index, agent] of book.agents.entries()) {
    const bit = 1 << index;
    if (((plan.agents | mightBeUsed) & bit) === 0) continue;
    const brought = sure(book.presence.agent.get(agent.id));
    if ((plan.agents & bit) === 0) mightRows.push(brought.row);
    else rows.add(brought.row);
    for (const tag of brought.tags) tags.add(tag);
  }
  const bands = bandsReached(book, bench, tasks, choices, hazards);
  for (let band = 0; band <= bands.highest; band += 1) tags.add(`band.${String(band)}`);
  if (bands.isStuck) tags.add('state.stuck');
  if (bands.hasNoAgent) tags.add('state.no-agent');
  const byBand = [...bands.reached].flatMap((band) => sure(book.bandDemands.get(band)));
  const byRules = holdRules(book, tags, byBand);
  const ofRoom = airDemand(book, bench, tasks, hazards, sure(byRules.heights[AIR]));
  const demands = ofRoom === undefined ? byBand : [...byBand, ofRoom];
  return {
    facts,
    tasks,
    plan,
    choices,
    hazards,
    tags,
    rows,
    mightRows,
    demands,
    held: ofRoom === undefined ? byRules : holdRules(book, tags, demands),
  };
};

/** Hazards of the agents; where the studio has bottles of one, the worst of them. */
const hazardsOf = (book: Book, bench: Bench): readonly AgentHazard[] => {
  if (bench.bottles.length === 0) return book.agentHazards;
  return book.agents.map((agent, index) => {
    const own = bench.bottles
      .filter((each) => each.agent === agent.id)
      .map((bottle) => bottleHazard(book, index, bottle));
    return own.length === 0 ? sure(book.agentHazards[index]) : own.reduce(worse);
  });
};

/** Hazard of an agent with a bottle's own facts laid over the generic row. */
export const bottleHazard = (book: Book, agent: number, bottle: Bottle): AgentHazard => {
  const substance = sure(book.substances.get(sure(book.agents[agent]).substance));
  return agentHazard(hazardFacts(substance, bottle), book.catalogue.bandRules);
};

const worse = (a: AgentHazard, b: AgentHazard): AgentHazard =>
  b.band > a.band || (b.band === a.band && b.hazard > a.hazard) ? b : a;

const NO_AGENT: readonly StuckReason[] = ['unknown-surface', 'parts-share-no-agent', 'all-harm'];

interface BandsReached {
  readonly reached: ReadonlySet<number>;
  /** Bands count upwards: what is at band 3 is also at 0, 1 and 2; -1 when nothing is in use. */
  readonly highest: number;
  readonly isStuck: boolean;
  /** Stuck though the ink is known: nothing is known to lift it without harm. */
  readonly hasNoAgent: boolean;
}

/**
 * Bands of all routes and uses. A stuck task counts as the worst band, as nobody knows what will be
 * used; one that only lacks an agent at hand counts as the band of what would do.
 */
const bandsReached = (
  book: Book,
  bench: Bench,
  tasks: readonly Task[],
  choices: readonly (Candidate | undefined)[],
  hazards: readonly AgentHazard[],
): BandsReached => {
  const reached = new Set<number>();
  let isStuck = false;
  let hasNoAgent = false;
  let highest = -1;
  for (const [index, task] of tasks.entries()) {
    const band = task.stuck === 'not-at-hand' ? task.band : choices[index]?.band;
    if (band !== undefined) reached.add(band);
    else if (task.stuck !== undefined) {
      isStuck = true;
      hasNoAgent ||= NO_AGENT.includes(task.stuck);
    }
  }
  for (const use of bench.uses) {
    const band = hazards[book.agentIndex.get(use.agent) ?? -1]?.band;
    if (band === undefined) highest = book.worstBand;
    else reached.add(band);
  }
  if (isStuck) highest = book.worstBand;
  return { reached, highest: Math.max(highest, ...reached), isStuck, hasNoAgent };
};

/**
 * Agents that the parts of a mix might be taken off with, up to the band that its routes are at.
 * More in a mix may change which agent is taken; whatever any of its parts had called for by itself
 * stays called for.
 */
const agentsThatMightBeUsed = (
  tasks: readonly Task[],
  hazards: readonly AgentHazard[],
): AgentSet => {
  let found = 0;
  for (const { mightUse, band } of tasks) {
    for (let agent = 0; agent < hazards.length; agent += 1) {
      const bit = 1 << agent;
      if ((mightUse & bit) !== 0 && sure(hazards[agent]).band <= band) found |= bit;
    }
  }
  return found;
};
