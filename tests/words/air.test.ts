import { describe, expect, it } from 'vitest';
import { AIR_CAUTIONS } from '../../server/reasoning/index.js';
import { words } from '../support/rules.js';

describe('a caution about the air', () => {
  it('names an agent or a substance by its label, and opens with a capital', () => {
    expect(words.airCaution({ id: 'mixture', values: { what: 'agent.white-spirit' } })).toMatch(
      /^White spirit is a mixture\./,
    );
    expect(words.airCaution({ id: 'saturated', values: { what: 'substance.acetone' } })).toMatch(
      /^So much acetone would not fit/,
    );
  });

  it('leaves what nobody knows as it was typed', () => {
    expect(words.airCaution({ id: 'unknown', values: { what: 'Grey Bottle 7' } })).toContain(
      '“Grey Bottle 7”',
    );
  });

  it('says the level of the air, and its figures', () => {
    expect(words.airCaution({ id: 'guessed-air', values: { level: 'window' } })).toContain(
      '“window open”',
    );
    expect(words.airCaution({ id: 'long-shift', values: { hours: 12 } })).toContain('12 hours');
  });

  it('has words for each that the model may say, with nothing left to fill', () => {
    const values = { what: 'acetone', level: 'window', limit: 'WEL', mgM3: 1210, hours: 10 };
    for (const id of AIR_CAUTIONS) {
      expect(words.airCaution({ id, values })).toMatch(/^[^{}]{20,}$/);
    }
  });
});
