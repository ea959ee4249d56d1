import { describe, expect, it } from 'vitest';
import type { BenchInput, MixInput } from '../../../server/reasoning/index.js';
import { benchOf } from '../../support/everyMix.js';

const bench = (more: Partial<BenchInput>) => benchOf({ mixes: [], surfaces: [], ...more });

const partsOf = (mix: MixInput) => bench({ mixes: [mix] }).mixes[0]?.parts;

describe('the bench made plain', () => {
  it('falls back on somewhere else when no table knows the region, or none is said', () => {
    expect(bench({ region: ' UK ' }).region).toBe('uk');
    expect(bench({ region: 'atlantis' }).region).toBe('other');
    expect(bench({}).region).toBe('other');
  });

  it('sorts ids, names each once and leaves out empty ones', () => {
    const plain = bench({
      surfaces: ['wood-block', ' ', 'Glass slab', 'glass-slab'],
      equipment: ['', 'hotplate'],
      agentsAtHand: ['veg-oil', 'Vegetable oil'],
    });
    expect(plain.surfaces).toEqual(['glass-slab', 'wood-block']);
    expect(plain.equipment).toEqual(['hotplate']);
    expect(plain.agentsAtHand).toEqual(['veg-oil']);
  });

  it('tells nothing said about what is at hand from nothing at hand', () => {
    expect(bench({})).not.toHaveProperty('agentsAtHand');
    expect(bench({ agentsAtHand: [] }).agentsAtHand).toEqual([]);
  });

  it('leaves out a mix with nothing in it and numbers the rest', () => {
    const mixes = [{ parts: [{ ink: ' ' }] }, { parts: [{ ink: 'plastisol' }] }, { parts: [] }];
    expect(bench({ mixes }).mixes.map((mix) => mix.id)).toEqual(['mix-1']);
  });

  it('keeps a mix of additives alone, as nobody has said which ink it is', () => {
    const mixes = [{ parts: [], additives: [{ additive: 'talc' }, { additive: '' }] }];
    expect(bench({ mixes }).mixes[0]).toEqual({
      id: 'mix-1',
      parts: [],
      additives: [{ additive: 'talc' }],
      dried: false,
    });
  });

  it('tidies the name of a mix and leaves out an empty one', () => {
    const parts = [{ ink: 'plastisol' }];
    expect(bench({ mixes: [{ name: '  tram   green ', parts }] }).mixes[0]?.name).toBe(
      'tram green',
    );
    expect(bench({ mixes: [{ name: '  ', parts }] }).mixes[0]).not.toHaveProperty('name');
  });

  it('takes a mix that is said to be on no surface for one that is on all', () => {
    const parts = [{ ink: 'plastisol' }];
    expect(bench({ mixes: [{ parts, on: [' '] }] }).mixes[0]).not.toHaveProperty('on');
    expect(bench({ mixes: [{ parts, on: ['Glass slab'] }] }).mixes[0]?.on).toEqual(['glass-slab']);
  });

  it('lets the larger figure stand when a thing is named twice', () => {
    const mix = {
      parts: [
        { ink: 'oil-relief', share: 20 },
        { ink: 'oil-relief', share: 50 },
        { ink: 'plastisol', share: 10 },
        { ink: 'plastisol' },
      ],
      additives: [{ additive: 'talc' }, { additive: 'talc', percent: 2 }],
    };
    expect(partsOf(mix)).toEqual([
      { ink: 'oil-relief', share: 50 },
      { ink: 'plastisol', share: 10 },
    ]);
    expect(bench({ mixes: [mix] }).mixes[0]?.additives).toEqual([{ additive: 'talc', percent: 2 }]);
  });

  it('gives what is left to one ink without a share', () => {
    const rest = [{ ink: 'oil-relief' }, { ink: 'plastisol', share: 12.34 }];
    expect(partsOf({ parts: rest })).toEqual([
      { ink: 'oil-relief', share: 87.7 },
      { ink: 'plastisol', share: 12.3 },
    ]);
    expect(partsOf({ parts: [{ ink: 'oil-relief' }] })).toEqual([
      { ink: 'oil-relief', share: 100 },
    ]);
  });

  it('gives no figure where it would be a guess', () => {
    const two = [{ ink: 'oil-relief' }, { ink: 'plastisol' }];
    expect(partsOf({ parts: two })).toEqual(two);
    const over = [{ ink: 'oil-relief' }, { ink: 'plastisol', share: 120 }];
    expect(partsOf({ parts: over })).toEqual([...over].reverse());
    const extender = [{ ink: 'oil-relief', share: 2 }, { ink: 'transparent-base' }];
    expect(partsOf({ parts: extender })).toEqual(extender);
  });

  it('keeps the share of an extender and lets the inks give way to it', () => {
    const parts = [
      { ink: 'oil-relief', share: 75 },
      { ink: 'oil-etching', share: 25 },
    ];
    const additives = [{ additive: 'transparent-base', percent: 60 }];
    expect(partsOf({ parts, additives })).toEqual([
      { ink: 'transparent-base', share: 60 },
      { ink: 'oil-relief', share: 30 },
      { ink: 'oil-etching', share: 10 },
    ]);
    const two = [...parts, { ink: 'transparent-base-ww', share: 90 }];
    expect(partsOf({ parts: two, additives })).toEqual([
      { ink: 'transparent-base-ww', share: 90 },
      { ink: 'transparent-base', share: 60 },
      { ink: 'oil-etching', share: 0 },
      { ink: 'oil-relief', share: 0 },
    ]);
  });

  it('leaves shares that fit beside an extender as they were said', () => {
    const parts = [{ ink: 'oil-relief', share: 70 }];
    const additives = [{ additive: 'transparent-base', percent: 30 }];
    expect(partsOf({ parts, additives })).toEqual([
      { ink: 'oil-relief', share: 70 },
      { ink: 'transparent-base', share: 30 },
    ]);
  });

  it('stays as it is when made plain again', () => {
    const once = bench({
      region: 'us',
      mixes: [
        {
          name: 'thirds',
          parts: [
            { ink: 'oil-relief', share: 33.35 },
            { ink: 'oil-etching', share: 33.35 },
            { ink: 'plastisol', share: 33.35 },
          ],
          additives: [
            { additive: 'transparent-base', percent: 10.05 },
            { additive: 'cobalt-drier', percent: 2 },
          ],
          on: ['Glass slab'],
        },
      ],
      surfaces: ['glass-slab'],
      uses: [{ agent: 'veg-oil', ml: 5 }],
      bottles: [{ agent: 'acetone', sdsDate: '2026-01-01', hazardCodes: ['H336', 'H225'] }],
      room: { temperatureC: 20, air: 'window' },
      people: { count: 2, flags: ['asthma'] },
    });
    expect(benchOf(once)).toEqual(once);
  });

  it('names each use once and sorts them, first by agent and then by how much', () => {
    const uses = [
      { agent: 'White spirit', ml: 40 },
      { agent: 'acetone', ml: 5 },
      { agent: 'white-spirit', ml: 9 },
      { agent: 'white-spirit', ml: 40 },
    ];
    expect(bench({ uses }).uses).toEqual([
      { agent: 'acetone', ml: 5 },
      { agent: 'white-spirit', ml: 9 },
      { agent: 'white-spirit', ml: 40 },
    ]);
  });

  it('knows a bottle by the name of its agent and keeps no empty facts', () => {
    const bottles = [
      { agent: 'White spirit', sdsDate: '2026-01-01', flashPointC: undefined },
      { sdsDate: '2026-01-01', agent: 'white-spirit' },
    ];
    expect(bench({ bottles }).bottles).toEqual([{ agent: 'white-spirit', sdsDate: '2026-01-01' }]);
  });

  it('keeps what is said of the room and the people, and no more', () => {
    const plain = bench({
      room: { air: 'window', volumeM3: undefined, temperatureC: 20 },
      people: { count: 3, flags: [' Asthma ', 'asthma', 'alone'] },
    });
    expect(plain.room).toEqual({ air: 'window', temperatureC: 20 });
    expect(plain.people).toEqual({ count: 3, under16: false, flags: ['alone', 'asthma'] });
    expect(bench({}).people).toEqual({ under16: false, flags: [] });
    expect(bench({})).not.toHaveProperty('room');
    expect(bench({ people: { under16: true } }).people.under16).toBe(true);
  });
});
