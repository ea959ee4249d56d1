import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';

/** A file of views/assets, held in memory: nothing is read from disk while serving. */
export interface Asset {
  readonly name: string;
  readonly type: string;
  readonly body: Buffer;
  /** Changes when the content does; stands in the address, so that it can be kept for ever. */
  readonly version: string;
}

/** All of views/, read once at the start. Names have neither folder nor ending: "sheet", "tools/slab". */
export interface ViewFiles {
  readonly layout: string;
  readonly pages: ReadonlyMap<string, string>;
  readonly partials: ReadonlyMap<string, string>;
  readonly messages: Readonly<Record<string, string>>;
  readonly assets: ReadonlyMap<string, Asset>;
}

const TYPES: Readonly<Record<string, string>> = {
  css: 'text/css; charset=utf-8',
  js: 'text/javascript; charset=utf-8',
  svg: 'image/svg+xml',
  png: 'image/png',
  ico: 'image/x-icon',
  woff2: 'font/woff2',
  txt: 'text/plain; charset=utf-8',
  webmanifest: 'application/manifest+json',
};

const VERSION_LETTERS = 10;

/** Ten letters that change when the content does. */
export const hashOf = (content: string | Buffer): string =>
  createHash('sha256').update(content).digest('base64url').slice(0, VERSION_LETTERS);

/** Words of the interface by key. @throws when messages/en.json is missing or is not JSON. */
export const readMessages = (folder: string): ViewFiles['messages'] =>
  JSON.parse(readFileSync(join(folder, 'messages', 'en.json'), 'utf8')) as ViewFiles['messages'];

/** @throws when a file is missing or messages/en.json is not JSON; the message names the file. */
export function readViewFiles(folder: string): ViewFiles {
  const templates = (kind: string) =>
    new Map(
      filesIn(join(folder, kind)).map((name) => [
        name.replace(/\.hbs$/, ''),
        readFileSync(join(folder, kind, name), 'utf8'),
      ]),
    );
  return {
    layout: readFileSync(join(folder, 'layouts', 'main.hbs'), 'utf8'),
    pages: templates('pages'),
    partials: templates('partials'),
    messages: readMessages(folder),
    assets: readAssets(join(folder, 'assets')),
  };
}

/** Files of a folder and of those in it, sorted, with "/" between. */
const filesIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).replaceAll(sep, '/'))
    .sort();

function readAssets(folder: string): ReadonlyMap<string, Asset> {
  const read = filesIn(folder).map((name): Asset => {
    const body = readFileSync(join(folder, name));
    const type = TYPES[endingOf(name)] ?? 'application/octet-stream';
    return { name, type, body, version: hashOf(body) };
  });
  const plain = new Map(read.map((asset) => [asset.name, asset]));
  return new Map(read.map((asset) => [asset.name, withVersionedAddresses(asset, plain)]));
}

/** Addresses of assets as styles and scripts name them: what stands before, the name, what stands after. */
const ADDRESSES: Readonly<Record<string, RegExp>> = {
  css: /(url\(["']?)(?:\/assets\/)?([\w./-]+)(["']?\))/g,
  js: /(["'])\/assets\/([\w./-]+)(["'])/g,
};

/** Addresses that styles and scripts name get their version too, so that they can be kept for ever. */
function withVersionedAddresses(asset: Asset, assets: ReadonlyMap<string, Asset>): Asset {
  const addresses = ADDRESSES[endingOf(asset.name)];
  if (!addresses) return asset;
  const text = asset.body
    .toString('utf8')
    .replace(addresses, (whole, before: string, name: string, after: string) => {
      const named = assets.get(name);
      return named ? `${before}${assetHref(named)}${after}` : whole;
    });
  const body = Buffer.from(text);
  return { ...asset, body, version: hashOf(body) };
}

const endingOf = (name: string): string => name.slice(name.lastIndexOf('.') + 1);

/** The address of an asset as it is now. */
export const assetHref = (asset: Asset): string => `/assets/${asset.name}?v=${asset.version}`;

/** Changes when anything in views/ does. */
export const viewsVersion = ({ layout, pages, partials, messages, assets }: ViewFiles): string =>
  hashOf(
    JSON.stringify([
      layout,
      [...pages],
      [...partials],
      messages,
      [...assets.values()].map((asset) => [asset.name, asset.version]),
    ]),
  );
