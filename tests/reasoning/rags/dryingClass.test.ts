import { describe, expect, it } from 'vitest';
import { dryingClass, mayRagsSelfHeat } from '../../../server/reasoning/index.js';

const scheme = { semiDryingFrom: 115, semiDryingTo: 130 };

describe('drying class of an oil', () => {
  it.each([
    [114.9, 'non-drying'],
    [115, 'semi-drying'],
    [130, 'semi-drying'],
    [130.1, 'drying'],
  ])('puts an iodine value of %s into %s', (iodine, wanted) => {
    expect(dryingClass(iodine, scheme)).toBe(wanted);
  });
});

describe('rags with an oil', () => {
  it.each([
    [99.9, false],
    [100, true],
  ])('heat up when the high end of its iodine value is %s: %s', (high, heats) => {
    expect(mayRagsSelfHeat({ iodine: { low: 70, high } }, 100)).toBe(heats);
  });

  it('heat up when nothing is known of it', () => {
    expect(mayRagsSelfHeat({}, 100)).toBe(true);
  });

  it.each([
    ['drying', true],
    ['semi-drying', true],
    ['non-drying', false],
    ['does-not-dry', false],
  ] as const)('go by the name where it is %s, whatever the figure', (byName, heats) => {
    expect(mayRagsSelfHeat({ byName, iodine: { low: 0, high: 0 } }, 100)).toBe(heats);
    expect(mayRagsSelfHeat({ byName, iodine: { low: 200, high: 200 } }, 100)).toBe(heats);
  });
});
