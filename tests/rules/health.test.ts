import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../server/catalogue/index.js';

const RULES = new URL('../../rules/', import.meta.url);

describe('the tables in rules/', () => {
  it('are whole and agree with each other', () => {
    expect(() => loadCatalogue(RULES)).not.toThrow();
  });
});
