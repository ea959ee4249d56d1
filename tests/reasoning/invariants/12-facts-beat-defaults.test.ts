import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Bottle, Sheet } from '../../../server/reasoning/index.js';
import { aBench, aBottle, agentIds, bottles, runs } from '../../support/arbitraries.js';
import { SURFACE_SETS, THINGS, mixOf } from '../../support/everyMix.js';
import { harmOf, jobsOf, mildestWays } from '../../support/plainPlanner.js';
import { reasoner, words } from '../../support/rules.js';

const longDate = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long', timeZone: 'UTC' });

const isAgent = (bottle: Bottle): boolean => agentIds.includes(bottle.agent);

const isMilder = (bottle: Bottle): boolean => {
  const generic = harmOf(bottle.agent).ranks;
  return harmOf(bottle.agent, [bottle]).ranks.some((rank, at) => rank < (generic[at] ?? 0));
};

const flagged = (sheet: Sheet, kind: string): readonly string[] =>
  sheet.flags.filter((flag) => flag.kind === kind).map((flag) => flag.subject);

/** Routes that are not of the mildest band, by the facts of the bottles. */
const wrongBands = (sheet: Sheet): readonly string[] =>
  jobsOf(sheet.bench).flatMap((job) => {
    const route = sheet.plan.routes.find(
      (each) => each.mix === job.mix && each.surface === job.surface,
    );
    const [way] = mildestWays(job);
    return way === undefined || way.band === route?.band
      ? []
      : [`${job.surface}: band ${String(route?.band)}, not ${String(way.band)}`];
  });

const hazardOf = (sheet: Sheet): number =>
  sheet.plan.routes
    .flatMap((route) => route.passes.flatMap((pass) => pass.agent ?? []))
    .reduce((sum, agent) => sum + harmOf(agent, sheet.bench.bottles).hazard, 0);

describe('facts beat defaults', { timeout: 30_000 }, () => {
  it("plans by what a bottle's data sheet says", () => {
    fc.assert(
      fc.property(aBench, bottles, (bench, some) => {
        const sheet = reasoner.sheet({ ...bench, bottles: some });
        expect(wrongBands(sheet)).toEqual([]);
        expect(sheet.plan.hazard).toBe(hazardOf(sheet));
      }),
      runs(1500),
    );
  });

  it('says whose figures they are and of which date, and flags each that is milder', () => {
    fc.assert(
      fc.property(aBench, bottles, (bench, some) => {
        const sheet = reasoner.sheet({ ...bench, bottles: some });
        const known = some.filter(isAgent);
        const subjects = known.map((bottle) => `agent.${bottle.agent}`).sort();
        const milder = known.filter(isMilder).map((bottle) => `agent.${bottle.agent}`);
        expect([...flagged(sheet, 'bottle-used')].sort()).toEqual(subjects);
        expect([...flagged(sheet, 'bottle-milder')].sort()).toEqual(milder.sort());
        for (const { agent, sdsDate } of known) {
          const line = sheet.lines.find((each) => each.id === `bottle-used.agent.${agent}`);
          const said = line && Object.values(words.line(line, sheet.bench.region)).join(' ');
          expect(said).toContain(words.short('agent', agent).toLowerCase());
          expect(said).toContain(longDate.format(new Date(sdsDate)));
        }
      }),
      runs(500),
    );
  });

  it.each(agentIds)('moves the band of %s with its bottle, up and down', (agent) => {
    const sdsDate = '2026-02-14';
    const cancer: Bottle = { agent, sdsDate, hazardCodes: ['H350'] };
    const flashes: Bottle = { agent, sdsDate, flashPointC: 10, boilingPointC: 80 };
    const nothing: Bottle = {
      agent,
      sdsDate,
      flashPointC: 150,
      vapourPressurePa: 0,
      hazardCodes: [],
    };
    expect(harmOf(agent, [cancer]).band).toBe(5);
    expect(harmOf(agent, [flashes]).band).toBeGreaterThanOrEqual(4);
    expect(harmOf(agent, [nothing]).band).toBe(0);
    for (const bottle of [cancer, flashes, nothing]) {
      for (const thing of THINGS) {
        const bench = { mixes: [mixOf([thing])], surfaces: SURFACE_SETS[1] ?? [] };
        const sheet = reasoner.sheet({ ...bench, agentsAtHand: [agent], bottles: [bottle] });
        expect(wrongBands(sheet), thing.id).toEqual([]);
        const used = sheet.plan.routes.filter(
          (route) =>
            sheet.plan.agents.length > 0 &&
            route.stuck === undefined &&
            route.passes.some((pass) => pass.agent === agent),
        );
        for (const route of used) expect(route.band).toBe(harmOf(agent, [bottle]).band);
      }
    }
  });

  it('leaves out of use a bottle that is harsher than another way', () => {
    const mix = { parts: [{ ink: 'oil-relief' }] };
    const bench = { mixes: [mix], surfaces: ['glass-slab'] };
    const bottle: Bottle = { agent: 'veg-oil', sdsDate: '2026-02-14', hazardCodes: ['H350'] };
    expect(reasoner.sheet(bench).plan.agents).toContain('veg-oil');
    expect(reasoner.sheet({ ...bench, bottles: [bottle] }).plan.agents).not.toContain('veg-oil');
  });

  it('plans nothing by a bottle of something that is no agent, and takes it for the worst', () => {
    fc.assert(
      fc.property(
        aBench,
        aBottle.map((bottle) => ({ ...bottle, agent: 'grey bottle' })),
        (bench, bottle) => {
          const [less, more] = [
            reasoner.sheet({ ...bench, bottles: [] }),
            reasoner.sheet({ ...bench, bottles: [bottle] }),
          ];
          expect(more.plan).toEqual(less.plan);
          expect(
            more.levels.every(({ height }, at) => height >= (less.levels[at]?.height ?? 0)),
          ).toBe(true);
          expect(more.unknown).toContainEqual({ kind: 'agent', id: 'grey bottle', sdsSection: 2 });
        },
      ),
      runs(200),
    );
  });
});
