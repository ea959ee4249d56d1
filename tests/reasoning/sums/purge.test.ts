import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  effectiveChanges,
  flowFromHalfLife,
  levelAt,
  meanLevel,
  minutesToRemove,
  mixingFactorOf,
  shareLeft,
  steadyLevel,
  timeTo,
} from '../../../server/reasoning/index.js';

/** None, or no less than any room has. */
const rate = fc.oneof(fc.constant(0), fc.double({ min: 1e-6, max: 20, noNaN: true }));
const airing = fc.record({ start: rate, changes: rate, rise: rate });
const time = fc.double({ min: 0.001, max: 24, noNaN: true });

describe('a level', () => {
  it('follows the balance of the room, step by step', () => {
    fc.assert(
      fc.property(airing, time, (room, until) => {
        const steps = 20_000;
        let level = room.start;
        const step = until / steps;
        for (let at = 0; at < steps; at += 1) {
          const slope = (value: number) => room.rise - room.changes * value;
          level += step * slope(level + (step / 2) * slope(level));
        }
        expect(levelAt(room, until)).toBeCloseTo(level, 3);
      }),
      { numRuns: 20 },
    );
  });

  it('has a mean between its lowest and its highest', () => {
    fc.assert(
      fc.property(airing, time, (room, until) => {
        const ends = [room.start, levelAt(room, until)];
        expect(meanLevel(room, until)).toBeGreaterThanOrEqual(Math.min(...ends) - 1e-9);
        expect(meanLevel(room, until)).toBeLessThanOrEqual(Math.max(...ends) + 1e-9);
      }),
    );
  });

  it('is never raised by more air', () => {
    fc.assert(
      fc.property(airing, rate, time, (room, more, until) => {
        const aired = { ...room, changes: room.changes + more };
        expect(levelAt(aired, until)).toBeLessThanOrEqual(levelAt(room, until) + 1e-9);
      }),
    );
  });
});

describe('the time to a level', () => {
  it('is when the level is there', () => {
    fc.assert(
      fc.property(airing, time, (room, until) => {
        const found = timeTo(levelAt(room, until), room);
        if (found !== undefined) {
          expect(levelAt(room, found)).toBeCloseTo(levelAt(room, until), 6);
        }
      }),
    );
    const filling = { start: 0, changes: 1.2, rise: 720 };
    expect(timeTo(levelAt(filling, 0.5), filling)).toBeCloseTo(0.5, 9);
  });

  it('is none where it is there already', () => {
    expect(timeTo(5, { start: 5, changes: 0, rise: 0 })).toBe(0);
  });

  it.each([
    ['above where it settles', 700, { start: 0, changes: 1.2, rise: 720 }],
    ['where it settles', 600, { start: 0, changes: 1.2, rise: 720 }],
    ['away from where it goes', 200, { start: 100, changes: 1, rise: 0 }],
    ['at nothing, while air thins it for ever', 0, { start: 100, changes: 1, rise: 0 }],
    ['for a room that has settled', 700, { start: 600, changes: 1.2, rise: 720 }],
    ['lower, in a room with no air', 50, { start: 100, changes: 0, rise: 0 }],
    ['lower, in a room with no air and a source', 50, { start: 100, changes: 0, rise: 5 }],
  ])('is never for a level %s', (_name, level, room) => {
    expect(timeTo(level, room)).toBeUndefined();
  });

  it('runs in a straight line where no air moves', () => {
    expect(timeTo(150, { start: 100, changes: 0, rise: 5 })).toBe(10);
    expect(levelAt({ start: 100, changes: 0, rise: 5 }, 10)).toBe(150);
    expect(meanLevel({ start: 100, changes: 0, rise: 5 }, 10)).toBe(125);
  });
});

describe('a room', () => {
  it('settles where air takes away as much as comes in, at nothing without a source', () => {
    expect(steadyLevel({ changes: 2, rise: 10 })).toBe(5);
    expect(steadyLevel({ changes: 0, rise: 0 })).toBe(0);
    expect(steadyLevel({ changes: 0, rise: 10 })).toBeUndefined();
  });

  it('counts with less air when it mixes badly, and with none it cannot say', () => {
    const air = { flow: 120, volume: 60, mixingFactor: 1 };
    expect(effectiveChanges(air)).toBe(2);
    expect(effectiveChanges({ ...air, mixingFactor: 4 })).toBe(0.5);
    expect(effectiveChanges({ ...air, volume: 0 })).toBeUndefined();
    expect(mixingFactorOf(0.2)).toBe(5);
    expect(mixingFactorOf(0)).toBeUndefined();
    expect(flowFromHalfLife(20, 0)).toBeUndefined();
  });

  it('clears sooner with more air, later with worse mixing, and never with none', () => {
    const minutes = (changesPerHour: number, mixingFactor: number, share = 0.99) =>
      minutesToRemove(share, { changesPerHour, mixingFactor }) ?? Infinity;
    expect(minutes(6, 1)).toBeLessThan(minutes(3, 1));
    expect(minutes(6, 3)).toBeCloseTo(3 * minutes(6, 1), 9);
    expect(minutes(0, 1)).toBe(Infinity);
    expect(minutes(6, 1, 1)).toBe(Infinity);
    expect(shareLeft(minutes(6, 1) / 10)).toBeCloseTo(0.01, 9);
  });
});
