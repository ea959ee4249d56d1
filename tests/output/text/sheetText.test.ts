import { describe, expect, it } from 'vitest';
import { sheetText } from '../../../server/output/text/sheetText.js';
import { COLUMNS, wrapped } from '../../../server/output/text/wrapped.js';
import { aSheet } from '../../support/aSheet.js';
import { everyBench } from '../../support/everyBench.js';
import { reasoner, words } from '../../support/rules.js';

const imprint = { address: '/sheet?mix=oil-relief', madeOn: '2026-11-25', version: '1.2.3' };
const text = sheetText(aSheet, words, imprint);

describe('a sheet as plain text', () => {
  it('gives the four answers before the steps', () => {
    expect(text).toMatch(
      /Takes it off: Vegetable oil, then soap and water\nAir: +Window open\nGloves: +Nitrile rubber\nRags: +Oily rags/,
    );
    expect(text.indexOf('Takes it off')).toBeLessThan(text.indexOf('[ ]'));
  });

  it('has a box to tick and the reasons on each line, under its phase', () => {
    expect(text).toMatch(/Wash-up\n-------\n\[ \] Glass slab: [^[]*\(ink\.oil-relief,/);
  });

  it('says the mix, the numbers, the swap, where and when it was made', () => {
    expect(text).toContain('- tram green: Oil relief ink 90 %, my tin 10 % and Cobalt drier 3 %');
    expect(text).toMatch(/Numbers to ring\n-+\n/);
    expect(text).toMatch(/United Kingdom\. Looked up on \d{1,2} \p{L}+ \d{4} in /u);
    expect(text).toContain('- Take washable oil ink in place of oil relief ink.');
    expect(text).toMatch(
      /25 November 2026 for United Kingdom by Slab & Rag 1\.2\.3\.[^]*\/sheet\?mix=/,
    );
  });

  it('says stop where things must never meet, and that nothing is named when nothing is', () => {
    const never = { id: 'bleach-with-ammonia', because: [] };
    const bare = { ...aSheet, neverTogether: [never], plan: { ...aSheet.plan, agents: [] } };
    expect(sheetText(bare, words, imprint)).toMatch(
      /Takes it off: Nothing\. Ask\.[^]*!! Never let/,
    );
  });

  it('is no wider than 76 columns for any bench', () => {
    const wide = new Set<string>();
    for (const bench of everyBench) {
      const lines = sheetText(reasoner.sheet(bench), words, imprint).split('\n');
      for (const line of lines) if (line.length > COLUMNS) wide.add(line);
    }
    expect([...wide]).toEqual([]);
  });
});

describe('wrapped words', () => {
  it('are set in under the first, and a word that is too long stands alone', () => {
    const long = 'x'.repeat(90);
    expect(wrapped(`one ${long} two`, '[ ] ')).toBe(`[ ] one\n    ${long}\n    two`);
  });
});
