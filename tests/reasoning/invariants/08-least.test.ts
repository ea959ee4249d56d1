import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planOf } from '../../../server/reasoning/sheet/planOf.js';
import type { BenchInput, Plan } from '../../../server/reasoning/index.js';
import { aBench, runs } from '../../support/arbitraries.js';
import {
  EVERY_SURFACE,
  SURFACE_SETS,
  THINGS,
  assessed,
  benchOf,
  book,
  mixOf,
  pairsOf,
  triplesOf,
} from '../../support/everyMix.js';
import { type Job, jobsOf, mildestWays } from '../../support/plainPlanner.js';
import { reasoner } from '../../support/rules.js';

const planned = (input: BenchInput): Plan => planOf(book, assessed(input));

/** What is wrong with a plan, held against the ways worked out from the tables; nothing: ''. */
const faultOf = (input: BenchInput, plan: Plan): string => {
  const jobs = jobsOf(benchOf(input));
  if (jobs.length !== plan.routes.length)
    return `${jobs.length} jobs, ${plan.routes.length} routes`;
  for (const route of plan.routes) {
    const job = jobs.find((each) => each.mix === route.mix && each.surface === route.surface);
    const fault = job === undefined ? 'is no job' : routeFault(job, route);
    if (fault !== '') return `${route.mix} on ${route.surface} ${fault}`;
  }
  const used = plan.routes.flatMap((route) => route.passes.flatMap((pass) => pass.agent ?? []));
  return [...new Set(used)].sort().join() === [...plan.agents].sort().join()
    ? ''
    : 'lists other agents than its routes use';
};

const routeFault = (job: Job, route: Plan['routes'][number]): string => {
  const agents = route.passes.flatMap((pass) => pass.agent ?? []).join();
  const mildest = mildestWays(job);
  if (mildest.length === 0) {
    if (agents !== '') return `uses ${agents} where nothing may be used`;
    return job.isWashed === (route.stuck === undefined) ? 'is stuck, or is not, wrongly' : '';
  }
  if (route.stuck !== undefined) return `is stuck, yet ${String(mildest[0]?.agents)} would do`;
  const way = mildest.find((each) => each.agents.join() === agents);
  return way?.band === route.band ? '' : `takes ${agents} of band ${String(route.band)}`;
};

describe('least', { timeout: 30_000 }, () => {
  it('takes every mix off with an agent of the mildest band that does no harm', () => {
    fc.assert(
      fc.property(aBench, (bench) => {
        expect(faultOf(bench, reasoner.sheet(bench).plan)).toBe('');
      }),
      runs(1500),
    );
  });

  it.each([false, true])('does so for each ink and additive alone, dried: %s', (dried) => {
    for (const thing of THINGS) {
      for (const surface of EVERY_SURFACE) {
        const bench = { mixes: [mixOf([thing], dried)], surfaces: [surface] };
        expect(faultOf(bench, planned(bench))).toBe('');
      }
    }
  });

  it.each([false, true])('does so for every two, in one mix and in two, dried: %s', (dried) => {
    for (const pair of pairsOf(THINGS)) {
      for (const surfaces of SURFACE_SETS) {
        const together = { mixes: [mixOf(pair, dried)], surfaces };
        expect(faultOf(together, planned(together))).toBe('');
        const apart = { mixes: pair.map((thing) => mixOf([thing], dried)), surfaces };
        expect(faultOf(apart, planned(apart))).toBe('');
      }
    }
  });

  it('does so for every three in one mix', () => {
    for (const triple of triplesOf(THINGS)) {
      for (const surfaces of SURFACE_SETS.slice(0, 2)) {
        const bench = { mixes: [mixOf(triple)], surfaces };
        expect(faultOf(bench, planned(bench))).toBe('');
      }
    }
  });
});
