import { describe, expect, it } from 'vitest';
import type { BenchInput } from '../../../server/reasoning/index.js';
import { assessed, book } from '../../support/everyMix.js';

const tags = (more: Partial<BenchInput>): readonly string[] =>
  [...assessed({ mixes: [], surfaces: ['glass-slab'], ...more }).tags].sort();

const bands = (more: Partial<BenchInput>): readonly string[] =>
  tags(more).filter((tag) => tag.startsWith('band.'));

const inks = (...ids: readonly string[]) => ({ mixes: [{ parts: ids.map((ink) => ({ ink })) }] });

describe('what a bench comes to', () => {
  it('has no band where nothing is used', () => {
    expect(bands({})).toEqual([]);
    expect(bands({ ...inks('oil-relief'), surfaces: ['tarlatan'] })).toEqual([]);
  });

  it('counts bands upwards', () => {
    expect(bands(inks('oil-relief'))).toEqual(['band.0']);
    expect(bands(inks('litho-crayon'))).toEqual(['band.0', 'band.1', 'band.2']);
  });

  it('counts the band of what is said to be in use', () => {
    expect(bands({ uses: [{ agent: 'kerosene', ml: 5 }] })).toContain('band.3');
    expect(bands({ uses: [{ agent: 'kerosene', ml: 5 }] })).not.toContain('band.4');
  });

  it('takes the worst band for a liquid that is no agent, and for a tool that is stuck', () => {
    expect(bands({ uses: [{ agent: 'bleach', ml: 5 }] })).toContain('band.5');
    const stuck = inks('plastisol', 'gum-arabic');
    expect(bands(stuck)).toContain('band.5');
    expect(tags(stuck)).toContain('state.stuck');
  });

  it('takes the band of what would do where that is not at hand, and calls nothing stuck', () => {
    const wanting = { ...inks('litho-crayon'), agentsAtHand: [] };
    expect(bands(wanting)).toEqual(['band.0', 'band.1', 'band.2']);
    expect(tags(wanting)).not.toContain('state.stuck');
  });

  it('brings the marks of the agents that the plan takes', () => {
    expect(tags(inks('litho-crayon'))).toEqual(
      expect.arrayContaining(['agent.low-aromatic-spirit', 'mark.evaporating-solvent']),
    );
  });

  it('takes the harshest of several bottles of one agent', () => {
    const bottle = { agent: 'white-spirit', sdsDate: '2026-01-01' };
    const codes = [['H315'], ['H336'], ['H350'], ['H301']];
    const [mild, harsh, harshest, poison] = codes.map((hazardCodes) => ({
      ...bottle,
      hazardCodes,
    }));
    const hazardOf = (...bottles: readonly (typeof mild)[]) => {
      const given = bottles.filter((each) => each !== undefined);
      const { hazards } = assessed({ mixes: [], surfaces: [], bottles: given });
      return hazards[book.agentIndex.get('white-spirit') ?? -1];
    };
    expect(hazardOf(mild, harshest, harsh)).toEqual(hazardOf(harshest));
    expect(hazardOf(harshest, mild)).toEqual(hazardOf(harshest));
    expect(hazardOf(mild)?.band).toBe(hazardOf(harsh)?.band);
    expect(hazardOf(mild, harsh)).toEqual(hazardOf(harsh));
    expect(hazardOf(mild)?.hazard).toBeLessThan(hazardOf(harsh)?.hazard ?? 0);
    expect(hazardOf(poison, mild, harsh)).toEqual(hazardOf(poison));
    expect(hazardOf(poison)?.band).toBeGreaterThan(hazardOf(harsh)?.band ?? 5);
  });

  it("lays a bottle's facts over its agent and over no other", () => {
    const bottles = [{ agent: 'acetone', sdsDate: '2026-01-01', hazardCodes: ['H350'] }];
    const { hazards } = assessed({ mixes: [], surfaces: [], bottles });
    for (const [index, agent] of book.agents.entries()) {
      const generic = book.agentHazards[index];
      if (agent.id === 'acetone') expect(hazards[index]?.band).toBe(5);
      else expect(hazards[index], agent.id).toBe(generic);
    }
  });
});
