import { describe, expect, it } from 'vitest';
import {
  type Region,
  generatorCategory,
  isIgnitableWaste,
  wipesFaults,
} from '../../../server/reasoning/index.js';
import { catalogue } from '../../support/rules.js';

const region = (id: string): Region => {
  const found = catalogue.regions.find((row) => row.id === id);
  if (found === undefined) throw new Error(`no region ${id}`);
  return found;
};
const us = region('us');
const other = region('other');

describe('waste that lights easily', () => {
  it('is a liquid that flashes below 60 C in the US, and not at 60 C', () => {
    expect(isIgnitableWaste(us, { flashPointC: 59.9 })).toBe(true);
    expect(isIgnitableWaste(us, { flashPointC: 60 })).toBe(false);
  });

  it('is what heats itself, what nobody has measured, and all where no line is drawn', () => {
    expect(isIgnitableWaste(us, { flashPointC: 90, selfHeating: true })).toBe(true);
    expect(isIgnitableWaste(us, { flashPointC: 90, selfHeating: false })).toBe(false);
    expect(isIgnitableWaste(us, {})).toBe(true);
    expect(isIgnitableWaste(other, { flashPointC: 90 })).toBe(true);
  });

  it('is not water with less than 24 % of alcohol, in the US', () => {
    expect(isIgnitableWaste(us, { flashPointC: 30, alcoholInWaterPercent: 23.9 })).toBe(false);
    expect(isIgnitableWaste(us, { flashPointC: 30, alcoholInWaterPercent: 24 })).toBe(true);
    const noSuchRule = { ...us, notIgnitableUnderAlcoholPercent: undefined };
    expect(isIgnitableWaste(noSuchRule, { flashPointC: 30, alcoholInWaterPercent: 5 })).toBe(true);
  });
});

describe('category of a studio by its waste', () => {
  it.each([
    [0, 0, 'very-small'],
    [100, 1, 'very-small'],
    [100.1, 0, 'small'],
    [999.9, 1, 'small'],
    [1000, 0, 'large'],
    [1, 1.1, 'large'],
  ])('with %s kg and %s kg acute is %s in the US', (kg, acuteKg, category) => {
    expect(generatorCategory(us, { kg, acuteKg })).toBe(category);
  });

  it('is nothing where there are no such categories', () => {
    expect(generatorCategory(other, { kg: 5000, acuteKg: 5 })).toBeUndefined();
  });
});

describe('a can of solvent wipes', () => {
  const can = {
    days: 180,
    label: us.wipes?.label ?? '',
    closed: true,
    freeLiquid: false,
    solvent: 'white-spirit',
    thrownAway: true,
  };

  it('is inside the rule on its last day, closed, labelled and without free liquid', () => {
    expect(wipesFaults(us, can)).toEqual([]);
  });

  it('is outside it for each thing that is wrong, and for all of them together', () => {
    expect(wipesFaults(us, { ...can, days: 181 })).toEqual(['too-old']);
    expect(wipesFaults(us, { ...can, label: 'rags' })).toEqual(['wrong-label']);
    expect(
      wipesFaults(us, { ...can, days: 300, label: '', closed: false, freeLiquid: true }),
    ).toEqual(['too-old', 'open', 'wrong-label', 'free-liquid']);
  });

  it('is outside it with a solvent that is left out, but only when it is thrown away', () => {
    const [solvent = ''] = us.wipes?.notThrownAway ?? [];
    expect(solvent).not.toBe('');
    expect(wipesFaults(us, { ...can, solvent })).toEqual(['solvent-not-covered']);
    expect(wipesFaults(us, { ...can, solvent, thrownAway: false })).toEqual([]);
  });

  it('has no rule elsewhere', () => {
    expect(wipesFaults(other, can)).toEqual(['no-rule']);
  });
});
