import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Candidate } from '../../../server/reasoning/routes/candidate.js';
import { leastHazardRoutes } from '../../../server/reasoning/routes/leastHazardRoutes.js';
import { runs } from '../../support/arbitraries.js';

/** A way with these agents, by their places. */
const way = (agents: readonly number[], hazard: number, briefs = 0): Candidate => ({
  agent: agents[0] ?? 0,
  followUp: agents[1],
  agents: agents.reduce((set, agent) => set | (1 << agent), 0),
  band: 1,
  hazard,
  briefs,
});

const aWay = fc
  .record({
    agents: fc.uniqueArray(fc.nat(6), { minLength: 1, maxLength: 2 }),
    hazard: fc.nat(12),
    briefs: fc.nat(2),
  })
  .map(({ agents, hazard, briefs }) => way(agents, hazard, briefs));

/** Every way to choose one from each list. */
const everyPlan = (tasks: readonly (readonly Candidate[])[]): readonly (readonly Candidate[])[] =>
  tasks.reduce<readonly (readonly Candidate[])[]>(
    (plans, choices) => plans.flatMap((plan) => choices.map((choice) => [...plan, choice])),
    [[]],
  );

const sizeOf = (plan: readonly Candidate[]): number =>
  plan
    .reduce((set, choice) => set | choice.agents, 0)
    .toString(2)
    .replaceAll('0', '').length;

const sum = (plan: readonly Candidate[], of: (choice: Candidate) => number): number =>
  plan.reduce((total, choice) => total + of(choice), 0);

/** Fewest agents, least hazard, fewest brief contacts: as one list that compares in that order. */
const merit = (plan: readonly Candidate[]): readonly [number, number, number] => [
  sizeOf(plan),
  sum(plan, (choice) => choice.hazard),
  sum(plan, (choice) => choice.briefs),
];

const byMerit = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((order, figure, at) => order || figure - (b[at] ?? 0), 0);

describe('the plan of fewest agents and least hazard', () => {
  it('is empty, and the only one, when there is nothing to do', () => {
    expect(leastHazardRoutes([])).toEqual({ chosen: [], agents: 0, hazard: 0, chosenFrom: 1n });
  });

  it('shares an agent between tasks rather than take the least for each', () => {
    const shared = way([0], 5);
    const plan = leastHazardRoutes([
      [way([1], 1), shared],
      [way([2], 1), shared],
    ]);
    expect(plan).toEqual({ chosen: [shared, shared], agents: 1, hazard: 10, chosenFrom: 4n });
  });

  it('counts an agent once, however many tasks use it as first or as last', () => {
    const plan = leastHazardRoutes([[way([3, 1], 2)], [way([1], 0), way([2], 0)]]);
    expect(plan.agents).toBe((1 << 3) | (1 << 1));
    expect(plan.chosen[1]?.agent).toBe(1);
  });

  it('among plans of as few agents takes the least hazard, then the fewest brief contacts', () => {
    expect(leastHazardRoutes([[way([0], 3), way([1], 2)]]).agents).toBe(1 << 1);
    expect(leastHazardRoutes([[way([0], 2, 1), way([1], 2, 0)]]).agents).toBe(1 << 1);
    const within = leastHazardRoutes([[way([0, 1], 2, 2), way([1, 0], 2, 1)]]);
    expect(within.chosen[0]?.briefs).toBe(1);
  });

  it('among plans that are alike takes the agents that stand first in the table', () => {
    expect(leastHazardRoutes([[way([4], 2), way([2], 2)]]).agents).toBe(1 << 2);
    expect(leastHazardRoutes([[way([0, 5], 2), way([1, 4], 2), way([0, 6], 2)]]).agents).toBe(
      (1 << 0) | (1 << 5),
    );
  });

  it('weighs tasks with the very same choices as often as they stand', () => {
    const many = [way([0], 1), way([1], 2)];
    const plan = leastHazardRoutes([many, many, many, [way([0], 9), way([1], 5)]]);
    expect(plan).toMatchObject({ agents: 1 << 1, hazard: 11, chosenFrom: 16n });
  });

  it('needs all agents when every task needs its own', () => {
    expect(leastHazardRoutes([[way([0], 1)], [way([1], 1)], [way([2, 3], 1)]]).agents).toBe(0b1111);
  });

  it('is the best of all plans, tried one by one', () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(aWay, { minLength: 1, maxLength: 4 }), { minLength: 1, maxLength: 4 }),
        (tasks) => {
          const plan = leastHazardRoutes(tasks);
          const [best] = everyPlan(tasks).map(merit).sort(byMerit);
          expect(merit(plan.chosen)).toEqual(best);
          expect(plan.chosen.reduce((set, choice) => set | choice.agents, 0)).toBe(plan.agents);
          expect(plan.hazard).toBe(best?.[1]);
          expect(plan.chosenFrom).toBe(BigInt(everyPlan(tasks).length));
        },
      ),
      runs(500),
    );
  });
});
