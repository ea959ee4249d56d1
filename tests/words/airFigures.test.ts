import { describe, expect, it } from 'vitest';
import { words } from '../support/rules.js';

describe('figures of the air in words', () => {
  it('round what is in the air up, and what is allowed down', () => {
    expect([0, 0.2, 381, 12_010].map(words.airLevel)).toEqual([
      '0 mg/m³',
      '1 mg/m³',
      '390 mg/m³',
      '13,000 mg/m³',
    ]);
    expect([54, 593.87, 7126.4, 0.05619].map(words.airLimit)).toEqual([
      '54',
      '593',
      '7,120',
      '0.0561',
    ]);
  });

  it('say a share of the limit in percent up to all of it, then in times', () => {
    const shares = [0, 0.0001, 0.46, 0.461, 1, 1.001, 1.37, 9.91, 13.2, 131];
    expect(shares.map(words.airShare)).toEqual([
      ...['1 %', '1 %', '46 %', '47 %', '100 %'],
      ...['1.1 times', '1.4 times', '10 times', '14 times', '140 times'],
    ]);
  });

  it('round the most that a room takes down, and never to nothing at all', () => {
    expect(words.airMost(35.9, 'uk')).toBe('35 ml');
    expect(words.airMost(0.9, 'uk')).toBe('less than 1 ml');
    expect(words.airMost(undefined, 'uk')).toBe('the air cannot hold enough to pass a limit');
  });

  it('give US units beside the others where people count in them', () => {
    expect([words.airVolume(60, 'us'), words.airVolume(60, 'uk')]).toEqual([
      '60 m³ (2,119 cu ft)',
      '60 m³',
    ]);
    expect(words.airFlow(101, 'us')).toBe('110 m³ an hour (60 cfm)');
  });
});
