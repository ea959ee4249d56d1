import { describe, expect, it } from 'vitest';
import type { BenchInput, MixInput } from '../../../server/reasoning/index.js';
import { planOf } from '../../../server/reasoning/sheet/planOf.js';
import { assessed, book } from '../../support/everyMix.js';

const plan = (bench: BenchInput) => planOf(book, assessed(bench));

const oil: MixInput = { parts: [{ ink: 'oil-relief' }] };
const washable: MixInput = { parts: [{ ink: 'water-washable-oil' }] };

const route = (mix: MixInput, surface: string, more: Partial<BenchInput> = {}) =>
  plan({ mixes: [mix], surfaces: [surface], ...more }).routes.find(
    (each) => each.surface === surface,
  );

describe('the plan in words of the tables', () => {
  it('names agents in working order: oil, then spirit, then soap', () => {
    const mixes = [washable, { parts: [{ ink: 'rubber-letterpress' }] }, oil];
    expect(plan({ mixes, surfaces: ['glass-slab'] }).agents).toEqual([
      'veg-oil',
      'low-aromatic-spirit',
      'soap-water',
    ]);
  });

  it('goes from tool to tool in an order that carries no dirt back', () => {
    const surfaces = [
      'glass-slab',
      'mangle',
      'steel-tools',
      'lino-block',
      'roller-nitrile',
      'copper-plate',
    ];
    expect(plan({ mixes: [oil], surfaces }).routes.map((each) => each.surface)).toEqual([
      'copper-plate',
      'lino-block',
      'roller-nitrile',
      'steel-tools',
      'glass-slab',
      'mangle',
    ]);
  });

  it('does tools of one turn by name, and on one tool the oil route before the soap route', () => {
    const { routes } = plan({
      mixes: [oil, washable],
      surfaces: ['handle-wood', 'handle-plastic'],
    });
    const first = routes.map((each) => `${each.surface} ${each.passes[1]?.agent ?? ''}`);
    expect(first).toEqual([
      'handle-plastic veg-oil',
      'handle-plastic soap-water',
      'handle-wood veg-oil',
      'handle-wood soap-water',
    ]);
  });

  it('scrapes first, then the agent, then what takes its film off, then the last words', () => {
    expect(route(oil, 'glass-slab')?.passes).toEqual([
      { do: 'scrape' },
      { do: 'agent', agent: 'veg-oil' },
      { do: 'follow-up', agent: 'soap-water' },
      { do: 'last' },
    ]);
  });

  it('does not scrape what a scraper would mar', () => {
    expect(route(oil, 'copper-plate')?.passes[0]).toMatchObject({ do: 'agent' });
  });

  it('marks the agent on dried ink, and each pass that the surface stands only briefly', () => {
    const passes = route({ ...oil, dried: true }, 'lino-block')?.passes ?? [];
    const { brief = 0 } = book.surfaces.get('lino-block') ?? {};
    for (const pass of passes.filter((each) => each.agent !== undefined)) {
      const isBrief = (brief & (1 << (book.agentIndex.get(pass.agent ?? '') ?? 31))) !== 0;
      expect(pass.brief === true, pass.agent).toBe(isBrief);
      expect(pass.dried === true, pass.agent).toBe(pass.do === 'agent');
    }
    expect(passes.some((pass) => pass.brief)).toBe(true);
  });

  it('gives for each route the rows that it comes from', () => {
    const mix = { ...oil, additives: [{ additive: 'clove-oil' }] };
    expect(route(mix, 'iron-press-bed')?.because).toEqual([
      'surface.iron-press-bed',
      'ink.oil-relief',
      'additive.clove-oil',
      'pair.iron-press-bed.veg-oil',
      'band.band-0',
    ]);
  });

  it('leaves what no table knows out of the reasons', () => {
    const mix = { parts: [{ ink: 'my tin' }], additives: [{ additive: 'my jar' }] };
    expect(route(mix, 'mangle')).toEqual({
      surface: 'mangle',
      mix: 'mix-1',
      passes: [],
      band: 5,
      because: ['somebody-stuck'],
      stuck: 'unknown-surface',
    });
  });

  it('names what would do where it is not at hand', () => {
    expect(route(oil, 'glass-slab', { agentsAtHand: ['soap-water'] })).toMatchObject({
      stuck: 'not-at-hand',
      passes: [],
      wouldDo: ['veg-oil', 'soap-water'],
      band: 0,
    });
  });

  it('scrapes a leather roller and never washes it; felt and tarlatan have only their last words', () => {
    expect(route(oil, 'roller-leather-nap')).toMatchObject({
      passes: [{ do: 'scrape' }, { do: 'last' }],
      band: 0,
    });
    expect(route(oil, 'press-felt')?.passes).toEqual([{ do: 'last' }]);
    expect(route(oil, 'tarlatan')?.passes).toEqual([{ do: 'last' }]);
  });

  it('says how many plans it was chosen from, and what it comes to', () => {
    const found = plan({ mixes: [oil], surfaces: ['glass-slab', 'lino-block'] });
    expect(found.chosenFrom).toBe('4');
    expect(found.hazard).toBe(0);
  });
});
