import { describe, expect, it } from 'vitest';
import { sizeOf } from '../../../server/reasoning/book/agentSet.js';

describe('a set of agents', () => {
  it('counts its members', () => {
    expect(sizeOf(0)).toBe(0);
    expect(sizeOf(0b1)).toBe(1);
    expect(sizeOf(0b1011)).toBe(3);
    expect(sizeOf((1 << 13) - 1)).toBe(13);
  });
});
