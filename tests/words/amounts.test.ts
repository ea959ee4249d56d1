import { describe, expect, it } from 'vitest';
import { amountText } from '../../server/words/amounts.js';

describe('amounts', () => {
  it.each([
    [{ low: 15, high: 40 }, 'ml', 'metric', '15 to 40 ml'],
    [{ low: 15, high: 40 }, 'ml', 'us', '15 to 40 ml (0.5 to 1.5 fl oz)'],
    [{ low: 3, high: 8 }, 'ml', 'us', '3 to 8 ml (0.5 to 1.5 tsp)'],
    [{ low: 300, high: 1500 }, 'ml', 'metric', '0.3 to 1.5 litres'],
    [{ low: 300, high: 1500 }, 'ml', 'us', '0.3 to 1.5 litres (0.3 to 1.6 qt)'],
    [{ low: 1000, high: 1000 }, 'ml', 'metric', '1 litre'],
    [{ low: 1, high: 1 }, 'ml', 'us', '1 ml (0.5 tsp)'],
    [{ low: 4, high: 7 }, 'rags', 'us', '4 to 7 rags'],
    [{ low: 1, high: 1 }, 'rags', 'metric', '1 rag'],
  ] as const)('of %j %s in %s units read "%s"', (range, kind, units, text) => {
    expect(amountText(range, kind, units)).toBe(text);
  });
});
