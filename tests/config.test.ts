import { describe, expect, it } from 'vitest';
import { readConfig } from '../server/config.js';

describe('settings', () => {
  it('work with nothing set', () => {
    expect(readConfig({})).toEqual({ host: '127.0.0.1', port: 3000, logLevel: 'warn' });
  });

  it('are read from the environment and cannot be changed afterwards', () => {
    const config = readConfig({ HOST: '0.0.0.0', PORT: '8080', LOG_LEVEL: 'debug' });
    expect(config).toEqual({ host: '0.0.0.0', port: 8080, logLevel: 'debug' });
    expect(Object.isFrozen(config)).toBe(true);
  });

  it('name every one that cannot be used', () => {
    expect(() => readConfig({ PORT: 'ninety', LOG_LEVEL: 'loud' })).toThrow(/PORT.*LOG_LEVEL/);
    expect(() => readConfig({ PORT: '70000' })).toThrow(
      expect.objectContaining({ code: 'CONFIG_WRONG' }) as Error,
    );
  });

  it('do not take an empty host or port for a default', () => {
    expect(() => readConfig({ HOST: '' })).toThrow(/HOST/);
    expect(() => readConfig({ PORT: '' })).toThrow(/PORT/);
  });
});
