import { describe, expect, it } from 'vitest';
import type { BenchInput, Bottle, MixInput } from '../../../server/reasoning/index.js';
import { assessed, book } from '../../support/everyMix.js';

const task = (mix: MixInput, surface: string, more: Partial<BenchInput> = {}) => {
  const found = assessed({ mixes: [mix], surfaces: [surface], ...more }).tasks.find(
    (each) => each.surfaceId === surface,
  );
  if (found === undefined) throw new Error(`no task on ${surface}`);
  return found;
};

const inks = (...ids: readonly string[]): MixInput => ({ parts: ids.map((ink) => ({ ink })) });

const dosed = (ink: string, ...ids: readonly string[]): MixInput => ({
  parts: [{ ink }],
  additives: ids.map((additive) => ({ additive })),
});

/** The ways of the mildest band, as ids. */
const ways = (mix: MixInput, surface: string, more?: Partial<BenchInput>): readonly string[] =>
  task(mix, surface, more).choices.map(({ agent, followUp }) =>
    [agent, followUp].flatMap((each) => (each === undefined ? [] : book.agents[each]?.id)).join(),
  );

const oil = inks('oil-relief');
const bottle = (agent: string, facts: Partial<Bottle>): Bottle => ({
  agent,
  sdsDate: '2026-01-01',
  ...facts,
});

describe('ways to take a mix off a surface', () => {
  it('are one agent, or one and another that takes its film off', () => {
    expect(ways(oil, 'glass-slab')).toEqual(['veg-oil,soap-water', 'veg-ester,soap-water']);
    expect(ways(inks('water-washable-oil'), 'glass-slab')).toEqual([
      'soap-water',
      'veg-oil,soap-water',
      'veg-ester,soap-water',
    ]);
  });

  it('leave an oil film where it may stay', () => {
    expect(ways(oil, 'iron-press-bed')).toEqual(['veg-oil', 'veg-ester']);
  });

  it('lift every part of the mix, wet or dried', () => {
    expect(ways(inks('oil-relief', 'water-washable-oil'), 'glass-slab')).toEqual([
      'veg-oil,soap-water',
      'veg-ester,soap-water',
    ]);
    expect(ways({ ...oil, dried: true }, 'glass-slab')).toEqual(['veg-ester,soap-water']);
    expect(task(inks('oil-relief', 'water-relief-gum'), 'glass-slab').stuck).toBe(
      'parts-share-no-agent',
    );
  });

  it('end with what the ink must be finished with', () => {
    expect(ways(inks('rubber-letterpress'), 'glass-slab')).toEqual([
      'veg-oil,low-aromatic-spirit',
      'veg-ester,low-aromatic-spirit',
      'low-aromatic-spirit',
    ]);
  });

  it('do not end with what leaves a film of its own', () => {
    const hand = { agentsAtHand: ['veg-oil', 'kerosene'] };
    expect(ways(inks('rubber-letterpress'), 'glass-slab', hand)).toEqual([]);
    expect(ways(inks('rubber-letterpress'), 'iron-press-bed', hand)).toEqual([
      'veg-oil,kerosene',
      'kerosene',
    ]);
    const andSoap = { agentsAtHand: ['veg-oil', 'kerosene', 'soap-water'] };
    expect(ways(inks('rubber-letterpress'), 'glass-slab', andSoap)).toEqual([
      'kerosene,soap-water',
    ]);
  });

  it('are narrowed by an additive that only some agents take off', () => {
    expect(ways(dosed('water-washable-oil', 'clove-oil'), 'glass-slab')).toEqual([
      'veg-oil,soap-water',
      'veg-ester,soap-water',
    ]);
  });

  it('keep what must not touch the mix away from it, at the end too', () => {
    expect(ways(dosed('oil-relief', 'aluminium-powder'), 'glass-slab')).toEqual(
      ['low-aromatic-spirit', 'veg-oil,low-aromatic-spirit', 'veg-ester,low-aromatic-spirit'].sort(
        (a, b) => order(a) - order(b),
      ),
    );
  });

  it('count the contacts that the surface stands only briefly', () => {
    const briefs = task(oil, 'lino-block').choices.map((choice) => choice.briefs);
    const { brief = 0 } = book.surfaces.get('lino-block') ?? {};
    expect(briefs).toEqual(
      task(oil, 'lino-block').choices.map(
        ({ agents }) => (agents & brief).toString(2).replaceAll('0', '').length,
      ),
    );
    expect(Math.max(...briefs)).toBeGreaterThan(0);
  });

  it('are of the mildest band that is at hand', () => {
    const spirits = { agentsAtHand: ['white-spirit', 'low-aromatic-spirit', 'bleach'] };
    expect(ways(oil, 'glass-slab', spirits)).toEqual(['low-aromatic-spirit']);
  });

  it("go by the bottle's own facts, and the next bench by the table again", () => {
    const mild = [
      bottle('low-aromatic-spirit', { vapourPressurePa: 0, flashPointC: 120, hazardCodes: [] }),
    ];
    expect(ways(oil, 'glass-slab', { bottles: mild })).toContain('low-aromatic-spirit');
    expect(ways(oil, 'glass-slab')).not.toContain('low-aromatic-spirit');
  });
});

