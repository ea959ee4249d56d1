import highsLoader, { type HighsSolution, type LegacyHighs } from 'highs';
import { type Job, type Way, mildestWays } from './plainPlanner.js';

/** The package's types speak of its CommonJS form; what is imported is the function itself. */
const load = highsLoader as unknown as () => Promise<LegacyHighs>;

/** Fewest agents, and the least hazard with so many. */
export interface Optimum {
  readonly agents: number;
  readonly hazard: number;
}

/** Jobs with the very same ways are one group, counted: whatever is best for one is best for all. */
interface Group {
  readonly ways: readonly Way[];
  readonly times: number;
}

const grouped = (jobs: readonly Job[]): readonly Group[] => {
  const groups = new Map<string, Group>();
  for (const job of jobs) {
    const ways = mildestWays(job);
    if (ways.length === 0) continue;
    const key = JSON.stringify(ways);
    groups.set(key, { ways, times: (groups.get(key)?.times ?? 0) + 1 });
  }
  return [...groups.values()];
};

const choice = (group: number, way: number): string => `x_${String(group)}_${String(way)}`;

const taken = (agent: string): string => `y_${agent.replaceAll('-', '_')}`;

const sumOf = (terms: readonly string[]): string =>
  terms.length === 0 ? '0 nothing' : terms.join(' + ');

/**
 * The model as LP text. One way is chosen for each group, and only among the agents taken. Only the
 * agents need be whole: once they are, each group takes its least hazard by itself.
 */
const lpText = (groups: readonly Group[], goal: 'agents' | 'hazard', most?: number): string => {
  const agents = [
    ...new Set(groups.flatMap(({ ways }) => ways.flatMap((way) => way.agents))),
  ].sort();
  const hazards = groups.flatMap(({ ways, times }, group) =>
    ways.map((way, at) => `${String(way.hazard * times)} ${choice(group, at)}`),
  );
  const rows = groups.flatMap(({ ways }, group) => [
    `${ways.map((_, at) => choice(group, at)).join(' + ')} = 1`,
    ...ways.flatMap((way, at) =>
      way.agents.map((agent) => `${choice(group, at)} - ${taken(agent)} <= 0`),
    ),
  ]);
  const all = sumOf(agents.map(taken));
  return [
    'Minimize',
    ` goal: ${goal === 'agents' ? all : sumOf(hazards)}`,
    'Subject To',
    ...rows.map((row, index) => ` r${String(index)}: ${row}`),
    ...(most === undefined ? [] : [` most: ${all} <= ${String(most)}`]),
    'Binary',
    ...agents.map((agent) => ` ${taken(agent)}`),
    'End',
  ].join('\n');
};

/** Solves plans by a general solver that knows nothing of printing. */
export const makeMilp = async (): Promise<{
  readonly solve: (jobs: readonly Job[]) => Optimum;
}> => {
  const highs = await load();
  const best = (model: string): number => {
    const solution: HighsSolution = highs.solve(model, { mip_rel_gap: 0, mip_abs_gap: 0.5 });
    if (solution.Status !== 'Optimal') throw new Error(`${solution.Status}: ${model}`);
    return Math.round(solution.ObjectiveValue);
  };
  return {
    solve: (jobs) => {
      const groups = grouped(jobs);
      if (groups.length === 0) return { agents: 0, hazard: 0 };
      const agents = best(lpText(groups, 'agents'));
      return { agents, hazard: best(lpText(groups, 'hazard', agents)) };
    },
  };
};
