import { expect, it } from 'vitest';
import { makePageCache } from '../../../server/web/pages/pageCache.js';

const page = (letters: number) => ({ type: 'text/html', body: Buffer.alloc(letters) });

it('lets go of what was not asked for the longest once it is full', () => {
  const cache = makePageCache(2 * (3 * 101));
  for (const key of ['a', 'b', 'c']) cache.put(key, page(100));
  cache.get('a');
  cache.put('d', page(100));
  expect(['a', 'b', 'c', 'd'].map((key) => cache.get(key) !== undefined)).toEqual([
    true,
    false,
    true,
    true,
  ]);
});

it('counts a page that is put again once, and never holds one that is too large', () => {
  const cache = makePageCache(2 * 202);
  for (let times = 0; times < 5; times += 1) cache.put('a', page(100));
  cache.put('b', page(100));
  expect(cache.get('a')).toBeDefined();
  cache.put('c', page(1000));
  expect(cache.get('c')).toBeUndefined();
});
