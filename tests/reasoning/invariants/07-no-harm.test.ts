import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BenchInput, Plan, Route, Sheet } from '../../../server/reasoning/index.js';
import { planOf } from '../../../server/reasoning/sheet/planOf.js';
import { aBench, runs } from '../../support/arbitraries.js';
import {
  EVERY_SURFACE,
  THINGS,
  assessed,
  book,
  mixOf,
  pairsOf,
  triplesOf,
} from '../../support/everyMix.js';
import { gradeOf } from '../../support/plainPlanner.js';
import { catalogue, reasoner, words } from '../../support/rules.js';

const faultsOf = (route: Route): readonly string[] => {
  if (route.stuck !== undefined && route.passes.length > 0) return ['stuck, with passes'];
  if (route.stuck === undefined && route.passes.length === 0) return ['neither stuck nor a way'];
  return route.passes.flatMap((pass) => {
    if (pass.agent === undefined) return [];
    const grade = gradeOf(route.surface, pass.agent);
    if (grade === 'harms') return [`${pass.agent} harms ${route.surface}`];
    return (grade === 'brief') === (pass.brief === true)
      ? []
      : [`${pass.agent} on ${route.surface} is ${grade}`];
  });
};

const checkPlan = (plan: Plan): void => {
  const faults = plan.routes.flatMap(faultsOf);
  if (faults.length > 0) expect.fail(faults.join('; '));
};

const planned = (bench: BenchInput): Plan => planOf(book, assessed(bench));

/** A line for the tool that stops and sends to the keeper, and nothing that it might be done with. */
const lacksKeeper = (sheet: Sheet): readonly string[] =>
  sheet.plan.routes
    .filter((route) => route.stuck !== undefined)
    .filter((route) => {
      const line = sheet.lines.find(
        (each) => each.route?.surface === route.surface && each.route.stuck === route.stuck,
      );
      if (line === undefined) return true;
      const { head, rest } = words.line(line, sheet.bench.region);
      return !/keeper/.test(rest) || !/wipe dry and (stop|wait)/.test(head);
    })
    .map((route) => `${route.mix} on ${route.surface}`);

/** On a surface that stands it only briefly: the words for wiping on and off, or the pair's own. */
const lacksBriefWords = (sheet: Sheet): readonly string[] =>
  sheet.plan.routes.flatMap((route) =>
    route.passes.flatMap((pass) => {
      const agent = catalogue.agents.find((row) => row.id === pass.agent);
      if (agent === undefined || pass.brief !== true) return [];
      const pair = catalogue.pairs.find((row) => row.id === `${route.surface}.${agent.id}`);
      return words.passes(route).includes(pair?.apply ?? agent.applyBrief)
        ? []
        : [`${agent.id} on ${route.surface}`];
    }),
  );

describe('no harm to tools', { timeout: 30_000 }, () => {
  it('puts no agent on a surface that it harms, and marks the brief ones', () => {
    fc.assert(
      fc.property(aBench, (bench) => {
        const sheet = reasoner.sheet(bench);
        checkPlan(sheet.plan);
        expect(lacksKeeper(sheet)).toEqual([]);
        expect(lacksBriefWords(sheet)).toEqual([]);
      }),
      runs(1500),
    );
  });

  it.each([false, true])('does so for each ink alone on each surface, dried: %s', (dried) => {
    for (const thing of THINGS) {
      const sheet = reasoner.sheet({ mixes: [mixOf([thing], dried)], surfaces: EVERY_SURFACE });
      checkPlan(sheet.plan);
      expect(lacksKeeper(sheet), thing.id).toEqual([]);
      expect(lacksBriefWords(sheet), thing.id).toEqual([]);
    }
  });

  it.each([false, true])('does so for every two things on every surface, dried: %s', (dried) => {
    for (const pair of pairsOf(THINGS)) {
      checkPlan(planned({ mixes: [mixOf(pair, dried)], surfaces: EVERY_SURFACE }));
      const apart = pair.map((thing) => mixOf([thing], dried));
      checkPlan(planned({ mixes: apart, surfaces: EVERY_SURFACE }));
    }
  });

  // What may be done with a mix on a surface depends on no other surface: all of them at once will do.
  it('does so for every three things on every surface', () => {
    for (const triple of triplesOf(THINGS)) {
      checkPlan(planned({ mixes: [mixOf(triple)], surfaces: EVERY_SURFACE }));
    }
  });
});
