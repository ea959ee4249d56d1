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

  it('take an origin for the public address, and nothing else', () => {
    const set = (PUBLIC_ORIGIN: string) => readConfig({ PUBLIC_ORIGIN }).publicOrigin;
    expect(set('https://sheets.example')).toBe('https://sheets.example');
    expect(set('https://sheets.example:8443/')).toBe('https://sheets.example:8443');
    for (const wrong of ['sheets.example', 'ftp://sheets.example', 'https://sheets.example/a']) {
      expect(() => set(wrong)).toThrow(/PUBLIC_ORIGIN/);
    }
  });

  it('do not take an empty host or port for a default', () => {
    expect(() => readConfig({ HOST: '' })).toThrow(/HOST/);
    expect(() => readConfig({ PORT: '' })).toThrow(/PORT/);
  });
});
