import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  airingClock,
  airingSpared,
  airingText,
  downToTwo,
  flowText,
  mostText,
  upToTwo,
} from '../../server/words/airing.js';
import { words } from '../support/rules.js';

const { message } = words;

describe('an airing time', () => {
  it.each([
    [0, '5 minutes'],
    [31, '35 minutes'],
    [35, '35 minutes'],
    [115.1, '2 hours'],
    [121, '2.25 hours'],
    [6 * 60, '6 hours'],
    [6 * 60 + 1, '7 hours'],
    [24 * 60, '24 hours'],
    [24 * 60 + 1, 'more than a day'],
  ])('of %d minutes reads "%s"', (minutes, text) => {
    expect(airingText(minutes, message)).toBe(text);
  });

  it('is never said shorter than it is, nor counted down from less', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1440, noNaN: true }), (minutes) => {
        expect(airingClock(minutes)).toBeGreaterThanOrEqual(minutes);
      }),
    );
    expect(airingClock(1441)).toBe(0);
  });

  it('that is spared is never said longer than it is', () => {
    expect(airingSpared(59.9, message)).toBe('59 minutes');
    expect(airingSpared(179, message)).toBe('2 hours');
    expect(airingSpared(3000, message)).toBe('more than a day');
  });
});

describe('amounts of the air model', () => {
  it('are rounded against the reader: what a room takes down, what it needs up', () => {
    expect(mostText(47.9, 'metric')).toBe('47 ml');
    expect(mostText(479, 'metric')).toBe('470 ml');
    expect(mostText(0.4, 'metric')).toBe('0 ml');
    expect(flowText(471, 'metric', message)).toBe('480 m³ an hour');
    expect(flowText(471, 'us', message)).toBe('480 m³ an hour (280 cfm)');
    expect(flowText(0, 'metric', message)).toBe('0 m³ an hour');
  });

  it('are moved by less than a tenth, or by less than one', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e6, noNaN: true }), (value) => {
        const slack = Math.max(1, value / 10) + 1e-6;
        expect(upToTwo(value)).toBeGreaterThanOrEqual(value - 1e-6);
        expect(upToTwo(value)).toBeLessThanOrEqual(value + slack);
        expect(downToTwo(value)).toBeLessThanOrEqual(value + 1e-6);
        expect(downToTwo(value)).toBeGreaterThanOrEqual(value - slack);
      }),
    );
  });
});
