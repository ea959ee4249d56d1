import { type AgentSet, sizeOf } from '../book/agentSet.js';
import type { Candidate } from './candidate.js';

/** The choice made for every task, in the order of the tasks. */
export interface LeastHazardRoutes {
  readonly chosen: readonly Candidate[];
  readonly agents: AgentSet;
  readonly hazard: number;
  /** How many plans there were to choose from. */
  readonly chosenFrom: bigint;
}

interface Group {
  readonly choices: readonly Candidate[];
  readonly times: number;
}

interface Best {
  readonly agents: AgentSet;
  readonly hazard: number;
  readonly briefs: number;
}

/**
 * The plan with the fewest different agents, then the least total hazard, then the fewest brief
 * contacts, then the agents that stand first in the table. Exact: sets of agents are tried in order
 * of size, and the first size that serves every task is the least; within one set each task takes
 * its own best choice, as the tasks share nothing but the set.
 * @param tasks for each task, its choices (at least one each), all of its mildest band
 */
export const leastHazardRoutes = (tasks: readonly (readonly Candidate[])[]): LeastHazardRoutes => {
  const groups = grouped(tasks);
  const all = groups.reduce(
    (set, group) => group.choices.reduce((inner, choice) => inner | choice.agents, set),
    0,
  );
  const agents = groups.length === 0 ? 0 : leastSet(groups, all);
  const chosen = tasks.map((choices) => bestWithin(choices, agents) as Candidate);
  return {
    chosen,
    agents,
    hazard: chosen.reduce((sum, choice) => sum + choice.hazard, 0),
    chosenFrom: tasks.reduce((product, choices) => product * BigInt(choices.length), 1n),
  };
};

/** Tasks with the very same choices are one group, counted. */
const grouped = (tasks: readonly (readonly Candidate[])[]): readonly Group[] => {
  const times = new Map<readonly Candidate[], number>();
  for (const choices of tasks) times.set(choices, (times.get(choices) ?? 0) + 1);
  return [...times].map(([choices, count]) => ({ choices, times: count }));
};

const leastSet = (groups: readonly Group[], all: AgentSet): AgentSet => {
  for (const sameSize of setsBySize(32 - Math.clz32(all))) {
    let best: Best | undefined;
    for (const agents of sameSize) {
      if ((agents & ~all) !== 0) continue;
      const found = within(groups, agents);
      if (found !== undefined && isBetter(found, best)) best = found;
    }
    if (best !== undefined) return best.agents;
  }
  return all;
};

const bySize = new Map<number, readonly (readonly AgentSet[])[]>();

/** Every set of so many agents, by size; within a size those with the earliest agents first. */
const setsBySize = (agents: number): readonly (readonly AgentSet[])[] => {
  const known = bySize.get(agents);
  if (known !== undefined) return known;
  const sizes: AgentSet[][] = Array.from({ length: agents }, () => []);
  // Counted down with the bits reversed, so that sets with early agents come first.
  for (let count = (1 << agents) - 1; count > 0; count -= 1) {
    const set = reversed(count, agents);
    sizes[sizeOf(set) - 1]?.push(set);
  }
  bySize.set(agents, sizes);
  return sizes;
};

/** The lowest bits of a set, so many of them, in reverse. */
const reversed = (set: AgentSet, bits: number): AgentSet => {
  let out = 0;
  for (let bit = 0; bit < bits; bit += 1) out = (out << 1) | ((set >>> bit) & 1);
  return out;
};

const isBetter = (found: Best, best: Best | undefined): boolean =>
  best === undefined ||
  found.hazard < best.hazard ||
  (found.hazard === best.hazard && found.briefs < best.briefs);

const within = (groups: readonly Group[], agents: AgentSet): Best | undefined => {
  let hazard = 0;
  let briefs = 0;
  for (const group of groups) {
    const best = bestWithin(group.choices, agents);
    if (best === undefined) return undefined;
    hazard += best.hazard * group.times;
    briefs += best.briefs * group.times;
  }
  return { agents, hazard, briefs };
};

const bestWithin = (choices: readonly Candidate[], agents: AgentSet): Candidate | undefined => {
  let best: Candidate | undefined;
  for (const choice of choices) {
    if ((choice.agents & ~agents) !== 0) continue;
    if (
      best === undefined ||
      choice.hazard < best.hazard ||
      (choice.hazard === best.hazard && choice.briefs < best.briefs)
    ) {
      best = choice;
    }
  }
  return best;
};
