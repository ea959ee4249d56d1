import { describe, expect, it } from 'vitest';
import { limitsToDraw } from '../../../server/output/plot/limitsToDraw.js';

const series = [{ min: 0, nearMgM3: 100, farMgM3: 40 }];
const limits = (...levels: readonly number[]) =>
  levels.map((mgM3) => ({ mgM3, label: String(mgM3) }));
const split = (...levels: readonly number[]) => {
  const { drawn, offTop } = limitsToDraw({ series, limits: limits(...levels) });
  return [drawn.map(({ mgM3 }) => mgM3), offTop.map(({ mgM3 }) => mgM3)];
};

describe('the limits that are drawn', () => {
  it('are those up to three times the highest point, lowest first', () => {
    expect(split(301, 300, 50)).toEqual([[50, 300], [301]]);
  });

  it('stand apart: of two that are close, the lower one', () => {
    expect(split(50, 56, 58)).toEqual([[50, 58], [56]]);
  });

  it('are four at most', () => {
    expect(split(10, 20, 30, 40, 50)).toEqual([[10, 20, 30, 40], [50]]);
  });
});
