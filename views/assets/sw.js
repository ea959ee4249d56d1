// Pages come from the network; when it is slow or down, from what was last seen on this device.
const PAGES = 'pages-1';
const ASSETS = 'assets-1';
// Pages vary by Accept; here they are all HTML.
const SAME = { ignoreVary: true };
const MOST_PAGES = 30;
const SLOW_MS = 3000;
// A bench says who is in the room: it is kept for no longer than the work lasts.
const HALF_A_DAY_MS = 12 * 60 * 60 * 1000;
const WEEK_MS = 7 * 24 * 60 * 60 * 1000;
const MOST_ASSETS = 80;
// Named by the stylesheet only.
const UNNAMED = [
  '/assets/fonts/bitter-700.woff2',
  '/assets/fonts/atkinson-400.woff2',
  '/assets/fonts/atkinson-700.woff2',
  '/assets/signs/cut-x.svg',
  '/assets/signs/deckle-rule.svg',
];

const isKept = (url) => ['/', '/help-now', '/sheet'].includes(url.pathname);
const isHelp = ({ url }) => new URL(url).pathname === '/help-now';
const isBench = ({ url }) => /\/(sheet)?\?/.test(url);
const isAsset = (url) => url.pathname.startsWith('/assets/');

self.addEventListener('install', (event) => {
  self.skipWaiting();
  event.waitUntil(keepPage('/help-now').then(() => Promise.all(UNNAMED.map(asset))));
});

self.addEventListener('activate', (event) => {
  event.waitUntil(self.clients.claim());
});

self.addEventListener('message', (event) => {
  const { pages, assets } = event.data;
  const urls = pages.filter((one) => isKept(new URL(one)));
  event.waitUntil(Promise.all([...urls.map(keepFresh), ...assets.map(asset)]));
});

self.addEventListener('fetch', (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== 'GET' || url.origin !== location.origin) return;
  if (isAsset(url)) event.respondWith(asset(event.request));
  else if (isKept(url)) event.respondWith(page(event));
});

async function page(event) {
  const { request } = event;
  const fresh = fromNetwork(request).catch(() => undefined);
  event.waitUntil(fresh);
  const slow = new Promise((wake) => setTimeout(wake, SLOW_MS));
  return (
    (await Promise.race([fresh, slow])) ??
    (await kept(request)) ??
    (await fresh) ??
    Response.error()
  );
}

async function fromNetwork(request) {
  const response = await fetch(request);
  if (response.ok) await put(PAGES, request, response.clone(), MOST_PAGES);
  return response;
}

/** The same address; for help the last that was seen: its steps are the same everywhere. */
async function kept(request) {
  const pages = await caches.open(PAGES);
  await dropOldBenches(pages);
  const same = await pages.match(request, SAME);
  if (same || !isHelp(request)) return same;
  const last = (await pages.keys()).filter(isHelp).at(-1);
  return last && pages.match(last, SAME);
}

async function asset(request) {
  const found = await (await caches.open(ASSETS)).match(request, SAME);
  if (found) return found;
  const response = await fetch(request);
  if (response.ok) await put(ASSETS, request, response.clone(), MOST_ASSETS);
  return response;
}

/** Unless it was kept this week: numbers to ring change. */
async function keepFresh(url) {
  const found = await (await caches.open(PAGES)).match(url, SAME);
  if (ageMs(found) > WEEK_MS) await keepPage(url);
}

const ageMs = (found) => Date.now() - (Date.parse(found?.headers.get('date') ?? '') || 0);

async function dropOldBenches(pages) {
  for (const one of (await pages.keys()).filter(isBench)) {
    if (ageMs(await pages.match(one, SAME)) > HALF_A_DAY_MS) await pages.delete(one, SAME);
  }
}

async function keepPage(url) {
  const response = await fetch(url, { headers: { accept: 'text/html' } });
  if (response.ok) await put(PAGES, url, response, MOST_PAGES);
}

/** The newest are kept, the oldest let go. */
async function put(name, request, response, most) {
  const cache = await caches.open(name);
  await cache.delete(request, SAME);
  await cache.put(request, response);
  const [...old] = await cache.keys();
  await Promise.all(old.slice(0, Math.max(0, old.length - most)).map((one) => cache.delete(one)));
}
