import { fileURLToPath } from 'node:url';
import { readViewFiles } from '../../server/web/plugins/viewFiles.js';
import { makeRenderPage } from '../../server/web/plugins/views.js';

/** The project's own templates, words and drawings, read once for each test file. */
export const files = readViewFiles(fileURLToPath(new URL('../../views/', import.meta.url)));
export const renderPage = makeRenderPage(files);
