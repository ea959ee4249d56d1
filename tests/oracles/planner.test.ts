import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { BenchInput, MixInput, Plan } from '../../server/reasoning/index.js';
import { planOf } from '../../server/reasoning/sheet/planOf.js';
import { aMixNamed, agentIds, bottles, runs } from '../support/arbitraries.js';
import { EVERY_SURFACE, THINGS, assessed, benchOf, book, mixOf } from '../support/everyMix.js';
import { type Optimum, makeMilp } from '../support/milp.js';
import { type Job, jobsOf, mildestWays } from '../support/plainPlanner.js';
import { catalogue } from '../support/rules.js';

const BENCHES = 3000;

const someMixes: fc.Arbitrary<readonly MixInput[]> = fc.array(
  fc.oneof(
    { weight: 1, arbitrary: aMixNamed('mix') },
    {
      weight: 3,
      arbitrary: fc.record({
        parts: fc.array(
          fc.record({ ink: fc.constantFrom(...catalogue.inks.map((row) => row.id)) }),
          {
            minLength: 1,
            maxLength: 1,
          },
        ),
        dried: fc.boolean(),
      }),
    },
  ),
  { minLength: 1, maxLength: 8 },
);

/** Benches with much on them, so that agents can be shared or not; some with bottles, some with few agents. */
const crowded: fc.Arbitrary<BenchInput> = fc.record({
  mixes: someMixes,
  surfaces: fc.subarray([...EVERY_SURFACE], { minLength: 1, maxLength: 14 }),
  agentsAtHand: fc.option(fc.subarray([...agentIds], { minLength: 5 }), {
    nil: undefined,
    freq: 2,
  }),
  bottles: fc.option(bottles, { nil: undefined, freq: 2 }),
});

const chosenFrom = (jobs: readonly Job[]): bigint =>
  jobs.reduce((plans, job) => plans * BigInt(Math.max(1, mildestWays(job).length)), 1n);

describe('the planner against a MILP solver', { timeout: 120_000 }, () => {
  let solve: (jobs: readonly Job[]) => Optimum;
  beforeAll(async () => {
    ({ solve } = await makeMilp());
  });

  const planned = (input: BenchInput): Plan => planOf(book, assessed(input));

  const check = (input: BenchInput): Plan => {
    const jobs = jobsOf(benchOf(input));
    const plan = planned(input);
    const ours = { agents: plan.agents.length, hazard: plan.hazard };
    expect(ours, JSON.stringify(input)).toEqual(solve(jobs));
    expect(plan.chosenFrom).toBe(String(chosenFrom(jobs)));
    return plan;
  };

  it(`takes as few agents and as little hazard on ${String(BENCHES)} crowded benches`, () => {
    const plans = fc.sample(crowded, runs(BENCHES)).map(check);
    // They are worth solving: most leave a choice, and many need more than the usual two agents.
    expect(plans.filter((plan) => BigInt(plan.chosenFrom) > 1n).length).toBeGreaterThan(
      BENCHES / 2,
    );
    expect(plans.filter((plan) => plan.agents.length > 2).length).toBeGreaterThan(BENCHES / 4);
  });

  it.each([false, true])(
    'does so on the worst bench: every ink on every surface, dried: %s',
    (dried) => {
      const mixes = THINGS.filter(({ kind }) => kind === 'ink').map((ink) => mixOf([ink], dried));
      const plan = check({ mixes, surfaces: EVERY_SURFACE });
      expect(plan.routes.length).toBe(catalogue.inks.length * catalogue.surfaces.length);
    },
  );
});