const order = (agents: string): number => book.agentIndex.get(agents.split(',')[0] ?? '') ?? -1;

describe('a mix with no way off', () => {
  it.each([
    [inks('my tin'), 'glass-slab', 'unknown-ink'],
    [dosed('oil-relief', 'my jar'), 'glass-slab', 'unknown-ink'],
    [{ parts: [], additives: [{ additive: 'talc' }] }, 'glass-slab', 'unknown-ink'],
    [oil, 'pasta machine', 'unknown-surface'],
    [inks('plastisol', 'gum-arabic'), 'glass-slab', 'parts-share-no-agent'],
    [inks('gum-arabic'), 'litho-stone', 'all-harm'],
  ])('%j on %s is stuck for %s', (mix, surface, stuck) => {
    expect(task(mix, surface)).toMatchObject({ stuck, choices: [], wouldDo: [] });
  });

  it('is stuck for want of what would do, and says what that is', () => {
    const found = task(oil, 'glass-slab', { agentsAtHand: [] });
    expect(found.stuck).toBe('not-at-hand');
    expect(found.wouldDo).toEqual(task(oil, 'glass-slab').choices);
  });

  it('is stuck for harm when not even everything at hand would do', () => {
    const found = task(inks('gum-arabic'), 'litho-stone', { agentsAtHand: [] });
    expect(found).toMatchObject({ stuck: 'all-harm', wouldDo: [] });
  });
});

describe('where a mix is', () => {
  it('is everywhere unless it is said, and on the frame that comes with its roller', () => {
    const on = ['roller-nitrile'];
    const found = assessed({
      mixes: [oil, { ...inks('plastisol'), on }],
      surfaces: ['glass-slab'],
    }).tasks.map((each) => `${each.mix.parts[0]?.ink ?? ''} ${each.surfaceId}`);
    expect(found.sort()).toEqual([
      'oil-relief glass-slab',
      'oil-relief roller-nitrile',
      'oil-relief steel-tools',
      'plastisol roller-nitrile',
      'plastisol steel-tools',
    ]);
  });

  it('is on a tool that nobody knows, if that is what was said', () => {
    const found = assessed({ mixes: [{ ...oil, on: ['mangle'] }], surfaces: [] }).tasks;
    expect(found.map((each) => each.surfaceId)).toEqual(['mangle']);
  });

  it.each(['roller-leather-nap', 'tarlatan', 'press-felt'])(
    'asks for no agent on %s',
    (surface) => {
      expect(task(oil, surface)).toMatchObject({ stuck: undefined, choices: [] });
    },
  );
});
