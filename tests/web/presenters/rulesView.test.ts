import { describe, expect, it } from 'vitest';
import { ruleView } from '../../../server/web/presenters/ruleView.js';
import { rulesView } from '../../../server/web/presenters/rulesView.js';
import { words } from '../../support/rules.js';
import { renderPage } from '../../support/views.js';

describe('the list of rules', () => {
  it('lists the tables and how many rows each has', () => {
    const view = rulesView({}, words);
    expect(view.rows).toEqual([]);
    const total = view.tables.reduce((sum, table) => sum + table.count, 0);
    expect(total).toBe(words.rows().length);
    expect(renderPage('rules', view)).toContain('</html>');
  });

  it('shows one table whole, the longest too', () => {
    for (const table of new Set(words.rows().map((row) => row.table))) {
      const view = rulesView({ table }, words);
      expect(view.rows).toHaveLength(words.rows().filter((row) => row.table === table).length);
      expect(view.isCut).toBe(false);
      expect(view.tables.filter((one) => one.isHere)).toHaveLength(1);
      expect(renderPage('rules', view)).toContain(view.rows[0]?.href ?? '?');
    }
  });

  it('finds rows that have every word, in any case and order', () => {
    const hrefs = (q: string) => rulesView({ q }, words).rows.map((row) => row.href);
    expect(hrefs('RAGS oily').length).toBeGreaterThan(0);
    expect(hrefs('RAGS oily')).toEqual(hrefs('  oily rags '));
    for (const row of rulesView({ q: 'oily rags' }, words).rows) {
      expect(`${row.href} ${row.name} ${row.says}`.toLowerCase()).toMatch(/oily/);
    }
  });

  it('says so when nothing is found, and passes over a table that is not there', () => {
    expect(rulesView({ q: 'zyzzyva' }, words)).toMatchObject({ count: 0, isSearch: true });
    expect(rulesView({ table: 'zyzzyva' }, words)).toMatchObject({ count: 0, tableKey: '' });
  });

  it('cuts a search that finds too much, and says how much there was', () => {
    const view = rulesView({ q: 'e' }, words);
    expect(view.isCut).toBe(true);
    expect(view.rows.length).toBeLessThan(view.count);
  });
});

describe('one rule', () => {
  it('shows every row of every table with all its sources and how it is known', () => {
    for (const row of words.rows()) {
      const view = ruleView(row.id, words);
      expect(view?.sources).toHaveLength(row.sources.length);
      expect(view?.howKey).toBe(`how.${row.how}`);
      expect(view && renderPage('rule', view)).toContain('</html>');
    }
  });

  it('follows a source only to a whole address', () => {
    const hrefs = words
      .rows()
      .flatMap((row) => ruleView(row.id, words)?.sources ?? [])
      .map((source) => source.href)
      .filter((href) => href !== '');
    expect(hrefs.length).toBeGreaterThan(0);
    expect(hrefs.filter((href) => !/^https?:\/\/\S+$/.test(href))).toEqual([]);
  });

  it('is nothing when no table has the row', () => {
    expect(ruleView('zyzzyva', words)).toBeUndefined();
  });
});
