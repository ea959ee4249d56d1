import { fileURLToPath } from 'node:url';
import { loadCatalogue } from '../../server/catalogue/index.js';
import { makeReasoner } from '../../server/reasoning/index.js';
import { readMessages } from '../../server/web/plugins/viewFiles.js';
import { makeMessages, makeWords } from '../../server/words/index.js';

/** The tables of the project, read once for each test file. */
export const catalogue = loadCatalogue(fileURLToPath(new URL('../../rules/', import.meta.url)));
export const reasoner = makeReasoner(catalogue);
const messages = readMessages(fileURLToPath(new URL('../../views/', import.meta.url)));
export const words = makeWords(catalogue, makeMessages(messages));
