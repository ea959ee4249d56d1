import type { AgentSet } from '../book/book.js';
import type { Candidate } from './candidates.js';

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

/** Tasks with the same choices are one group, counted. */
const grouped = (tasks: readonly (readonly Candidate[])[]): readonly Group[] => {
  const groups = new Map<string, { choices: readonly Candidate[]; times: number }>();
  for (const choices of tasks) {
    let key = '';
    for (const each of choices) key += `${String(each.agents)}.${String(each.briefs)} `;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { choices, times: 1 });
    else group.times += 1;
  }
  return [...groups.values()];
};

const leastSet = (groups: readonly Group[], all: AgentSet): AgentSet => {
  const members = [...Array(32).keys()].filter((index) => (all & (1 << index)) !== 0);
  for (let size = 1; size < members.length; size += 1) {
    let best: Best | undefined;
    for (const agents of subsets(members, size)) {
      const found = within(groups, agents);
      if (found !== undefined && isBetter(found, best)) best = found;
    }
    if (best !== undefined) return best.agents;
  }
  return all;
};

/** Sets of `size` members, those with the earliest members first. */
function* subsets(members: readonly number[], size: number, from = 0): Generator<AgentSet> {
  if (size === 0) {
    yield 0;
    return;
  }
  for (let at = from; at <= members.length - size; at += 1) {
    for (const rest of subsets(members, size - 1, at + 1)) yield rest | (1 << (members[at] ?? 0));
  }
}

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
