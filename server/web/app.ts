import formbody from '@fastify/formbody';
import fastify, { type FastifyBaseLogger, type FastifyInstance } from 'fastify';
import { airApi } from './api/air.js';
import { dryingClassApi } from './api/dryingClass.js';
import { flammableClassApi } from './api/flammableClass.js';
import { gloveCalculators } from './api/gloveCalculators.js';
import { useOpenApi } from './api/openApi.js';
import { sheetApi } from './api/sheet.js';
import { sumsApi } from './api/sums.js';
import { wasteCalculators } from './api/wasteCalculators.js';
import { knownIds } from './forms/known.js';
import { airPages } from './pages/air.js';
import { benchPages } from './pages/bench.js';
import { helpNowPages } from './pages/helpNow.js';
import { makeKeep } from './pages/keep.js';
import { makePageCache } from './pages/pageCache.js';
import { qrPages } from './pages/qr.js';
import { rulesPages } from './pages/rules.js';
import { sheetPages } from './pages/sheet.js';
import { sumsPages } from './pages/sums.js';
import type { Parts } from './parts.js';
import { answerUnreadable, useErrors } from './plugins/errors.js';
import { useFinished } from './plugins/finished.js';
import { useHealth } from './plugins/health.js';
import { useSecurity } from './plugins/security.js';
import { useStaticFiles } from './plugins/staticFiles.js';
import { hashOf, readViewFiles, viewsVersion } from './plugins/viewFiles.js';
import { makeRenderPage, useViews } from './plugins/views.js';

export type { Clock } from './parts.js';

/** A bench of 10,000 parts still fits, so that it can be answered at its field. */
const BODY_BYTES = 1024 * 1024;

/** Finished pages that are kept in memory. */
const CACHE_BYTES = 16 * 1024 * 1024;

export interface AppParts extends Parts {
  /** Folder of templates, messages and assets. */
  readonly viewsFolder: string;
  readonly log?: FastifyBaseLogger;
}

/**
 * The whole site, ready to listen; it does not listen and reads no settings.
 * Throws VIEWS_WRONG when a template, or what it names, is wrong or missing.
 */
export async function buildApp(parts: AppParts): Promise<FastifyInstance> {
  const files = readViewFiles(parts.viewsFolder);
  const renderPage = makeRenderPage(files);
  const rules = hashOf(JSON.stringify(parts.catalogue));
  const build = [parts.version, rules, viewsVersion(files)].join(' ');
  const keep = makeKeep(makePageCache(CACHE_BYTES), build);
  const known = knownIds(parts.catalogue);

  const app = fastify({
    ...(parts.log && { loggerInstance: parts.log }),
    bodyLimit: BODY_BYTES,
    frameworkErrors: answerUnreadable,
  });
  // Answers are for forms and programs; there is no route that reads plain text.
  app.removeContentTypeParser('text/plain');
  useFinished(app);
  useViews(app, renderPage);
  useErrors(app);
  await useSecurity(app);
  await app.register(formbody);
  await useOpenApi(app, parts.version);

  useStaticFiles(app, files.assets);
  useHealth(app, { version: parts.version, rules });
  benchPages(app, { ...parts, known, keep, renderPage });
  airPages(app, { ...parts, known, keep, renderPage });
  sheetPages(app, { ...parts, known, keep, renderPage });
  qrPages(app, { ...parts, known, keep, renderPage });
  rulesPages(app, { ...parts, keep, renderPage });
  sumsPages(app, { ...parts, keep, renderPage });
  helpNowPages(app, { ...parts, keep, renderPage });
  sheetApi(app, { ...parts, known });
  airApi(app, { ...parts, known });
  flammableClassApi(app, parts);
  dryingClassApi(app, parts);
  gloveCalculators(app, parts);
  wasteCalculators(app, parts);
  sumsApi(app, parts);
  await app.ready();
  return app;
}
