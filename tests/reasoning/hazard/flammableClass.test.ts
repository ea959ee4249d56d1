import { describe, expect, it } from 'vitest';
import { flammableClass } from '../../../server/reasoning/index.js';

const ghs = (flashPointC: number, boilingPointC?: number) =>
  flammableClass({ flashPointC, boilingPointC }).ghs;
const nfpa = (flashPointC: number, boilingPointC?: number) =>
  flammableClass({ flashPointC, boilingPointC }).nfpa.class;
const celsius = (fahrenheit: number) => ((fahrenheit - 32) * 5) / 9;

describe('class of a liquid that burns', () => {
  it.each([
    [22.9, 35, 1, 'H224'],
    [22.9, 35.1, 2, 'H225'],
    [22.9, undefined, 1, 'H224'],
    [23, 20, 3, 'H226'],
    [60, 200, 3, 'H226'],
    [60.1, 200, 4, 'H227'],
    [93, 200, 4, 'H227'],
    [93.1, 200, null, null],
  ])(
    'puts a flash at %s C, boiling at %s C, into GHS category %s',
    (flash, boils, category, code) => {
      expect(ghs(flash, boils)).toEqual({ category, code });
    },
  );

  it('has no fourth category in Europe', () => {
    expect(flammableClass({ flashPointC: 60 }).clp).toEqual({ category: 3, code: 'H226' });
    expect(flammableClass({ flashPointC: 60.1 }).clp).toEqual({ category: null, code: null });
    expect(flammableClass({ flashPointC: 93.1 }).clp).toEqual({ category: null, code: null });
  });

  it.each([
    [72.9, 99.9, 'IA'],
    [72.9, 100, 'IB'],
    [72.9, undefined, 'IA'],
    [73, 99.9, 'IC'],
    [99.9, 300, 'IC'],
    [100, 300, 'II'],
    [139.9, 300, 'II'],
    [140, 300, 'IIIA'],
    [199.9, 300, 'IIIA'],
    [200, 300, 'IIIB'],
  ])('puts a flash at %s F, boiling at %s F, into NFPA class %s', (flash, boils, wanted) => {
    expect(nfpa(celsius(flash), boils === undefined ? undefined : celsius(boils))).toBe(wanted);
  });

  it('takes 60 C for 140 F', () => {
    expect(nfpa(60)).toBe('IIIA');
    expect(nfpa(59.9)).toBe('II');
  });
});
