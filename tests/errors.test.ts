import { describe, expect, it } from 'vitest';
import { ERRORS, codedError, errorMessage } from '../server/errors.js';

describe('coded errors', () => {
  it('carry their code and a message with the values filled in', () => {
    const error = codedError('RULE_UNKNOWN', { id: 'ink.soot' });
    expect(error).toBeInstanceOf(Error);
    expect(error.code).toBe('RULE_UNKNOWN');
    expect(error.message).toBe('No table has a row called ink.soot.');
  });

  it('leave a placeholder as it is when no value is given for it', () => {
    expect(errorMessage('RULE_UNKNOWN')).toBe('No table has a row called {id}.');
  });

  it('answer with the statuses of problems on this side or the other', () => {
    for (const { status } of Object.values(ERRORS)) expect(status).toBeGreaterThanOrEqual(400);
  });
});
