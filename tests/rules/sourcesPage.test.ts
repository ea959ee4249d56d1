import { expect, test } from 'vitest';
import { loadCatalogue } from '../../server/catalogue/index.js';
import type { Source } from '../../server/reasoning/index.js';

const rules = new URL('../../rules/', import.meta.url);

const HEAD = `# Sources

Every published source that a row of \`rules/\` names, once. How it is known: **read** (seen in a stored copy), **from
memory** (recalled, not seen) or **common practice**. Makers, shops and private pages are described, not named.

This page is made from \`rules/sources.yaml\` by \`npx vitest run -u tests/rules/sourcesPage.test.ts\`.
`;

const entry = (source: Source): string =>
  [
    `- \`${source.id}\`: ${source.title}.`,
    source.publisher === undefined ? '' : ` ${source.publisher}.`,
    source.year === undefined ? '' : ` ${source.year}.`,
    source.where === undefined ? '' : ` ${source.where}`,
    ` (${source.how})`,
  ].join('');

test('docs/sources.md lists every source of the tables as they stand', async () => {
  const { sources } = loadCatalogue(rules);
  const page = `${HEAD}\n${sources.map(entry).join('\n')}\n`;
  await expect(page).toMatchFileSnapshot('../../docs/sources.md');
});
