import type { FastifyInstance } from 'fastify';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { anApp } from '../support/anApp.js';
import { reasoner } from '../support/rules.js';

let app: FastifyInstance;
beforeAll(async () => {
  app = await anApp();
});
afterAll(async () => {
  await app.close();
});

const get = (url: string, headers: Record<string, string> = {}) => app.inject({ url, headers });

const SHEET = '/sheet?in=uk&mix=oil-relief&on=glass-slab';

describe('every page', () => {
  it.each(['/', SHEET, '/rules', '/rules?q=spirit', '/rules/ink.oil-relief', '/help-now?in=us'])(
    '%s is HTML in the layout, with a title, and keeps to itself',
    async (url) => {
      const { statusCode, headers, body } = await get(url);
      expect(statusCode).toBe(200);
      expect(headers).toMatchObject({
        'content-type': 'text/html; charset=utf-8',
        'x-content-type-options': 'nosniff',
        'x-frame-options': 'DENY',
        'referrer-policy': 'same-origin',
        'cache-control': 'no-cache',
      });
      expect(headers['content-security-policy']).toMatch(/^default-src 'self';/);
      expect(headers['permissions-policy']).toContain('camera=()');
      expect(headers['strict-transport-security']).toBeUndefined();
      expect(body).toMatch(/^<!doctype html>[^]*<title>[^<]+<\/title>[^]*<\/html>\s*$/);
      expect(body).not.toMatch(/<script>|\sstyle="|\son\w+="|<style/);
    },
  );

  it('is told apart by its ETag and is not sent again to who has it', async () => {
    for (const url of ['/', SHEET, '/rules', '/rules/ink.oil-relief', '/help-now']) {
      const etag = String((await get(url)).headers.etag);
      const again = await get(url, { 'if-none-match': `"other", ${etag}` });
      expect([url, again.statusCode, again.body]).toEqual([url, 304, '']);
      expect((await get(url, { 'if-none-match': '"other"' })).statusCode).toBe(200);
    }
  });

  it('comes squeezed to who takes that, and says so', async () => {
    const plain = await get('/');
    const squeezed = await get('/', { 'accept-encoding': 'br, gzip' });
    expect(squeezed.headers['content-encoding']).toBe('gzip');
    expect(squeezed.headers.vary).toContain('Accept-Encoding');
    expect(squeezed.rawPayload.length).toBeLessThan(plain.rawPayload.length / 3);
    const refused = await get('/', { 'accept-encoding': 'gzip;q=0' });
    expect(refused.headers['content-encoding']).toBeUndefined();
    expect(refused.body).toBe(plain.body);
  });

  it('escapes what was typed', async () => {
    const typed = encodeURIComponent('<img src=x onerror=alert(1)>"\'');
    for (const url of [
      `/sheet?mix=${typed}&on=${typed}`,
      `/?mix=${typed}&on=${typed}&in=${typed}`,
      `/rules?q=${typed}`,
      `/rules/${typed}`,
      `/sheet?mix=a:${typed}`,
      `/help-now?in=${typed}`,
    ]) {
      expect((await get(url)).body).not.toMatch(/<img src=x/i);
    }
  });
});

describe('what is not there', () => {
  it('is a calm page for people and problem+json for programs', async () => {
    const page = await get('/nowhere', { accept: 'text/html' });
    expect([page.statusCode, page.headers['content-type']]).toEqual([
      404,
      'text/html; charset=utf-8',
    ]);
    const json = await get('/api/nowhere');
    expect(json.statusCode).toBe(404);
    expect(json.headers['content-type']).toMatch('application/problem+json');
    expect(json.json()).toMatchObject({ type: 'about:blank', title: 'Not Found', status: 404 });
    expect((await get('/nowhere', { accept: 'application/problem+json' })).json()).toMatchObject({
      code: 'PAGE_UNKNOWN',
    });
  });

  it('is named when it is a row', async () => {
    const { statusCode, body } = await get('/rules/ink.nothing');
    expect(statusCode).toBe(404);
    expect(body).toContain('ink.nothing');
  });

  it('cannot be reached through the assets', async () => {
    for (const name of ['../package.json', '..%2f..%2fpackage.json', '%2e%2e/main.ts', 'x', '']) {
      expect((await get(`/assets/${name}`)).statusCode).toBe(404);
    }
  });

  it('is plain words when the address itself cannot be read', async () => {
    const { statusCode, body } = await get('/%zz');
    expect([statusCode, body]).toEqual([400, 'The request could not be read.\n']);
    expect((await get('/api/%zz')).json()).toMatchObject({ status: 400 });
  });
});

describe('assets', () => {
  it('are kept for ever at the address of their version, and asked for again at any other', async () => {
    const page = await get('/');
    const [, href = ''] = /<link rel="stylesheet" href="([^"]+)"/.exec(page.body) ?? [];
    const style = await get(href.replaceAll('&amp;', '&').replaceAll('&#x3D;', '='));
    expect(style.headers['content-type']).toBe('text/css; charset=utf-8');
    expect(style.headers['cache-control']).toBe('public, max-age=31536000, immutable');
    expect((await get('/assets/style.css')).headers['cache-control']).toBe('no-cache');
    expect((await get('/assets/style.css?v=old')).headers['cache-control']).toBe('no-cache');
  });

  it('name each other by version', async () => {
    const { body } = await get('/assets/style.css');
    const named = [...body.matchAll(/url\(["']?(\/assets\/[^"')]+)/g)].map(([, href = '']) => href);
    expect(named.length).toBeGreaterThan(0);
    for (const href of named) {
      const { statusCode, headers } = await get(href);
      expect([href, statusCode, headers['cache-control']]).toEqual([
        href,
        200,
        'public, max-age=31536000, immutable',
      ]);
    }
  });

  it('serve the service worker from the root, asked for each time', async () => {
    const { statusCode, headers } = await get('/sw.js');
    expect(statusCode).toBe(200);
    expect(headers).toMatchObject({
      'content-type': 'text/javascript; charset=utf-8',
      'cache-control': 'no-cache',
    });
  });
});

describe('/healthz', () => {
  it('says that the server answers, and with what', async () => {
    const { statusCode, headers, body } = await get('/healthz');
    expect(statusCode).toBe(200);
    expect(headers['cache-control']).toBe('no-store');
    expect(JSON.parse(body)).toEqual({
      status: 'ok',
      version: '0.0.0-test',
      rules: expect.stringMatching(/^[\w-]{10}$/) as string,
    });
  });
});

describe('a fault of our own', () => {
  it('is a calm page without a word of what happened inside', async () => {
    const broken = await anApp({
      reasoner: {
        ...reasoner,
        sheet: () => {
          throw new Error('secret detail');
        },
      },
    });
    for (const url of [SHEET, SHEET.replace('/sheet', '/sheet.json')]) {
      const { statusCode, body } = await broken.inject({ url });
      expect(statusCode).toBe(500);
      expect(body).not.toMatch(/secret|at .*\.ts|node_modules/);
      expect(body).toContain('Something went wrong on our side.');
    }
    await broken.close();
  });
});
