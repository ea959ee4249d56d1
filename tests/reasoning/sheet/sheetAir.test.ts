import { describe, expect, it } from 'vitest';
import type { BenchInput, Room } from '../../../server/reasoning/index.js';
import { reasoner, words } from '../../support/rules.js';

const bench = (room: Room, more: Partial<BenchInput> = {}): BenchInput => ({
  region: 'uk',
  mixes: [{ parts: [{ ink: 'oil-relief' }] }],
  surfaces: ['glass-slab', 'steel-tools'],
  agentsAtHand: ['white-spirit'],
  room,
  ...more,
});

const sheet = (room: Room, more: Partial<BenchInput> = {}) => reasoner.sheet(bench(room, more));

const linesOf = (room: Room, more: Partial<BenchInput> = {}): readonly string[] =>
  sheet(room, more)
    .lines.filter((line) => line.text.startsWith('air-'))
    .map((line) => {
      const { head, rest } = words.line(line, 'uk');
      return `${head} ${rest}`;
    });

describe('vapour on the sheet', () => {
  it('counts what the routes take at most, without being told again', () => {
    const { air, amounts } = sheet({ volumeM3: 60, air: 'exhaust-fan' });
    expect(amounts.ml.map(({ agent }) => agent)).toEqual(['white-spirit']);
    expect(air?.mostMl).toHaveLength(1);
    expect(air?.mostMl[0]?.saidMl).toBe(amounts.ml[0]?.range.high);
    expect(air).toEqual(
      reasoner.air({
        region: 'uk',
        room: { volumeM3: 60, air: 'exhaust-fan' },
        uses: [{ agent: 'white-spirit', ml: amounts.ml[0]?.range.high ?? 0 }],
      }),
    );
  });

  it('takes what was said to be in use where it is more, and the estimate where it is less', () => {
    const room = { volumeM3: 60, air: 'exhaust-fan' };
    const saidMl = (ml: number) =>
      sheet(room, { uses: [{ agent: 'white-spirit', ml }] }).air?.mostMl[0]?.saidMl;
    expect(saidMl(500)).toBe(500);
    expect(saidMl(1)).toBe(sheet(room).air?.mostMl[0]?.saidMl);
  });

  it('adds up what is in use that no route takes, unknown things too', () => {
    const uses = [
      { agent: 'acetone', ml: 20 },
      { agent: 'grey bottle', ml: 5 },
      { agent: 'veg-oil', ml: 30 },
    ];
    const { air } = sheet({ lengthM: 5, widthM: 4, heightM: 3 }, { uses });
    expect(air?.mostMl.map(({ saidMl }) => saidMl)).toContain(20);
    expect(air?.mostMl).toHaveLength(3);
    expect(air?.cautions.map(({ id }) => id)).toContain('unknown');
  });

  it('is left out where nothing on the bench gives off any', () => {
    expect(
      sheet({ volumeM3: 60 }, { agentsAtHand: ['veg-oil', 'soap-water'] }).air,
    ).toBeUndefined();
  });

  it('says how long to air and how much the room takes', () => {
    const lines = linesOf({ volumeM3: 60, air: 'exhaust-fan' });
    expect(lines).toContainEqual(
      expect.stringMatching(/^Air the room after the last wipe: \d+ minutes\./),
    );
    expect(lines).toContainEqual(expect.stringMatching(/^At most \d+ ml of white spirit/));
    expect(lines.join()).not.toContain('Too much vapour');
  });

  it('says what air it needs when the room has too little', () => {
    expect(linesOf({ volumeM3: 3, fanM3PerHour: 10 })).toContainEqual(
      expect.stringMatching(/^Too much vapour for this room as it is\..* \d+ m³ an hour/),
    );
  });

  it('says so when no fan is enough', () => {
    const uses = [{ agent: 'acetone', ml: 20_000 }];
    expect(linesOf({ volumeM3: 60, air: 'exhaust-fan' }, { uses })).toContainEqual(
      expect.stringContaining('Too much vapour at the bench for any fan.'),
    );
  });

  it('says none where less than a millilitre is too much, and names no amount of what nobody knows', () => {
    const uses = [
      { agent: 'acetone', ml: 20_000 },
      { agent: 'grey bottle', ml: 5 },
    ];
    const lines = linesOf({ volumeM3: 60, air: 'exhaust-fan' }, { uses });
    expect(lines).toContainEqual(expect.stringMatching(/^No white spirit in this room as it is\./));
    expect(lines.filter((line) => /grey bottle/.test(line))).toEqual([]);
  });

  it('says so when the room does not clear', () => {
    expect(linesOf({ volumeM3: 60, fanM3PerHour: 0 })).toContainEqual(
      expect.stringContaining('This room does not clear at this airing.'),
    );
  });

  it('gives every one of its lines a reason with a page', () => {
    for (const room of [{ volumeM3: 12, fanM3PerHour: 10 }, { volumeM3: 4 }, { volumeM3: 90 }]) {
      for (const line of sheet(room).lines) {
        for (const id of line.because) expect(words.row(id), id).toBeDefined();
      }
    }
  });

  it('shows what a swap would spare: millilitres, and minutes of airing', () => {
    const screen = (room: Room) =>
      reasoner.sheet({
        mixes: [{ parts: [{ ink: 'screen-solvent' }] }],
        surfaces: ['glass-slab'],
        room,
      });
    const { air, swaps, amounts } = screen({ volumeM3: 60, air: 'exhaust-fan' });
    const [swap] = swaps;
    expect(swap?.for).toBe('ink.screen-acrylic');
    expect(swap?.sparesMl).toEqual([
      {
        agent: 'glycol-ether',
        ml: amounts.ml.find(({ agent }) => agent === 'glycol-ether')?.range.high,
      },
    ]);
    // Nothing is left that gives off vapour: all of the airing is spared.
    expect(swap?.sparesAirOutMin).toBe(air?.airOutMin);
    expect(swap === undefined ? '' : words.swap(swap)).toMatch(/aired \d+ minutes sooner\.$/);
    expect(screen({}).swaps[0]?.sparesAirOutMin).toBeUndefined();
    expect(screen({ volumeM3: 60, fanM3PerHour: 0 }).swaps[0]?.sparesAirOutMin).toBeUndefined();
  });
});
