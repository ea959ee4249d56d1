import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type BenchInput,
  type LevelReached,
  type MixInput,
  type Room,
} from '../../../server/reasoning/index.js';
import { aMixNamed, aSurface, agentIds, runs } from '../../support/arbitraries.js';
import { catalogue, reasoner } from '../../support/rules.js';

const oil: MixInput = { parts: [{ ink: 'oil-relief' }] };
const SPIRIT_ONLY = {
  mixes: [oil],
  surfaces: ['glass-slab'],
  agentsAtHand: ['low-aromatic-spirit'],
};

const airOf = (bench: BenchInput): LevelReached => {
  const found = reasoner.sheet(bench).levels.find(({ scale }) => scale === 'air');
  if (found === undefined) throw new Error('a sheet always says what air it needs');
  return found;
};

const airIn = (room: Room, more: Partial<BenchInput> = {}): string =>
  airOf({ ...SPIRIT_ONLY, ...more, room }).level;

describe('the air that vapour asks of a room', () => {
  it('is left to the rules where nobody said how large the room is', () => {
    expect(airIn({ air: 'room-air' })).toBe('exhaust-fan');
    expect(reasoner.sheet({ ...SPIRIT_ONLY, room: { air: 'window' } }).air).toBeUndefined();
  });

  it('adds nothing to the rules in a room that is large enough', () => {
    expect(airIn({ volumeM3: 200 })).toBe('exhaust-fan');
    expect(airOf({ ...SPIRIT_ONLY, room: { volumeM3: 200 } }).because).not.toContain(
      'airing.most-share',
    );
  });

  it('rises as the room gets smaller, up to doing it elsewhere, and says why', () => {
    const levels = [200, 20, 4, 1].map((volumeM3) => airIn({ volumeM3 }));
    const order = catalogue.scales.find(({ id }) => id === 'air')?.levels.map(({ id }) => id) ?? [];
    const heights = levels.map((level) => order.indexOf(level));
    expect(heights).toEqual([...heights].sort((a, b) => a - b));
    expect(levels.at(-1)).toBe('not-in-this-room');
    expect(airOf({ ...SPIRIT_ONLY, room: { volumeM3: 1 } }).because).toEqual(['airing.most-share']);
  });

  it('rises with what is said to be in use', () => {
    const uses = [{ agent: 'acetone', ml: 2000 }];
    expect(airIn({ volumeM3: 60 }, { uses })).toBe('not-in-this-room');
    expect(airIn({ volumeM3: 60 }, { uses: [{ agent: 'soap-water', ml: 2000 }] })).toBe(
      'exhaust-fan',
    );
  });

  it('is the same whatever air the room is said to have: that is another question', () => {
    const rooms: readonly Room[] = [{ air: 'room-air' }, { fanM3PerHour: 900 }, {}];
    const levels = rooms.map((room) => airIn({ ...room, volumeM3: 6 }));
    expect(new Set(levels).size).toBe(1);
  });

  it('counts what the studio’s own bottle says', () => {
    const bottles = [{ agent: 'low-aromatic-spirit', sdsDate: '2026-02-14', limitMgM3: 1 }];
    expect(airIn({ volumeM3: 60 }, { bottles })).toBe('not-in-this-room');
  });

  it('comes out the same after many other rooms were asked about', () => {
    const ask = (volumeM3: number): string => airIn({ volumeM3 });
    const first = ask(7);
    for (let volume = 100; volume < 620; volume += 1) ask(volume);
    expect(ask(7)).toBe(first);
  });

  it('never comes down when something more stands on the bench of a small room', () => {
    const order = catalogue.scales.find(({ id }) => id === 'air')?.levels.map(({ id }) => id) ?? [];
    const heightOf = (bench: BenchInput): number => order.indexOf(airOf(bench).level);
    fc.assert(
      fc.property(
        fc.record({
          mix: aMixNamed('night blue'),
          other: aMixNamed('tram green'),
          surfaces: fc.array(aSurface, { minLength: 1, maxLength: 4 }),
          surface: aSurface,
          hand: fc.option(fc.subarray([...agentIds], { minLength: 1 }), { nil: undefined }),
          volumeM3: fc.integer({ min: 2, max: 60 }),
          use: fc.record({
            agent: fc.constantFrom(...agentIds),
            ml: fc.integer({ min: 1, max: 90 }),
          }),
        }),
        ({ mix, other, surfaces, surface, hand, volumeM3, use }) => {
          const bench: BenchInput = {
            mixes: [mix],
            surfaces,
            room: { volumeM3 },
            ...(hand === undefined ? {} : { agentsAtHand: hand }),
          };
          const before = heightOf(bench);
          const stirred = { ...mix, parts: [...mix.parts, ...other.parts] };
          expect(heightOf({ ...bench, mixes: [mix, other] })).toBeGreaterThanOrEqual(before);
          expect(heightOf({ ...bench, mixes: [stirred] })).toBeGreaterThanOrEqual(before);
          expect(heightOf({ ...bench, surfaces: [...surfaces, surface] })).toBeGreaterThanOrEqual(
            before,
          );
          expect(heightOf({ ...bench, uses: [use] })).toBeGreaterThanOrEqual(before);
        },
      ),
      runs(100),
    );
  });
});
