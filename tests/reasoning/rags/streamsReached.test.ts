import { describe, expect, it } from 'vitest';
import type { BenchInput } from '../../../server/reasoning/index.js';
import { streamsReached } from '../../../server/reasoning/rags/streamsReached.js';
import { assessed, book } from '../../support/everyMix.js';

const streams = (bench: Partial<BenchInput>) =>
  streamsReached(book, assessed({ mixes: [], surfaces: ['glass-slab'], ...bench }));

const ids = (bench: Partial<BenchInput>) => streams(bench).map((stream) => stream.id);

const mix = (ink: string, ...additives: readonly string[]): Partial<BenchInput> => ({
  mixes: [{ parts: [{ ink }], additives: additives.map((additive) => ({ additive })) }],
});

describe('rag streams', () => {
  it('are the ordinary one alone where nothing heats or evaporates', () => {
    expect(ids({})).toEqual(['ordinary']);
    expect(ids(mix('water-relief-gum'))).toEqual(['ordinary']);
  });

  it('leave the ordinary one out as soon as another stands', () => {
    expect(ids(mix('oil-relief'))).toEqual(['wet-can']);
    expect(ids(mix('water-soya-glycol'))).toEqual(['wet-can']);
  });

  it('stand strictest first, each with what sends rags there and why', () => {
    const found = streams(mix('oil-relief', 'bronze-powder'));
    expect(found.map((stream) => stream.id)).toEqual(['own-can-metal', 'wet-can']);
    expect(found.map((stream) => stream.level)).toEqual(['own-can', 'wet-can']);
    expect(found[0]?.items).toEqual(['additive.bronze-powder']);
    expect(found[0]?.because).toEqual(['metal-powder']);
    expect(found[1]?.items).toEqual(expect.arrayContaining(['ink.oil-relief', 'agent.veg-oil']));
    expect(found.every((stream) => stream.selfHeating)).toBe(true);
  });

  it('are two when a spirit is used on an oil ink', () => {
    const used = { ...mix('oil-relief'), uses: [{ agent: 'white-spirit', ml: 10 }] };
    expect(ids(used)).toEqual(['wet-can', 'closed-can']);
    expect(streams(used)[1]?.selfHeating).toBe(false);
  });

  it('have one of their own for what nobody can name', () => {
    const [first] = streams(mix('my tin'));
    expect(first).toMatchObject({
      id: 'own-can-unknown',
      selfHeating: true,
      items: ['ink.my tin'],
    });
  });
});
