import { fileURLToPath } from 'node:url';
import { buildApp, type Clock } from '../../server/web/app.js';
import { catalogue, reasoner, words } from './rules.js';

const fixedClock: Clock = { today: () => '2026-11-25' };

const viewsFolder = fileURLToPath(new URL('../../views/', import.meta.url));

/** The whole site on the project's own tables and templates, ready for requests, on a fixed day. */
export const anApp = (parts: Partial<Parameters<typeof buildApp>[0]> = {}) =>
  buildApp({
    catalogue,
    reasoner,
    words,
    clock: fixedClock,
    version: '0.0.0-test',
    viewsFolder,
    ...parts,
  });
