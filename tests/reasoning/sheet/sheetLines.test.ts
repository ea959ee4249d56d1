import { describe, expect, it } from 'vitest';
import type { BenchInput, Sheet, SheetLine } from '../../../server/reasoning/index.js';
import { PHASES } from '../../../server/reasoning/index.js';
import { reasoner } from '../../support/rules.js';

const sheet = (more: Partial<BenchInput>): Sheet =>
  reasoner.sheet({ mixes: [], surfaces: [], ...more });

const line = (text: string, more: Partial<BenchInput>): SheetLine | undefined =>
  sheet(more).lines.find((each) => each.text === text);

const ids = (text: string, more: Partial<BenchInput>): readonly string[] =>
  sheet(more)
    .lines.filter((each) => each.text === text)
    .map((each) => each.id);

const oil: Partial<BenchInput> = {
  mixes: [{ parts: [{ ink: 'oil-relief' }] }],
  surfaces: ['glass-slab'],
};
const mixedWith = (percent: number): Partial<BenchInput> => ({
  mixes: [{ parts: [{ ink: 'oil-relief' }], additives: [{ additive: 'cobalt-drier', percent }] }],
});
const used = (...agents: readonly string[]): Partial<BenchInput> => ({
  uses: agents.map((agent) => ({ agent, ml: 10 })),
});

