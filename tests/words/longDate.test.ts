import { expect, it } from 'vitest';
import { longDate } from '../../server/words/longDate.js';

it('writes the month as a word, whatever the clock of the server', () => {
  expect(longDate('2026-03-04')).toBe('4 March 2026');
  expect(longDate('2026-12-31')).toBe('31 December 2026');
});
