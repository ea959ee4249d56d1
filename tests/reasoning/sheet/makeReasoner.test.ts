import { describe, expect, it } from 'vitest';
import { type BenchInput, type Catalogue, makeReasoner } from '../../../server/reasoning/index.js';
import { catalogue, reasoner } from '../../support/rules.js';

const sheet = (more: Partial<BenchInput>) => reasoner.sheet({ mixes: [], surfaces: [], ...more });

const used = (...agents: readonly string[]): Partial<BenchInput> => ({
  uses: agents.map((agent) => ({ agent, ml: 10 })),
});

describe('a reasoner', () => {
  it('gives the bench made plain, as the sheet echoes it', () => {
    const input = { region: 'UK', mixes: [{ parts: [{ ink: 'Oil relief ink' }] }], surfaces: [] };
    expect(reasoner.bench(input)).toEqual(reasoner.sheet(input).bench);
  });

  it('gives the same sheet for the same bench, whatever was asked in between', () => {
    const bench = { mixes: [{ parts: [{ ink: 'oil-relief' }] }], surfaces: ['glass-slab'] };
    const first = JSON.stringify(reasoner.sheet(bench));
    sheet({
      ...bench,
      bottles: [{ agent: 'veg-oil', sdsDate: '2026-01-01', hazardCodes: ['H350'] }],
    });
    sheet({ ...bench, agentsAtHand: ['acetone'] });
    expect(JSON.stringify(reasoner.sheet(bench))).toBe(first);
  });
});

describe('gloves on the sheet', () => {
  it('are thin at the mildest level, and have nothing to time for soap', () => {
    expect(sheet({}).gloves).toEqual({
      materials: [
        { id: 'nitrile', grade: 'VG' },
        { id: 'butyl', grade: 'VG' },
        { id: 'neoprene', grade: 'VG' },
      ],
      thickness: 'thin',
      because: [],
    });
  });

  it('are thick from the next level on, with the minutes of the first', () => {
    const { gloves } = sheet(used('acetone'));
    expect(gloves.thickness).toBe('thick');
    expect(gloves.materials[0]?.id).toBe('butyl');
    expect(gloves.changeAfterMin).toBe(gloves.materials[0]?.changeAfterMin);
    expect(gloves.because).toEqual(['agent.acetone', 'glove-chart.acetone']);
  });

  it('are none where the data sheet must name them, and none where no one glove holds', () => {
    expect(sheet(used('grey bottle')).gloves.materials).toEqual([]);
    expect(sheet(used('acetone', 'white-spirit', 'veg-ester')).gloves.materials).toEqual([]);
  });

  it('are named for each agent alone where there is one, and not where there is none', () => {
    const bare = catalogue.agents.map((agent) =>
      agent.id === 'veg-ester'
        ? { ...agent, glove: { ...agent.glove, chartRows: [], standIn: {} } }
        : agent,
    );
    const { lines } = makeReasoner({ ...catalogue, agents: bare }).sheet({
      mixes: [],
      surfaces: [],
      ...used('veg-ester', 'acetone'),
    });
    expect(lines.filter((each) => each.text === 'glove-for-agent').map((each) => each.id)).toEqual([
      'glove-for-agent.acetone',
    ]);
  });

  it('are judged against what the plan takes and what is said to be in use, each once', () => {
    const mixes = [{ parts: [{ ink: 'oil-relief' }] }];
    const { because } = sheet({
      mixes,
      surfaces: ['iron-press-bed'],
      ...used('veg-oil', 'acetone'),
    }).gloves;
    expect(because.filter((row) => row.startsWith('agent.'))).toEqual([
      'agent.veg-oil',
      'agent.acetone',
    ]);
  });
});

describe('used spirit', () => {
  const codes = (substances: Catalogue['substances']) =>
    makeReasoner({ ...catalogue, substances })
      .sheet({ region: 'us', mixes: [], surfaces: [], ...used('white-spirit') })
      .lines.find((line) => line.text === 'used-spirit')?.values['codes'];

  const flashing = (flashPointC: number | undefined) =>
    codes(
      catalogue.substances.map((row) =>
        row.id === 'white-spirit' ? { ...row, flashPointC } : row,
      ),
    );

  it('lights easily where it flashes low enough, and where nobody knows', () => {
    expect(flashing(59)).toEqual(['D001']);
    expect(flashing(60)).toBeUndefined();
    expect(flashing(undefined)).toEqual(['D001']);
  });
});

describe("a studio's own bottles", () => {
  const bottle = { agent: 'white-spirit', sdsDate: '2026-02-14' };
  const flags = (facts: object, agent = 'white-spirit') =>
    sheet({ bottles: [{ ...bottle, ...facts, agent }] }).flags.map((flag) => flag.kind);

  it('are named, and flagged where they are milder than their kind', () => {
    expect(flags({})).toEqual(['bottle-used']);
    expect(flags({ flashPointC: 95 })).toEqual(['bottle-used', 'bottle-milder']);
    expect(flags({ hazardCodes: ['H350'] })).toEqual(['bottle-used']);
  });

  it('are flagged where they are milder in one way and harsher in another', () => {
    expect(flags({ flashPointC: 95, limitMgM3: 0.1 })).toEqual(['bottle-used', 'bottle-milder']);
    expect(flags({ vapourPressurePa: 1, hazardCodes: ['H350'] })).toContain('bottle-milder');
    expect(flags({ hazardCodes: ['H226', 'H315'] })).toContain('bottle-milder');
  });

  it('are left alone where they are of no agent that is known', () => {
    expect(flags({}, 'grey bottle')).toEqual([]);
  });
});
