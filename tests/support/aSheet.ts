import type { Sheet } from '../../server/reasoning/index.js';

/** A sheet made by hand: an oil mix on two surfaces, one of them stuck, and something unknown. */
export const aSheet: Sheet = {
  bench: {
    region: 'uk',
    mixes: [
      {
        id: 'mix-1',
        name: 'tram green',
        parts: [
          { ink: 'oil-relief', share: 90 },
          { ink: 'my tin', share: 10 },
        ],
        additives: [{ additive: 'cobalt-drier', percent: 3 }],
        dried: false,
      },
    ],
    surfaces: ['glass-slab', 'roller-leather-nap'],
    equipment: ['etching-press'],
    uses: [],
    bottles: [],
    people: { under16: false, flags: [] },
  },
  levels: [
    { scale: 'air', level: 'window', height: 1, because: ['band.2'], folded: [] },
    { scale: 'gloves', level: 'splash-gloves', height: 0, because: ['agent.veg-oil'], folded: [] },
    { scale: 'rags', level: 'wet-can', height: 2, because: ['ink.oil-relief'], folded: [] },
    { scale: 'people', level: 'anyone-inducted', height: 0, because: ['band.1'], folded: [] },
  ],
  plan: {
    agents: ['veg-oil', 'soap-water'],
    routes: [
      {
        surface: 'glass-slab',
        mix: 'mix-1',
        band: 1,
        passes: [
          { do: 'scrape' },
          { do: 'agent', agent: 'veg-oil' },
          { do: 'follow-up', agent: 'soap-water', brief: true },
          { do: 'last' },
        ],
        because: ['ink.oil-relief', 'pair.glass-slab.veg-oil'],
      },
      {
        surface: 'roller-leather-nap',
        mix: 'mix-1',
        band: 0,
        passes: [],
        because: ['surface.roller-leather-nap'],
        stuck: 'not-at-hand',
        wouldDo: ['white-spirit'],
      },
    ],
    hazard: 3,
    chosenFrom: '12',
  },
  gloves: {
    materials: [{ id: 'nitrile', grade: 'VG', changeAfterMin: 30 }],
    changeAfterMin: 30,
    thickness: 'thin',
    because: ['agent.veg-oil'],
  },
  streams: [
    {
      id: 'wet-can',
      level: 'wet-can',
      selfHeating: true,
      items: ['ink.oil-relief', 'agent.veg-oil'],
      because: ['ink.oil-relief'],
    },
  ],
  neverTogether: [],
  unknown: [{ kind: 'ink', id: 'my tin', sdsSection: 2 }],
  flags: [
    {
      kind: 'dose-above-usual',
      subject: 'additive.cobalt-drier',
      values: { percent: 3, usual: { low: 0.5, high: 2.5 }, highest: 3.5 },
    },
  ],
  swaps: [
    {
      kind: 'swap',
      what: 'ink.oil-relief',
      for: 'ink.water-washable-oil',
      spares: [{ scale: 'air', from: 'window', to: 'room-air' }],
      sparesAgents: ['veg-oil'],
      sparesMl: [],
    },
  ],
  amounts: {
    ml: [{ agent: 'veg-oil', range: { low: 15, high: 40 } }],
    rags: { low: 4, high: 7 },
  },
  lines: [
    {
      id: 'tool.glass-slab.mix-1',
      text: 'tool',
      phase: 'wash-up',
      rank: 100,
      values: { surface: 'glass-slab', mixes: ['mix-1'] },
      because: ['ink.oil-relief', 'pair.glass-slab.veg-oil'],
      folded: [],
      route: {
        surface: 'glass-slab',
        mix: 'mix-1',
        band: 1,
        passes: [{ do: 'scrape' }, { do: 'agent', agent: 'veg-oil', dried: true }, { do: 'last' }],
        because: [],
      },
    },
    {
      id: 'rags-wet-can',
      text: 'rags-wet-can',
      phase: 'rags-and-waste',
      rank: 20,
      values: { items: ['ink.oil-relief', 'agent.veg-oil'], stream: 'wet-can' },
      because: ['ink.oil-relief', 'stream.wet-can'],
      folded: [],
    },
    {
      id: 'aid-eye',
      text: 'aid-eye',
      phase: 'if-it-goes-wrong',
      rank: 20,
      values: {},
      because: ['first-aid.splash-in-eye', 'region.uk'],
      folded: [],
    },
  ],
};
