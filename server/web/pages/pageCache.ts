import type { Finished } from '../plugins/finished.js';

/** Finished pages by key; the one that was not asked for the longest goes first. */
export interface PageCache {
  readonly get: (key: string) => Finished | undefined;
  readonly put: (key: string, page: Finished) => void;
}

/** Holds at most `bytesToHold` of pages and their keys. */
export function makePageCache(bytesToHold: number): PageCache {
  const pages = new Map<string, Finished>();
  let bytes = 0;
  const drop = (key: string): void => {
    const page = pages.get(key);
    if (page && pages.delete(key)) bytes -= sizeOf(key, page);
  };
  return {
    get: (key) => {
      const page = pages.get(key);
      if (page) {
        pages.delete(key);
        pages.set(key, page);
      }
      return page;
    },
    put: (key, page) => {
      drop(key);
      pages.set(key, page);
      bytes += sizeOf(key, page);
      for (const oldest of pages.keys()) {
        if (bytes <= bytesToHold) break;
        drop(oldest);
      }
    },
  };
}

/** The page, its squeezed copy at the worst, and the two bytes a letter of its key. */
const sizeOf = (key: string, page: Finished): number => 2 * (page.body.length + key.length);