describe('lines of a sheet', () => {
  it('stand by phase, then by rank', () => {
    const places = sheet({ ...oil, ...used('acetone') }).lines.map(
      ({ phase, rank }) => PHASES.indexOf(phase) * 10_000 + rank,
    );
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });

  it('have an id of their own each', () => {
    const found = sheet({
      mixes: [{ parts: [{ ink: 'oil-relief' }, { ink: 'x' }] }, { parts: [{ ink: 'plastisol' }] }],
      surfaces: ['glass-slab', 'x', 'lino-block'],
      equipment: ['x', 'y'],
      ...used('x', 'acetone'),
    }).lines.map((each) => each.id);
    expect(found).toEqual([...new Set(found)]);
  });

  it('say what is missing: no ink, no tool', () => {
    expect(line('no-mixes', {})).toBeDefined();
    expect(line('no-surfaces', {})).toBeDefined();
    expect(line('no-mixes', oil)).toBeUndefined();
    expect(line('no-surfaces', oil)).toBeUndefined();
    const on = { mixes: [{ parts: [{ ink: 'oil-relief' }], on: ['glass-slab'] }] };
    expect(line('no-surfaces', on)).toBeUndefined();
  });

  it('say that no agent is needed where nothing is washed, and only there', () => {
    expect(line('no-agent', { ...oil, surfaces: ['press-felt', 'tarlatan'] })).toBeDefined();
    expect(line('no-agent', oil)).toBeUndefined();
    expect(line('no-agent', { ...oil, surfaces: ['mangle'] })).toBeUndefined();
    expect(line('no-agent', {})).toBeUndefined();
  });

  it('name whatever nobody knows, each with its own line and the rule for its kind', () => {
    const bench = { equipment: ['x', 'y'], agentsAtHand: ['z'] };
    expect(ids('unknown-other', bench)).toEqual(['unknown-other.x', 'unknown-other.y']);
    expect(ids('unknown-thing', bench)).toEqual(['unknown-thing.z']);
    expect(line('unknown-other', { equipment: ['x'] })?.because).toEqual(['unknown-equipment']);
    expect(line('unknown-thing', { agentsAtHand: ['z'] })?.because).toEqual(['every-bench']);
    expect(ids('unknown-machine', bench)).toEqual(['unknown-machine.x', 'unknown-machine.y']);
    expect(ids('ask-first', { people: { flags: ['vertigo'] } })).toEqual(['ask-first.vertigo']);
  });

  it('check a dose above the usual, and stop for one above all figures', () => {
    expect(ids('dose-check', mixedWith(3))).toEqual(['dose-check.additive.cobalt-drier']);
    expect(ids('dose-stop', mixedWith(3))).toEqual([]);
    expect(ids('dose-stop', mixedWith(4))).toEqual(['dose-stop.additive.cobalt-drier']);
    expect(line('dose-stop', mixedWith(4))?.values).toMatchObject({ percent: 4, highest: 3.5 });
    expect(ids('dose-check', mixedWith(2.5))).toEqual([]);
  });

  it('say when the room has less air than it takes, and only then', () => {
    const air = (have: string) => line('air-short', { ...used('acetone'), room: { air: have } });
    expect(air('window')?.values).toEqual({ have: 'window', level: 'bench-extraction' });
    expect(air('a cowl')?.values).toMatchObject({ have: 'room-air' });
    expect(air('bench-extraction')).toBeUndefined();
    expect(line('air-short', used('acetone'))).toBeUndefined();
    expect(line('air-short', { ...used('acetone'), room: { volumeM3: 60 } })).toBeUndefined();
  });

  it('name the glove, and none where none holds or the data sheet must say', () => {
    expect(line('gloves-splash', {})?.values).toEqual({ materials: ['nitrile'] });
    expect(line('gloves-wash-up', used('acetone'))?.values).toEqual({ materials: ['butyl'] });
    const both = used('acetone', 'white-spirit', 'veg-ester');
    expect(line('gloves-none-hold', both)?.values).toEqual({ materials: [] });
    expect(line('gloves-none-hold', used('acetone'))).toBeUndefined();
    const unknown = used('grey bottle');
    expect(line('gloves-by-sds', unknown)?.values).toEqual({ materials: [] });
    expect(line('gloves-none-hold', unknown)).toBeUndefined();
  });

  it('name a glove for each agent alone where no one glove holds against all', () => {
    const both = used('acetone', 'white-spirit', 'veg-ester');
    const found = sheet(both).lines.filter((each) => each.text === 'glove-for-agent');
    expect(found.map((each) => each.id)).toEqual([
      'glove-for-agent.veg-ester',
      'glove-for-agent.white-spirit',
      'glove-for-agent.acetone',
    ]);
    expect(found.at(-1)?.values).toMatchObject({ materials: ['butyl'] });
    expect(line('glove-for-agent', used('acetone'))).toBeUndefined();
    expect(line('glove-for-agent', used('acetone', 'grey bottle'))).toBeUndefined();
  });

  it('warn of what is said to be in use and harms what is on the bench', () => {
    const harmed = { surfaces: ['acrylic-sheet', 'glass-slab', 'mangle'], ...used('acetone') };
    expect(line('use-harms', harmed)?.values).toMatchObject({ surfaces: ['acrylic-sheet'] });
    expect(line('use-harms', { surfaces: ['glass-slab'], ...used('acetone') })).toBeUndefined();
    expect(line('use-harms', { surfaces: ['acrylic-sheet'] })).toBeUndefined();
  });

  it('point at a tool that no mix is on', () => {
    const on = ['glass-slab'];
    const mixes = [{ parts: [{ ink: 'oil-relief' }], on }];
    const surfaces = ['glass-slab', 'lino-block'];
    expect(line('not-covered', { mixes, surfaces })?.values).toEqual({ surfaces: ['lino-block'] });
    const everywhere = [...mixes, { parts: [{ ink: 'plastisol' }] }];
    expect(line('not-covered', { mixes: everywhere, surfaces })).toBeUndefined();
    expect(line('not-covered', { surfaces })).toBeUndefined();
  });

  it('say how many rags to have ready, where there is something to wipe', () => {
    expect(line('rags-ready', oil)?.values).toEqual({ rags: { low: 1, high: 2 } });
    expect(line('rags-ready', {})).toBeUndefined();
  });

  it('say when to change gloves: when torn, after so many minutes, or at once', () => {
    expect(line('gloves-change-torn', {})?.because).toEqual(['every-bench']);
    expect(line('gloves-change-torn', oil)?.because).toContain('agent.veg-oil');
    const timed = line('gloves-change-after', used('ethanol'));
    expect(timed?.values['minutes']).toBe(sheet(used('ethanol')).gloves.changeAfterMin);
    const untimed = sheet(used('alkaline-wash')).gloves;
    expect(untimed.changeAfterMin).toBeUndefined();
  });

  it('tell how each agent is put on, once, and how on dried ink', () => {
    const bench = { ...oil, surfaces: ['glass-slab', 'lino-block'] };
    expect(ids('agent-how', bench)).toEqual(['agent-how.veg-oil', 'agent-how.soap-water']);
    expect(line('agent-how', bench)?.values['dried']).toEqual([]);
    const dried = { ...bench, mixes: [{ parts: [{ ink: 'oil-relief' }], dried: true }] };
    expect(line('agent-how', dried)?.values['dried']).toEqual(['dried']);
  });

  it('give one line to a tool whose mixes all go one way, one for each way where they differ', () => {
    const etching = { parts: [{ ink: 'oil-etching' }] };
    const washable = { parts: [{ ink: 'water-washable-oil' }] };
    const relief = { parts: [{ ink: 'oil-relief' }] };
    const alike = { mixes: [etching, relief], surfaces: ['glass-slab'] };
    expect(ids('tool', alike)).toEqual(['tool.glass-slab.mix-1.mix-2']);
    expect(line('tool', alike)?.because).toEqual(
      expect.arrayContaining(['ink.oil-etching', 'ink.oil-relief', 'pair.glass-slab.veg-oil']),
    );
    const apart = { mixes: [relief, washable], surfaces: ['glass-slab'] };
    expect(ids('tool', apart)).toEqual([]);
    expect(ids('tool-for', apart)).toEqual([
      'tool-for.glass-slab.mix-1',
      'tool-for.glass-slab.mix-2',
    ]);
    expect(line('tool-for', apart)?.values['inks']).toEqual(['oil-relief']);
  });

  it.each([
    ['tool-stuck-unknown-ink', { ...oil, mixes: [{ parts: [{ ink: 'my tin' }] }] }],
    ['tool-stuck-unknown-surface', { ...oil, surfaces: ['mangle'] }],
    [
      'tool-stuck-parts',
      { ...oil, mixes: [{ parts: [{ ink: 'plastisol' }, { ink: 'gum-arabic' }] }] },
    ],
    ['tool-stuck-harm', { mixes: [{ parts: [{ ink: 'gum-arabic' }] }], surfaces: ['litho-stone'] }],
    ['tool-stuck-hand', { ...oil, agentsAtHand: [] }],
  ] satisfies readonly (readonly [string, Partial<BenchInput>])[])(
    'stop with %s where there is no way',
    (text, bench) => {
      expect(line(text, bench)?.route?.passes).toEqual([]);
    },
  );

  it('name what would do where it is not at hand', () => {
    expect(line('tool-stuck-hand', { ...oil, agentsAtHand: [] })?.values['agents']).toEqual([
      'veg-oil',
      'soap-water',
    ]);
    expect(
      line('tool-stuck-unknown-surface', { ...oil, surfaces: ['mangle'] })?.values,
    ).not.toHaveProperty('agents');
  });

  it("name the figures of a studio's own bottle, and mark a milder one", () => {
    const bottle = { agent: 'acetone', sdsDate: '2026-02-14' };
    const own = { bottles: [bottle] };
    expect(line('bottle-used', own)).toMatchObject({
      id: 'bottle-used.agent.acetone',
      values: { what: 'agent.acetone', date: '2026-02-14' },
      because: ['agent.acetone'],
    });
    expect(line('bottle-milder', own)).toBeUndefined();
    const mild = { bottles: [{ ...bottle, flashPointC: 60 }] };
    expect(line('bottle-milder', mild)?.id).toBe('bottle-milder.agent.acetone');
    expect(
      line('bottle-milder', { bottles: [{ ...bottle, agent: 'grey bottle' }] }),
    ).toBeUndefined();
  });

  it('give the waste codes of the region for what is on the bench', () => {
    const codes = (text: string, region: string, more: Partial<BenchInput>) =>
      line(text, { ...more, region })?.values['codes'];
    expect(codes('used-spirit', 'us', used('acetone'))).toEqual(['D001', 'F003']);
    expect(codes('used-spirit', 'us', used('white-spirit'))).toEqual(['D001']);
    const thick = {
      ...used('white-spirit'),
      bottles: [{ agent: 'white-spirit', sdsDate: '2026-02-14', flashPointC: 60 }],
    };
    expect(codes('used-spirit', 'us', thick)).toBeUndefined();
    expect(line('used-spirit-ask', { ...thick, region: 'us' })).toBeDefined();
    expect(codes('waste-codes', 'us', oil)).toEqual(['D001']);
    expect(codes('waste-codes', 'uk', oil)).toEqual(['15 02 02*']);
    expect(line('waste-codes', { region: 'us' })).toBeUndefined();
    expect(line('used-spirit', oil)).toBeUndefined();
  });

  it('give the wipes rule only where there is one and where there are spirit rags', () => {
    expect(line('wipes-rule', { ...used('acetone'), region: 'us' })?.values).toMatchObject({
      days: 180,
    });
    expect(line('wipes-rule', { ...used('acetone'), region: 'uk' })).toBeUndefined();
    expect(line('wipes-rule', { ...oil, region: 'us' })).toBeUndefined();
  });

  it('join the reasons of a line that several rules print', () => {
    const washed = { ...oil, ...used('limonene') };
    expect(line('can-ready', washed)?.because).toEqual([
      'drying-oil-rags-heat',
      'oil-agent-rags-heat',
    ]);
    expect(line('rags-sort', washed)?.folded).toContain('every-bench');
  });
});
