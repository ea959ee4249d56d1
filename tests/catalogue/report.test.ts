import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../../server/catalogue/index.js';
import { reportTables } from '../../server/catalogue/report.js';
import { aRulesFolder } from '../support/rulesFolder.js';

describe('the report on the tables', () => {
  it('counts the rows of each table and how they are known', () => {
    const lines = reportTables(loadCatalogue(aRulesFolder())).split('\n');
    const cells = lines.map((line) => line.split(/ {2,}/));
    expect(cells[0]).toEqual(['table', 'rows', 'read', 'from memory', 'common practice']);
    expect(cells).toContainEqual(['substances', '2', '1', '0', '1']);
    expect(cells).toContainEqual(['gloves: chart', '1', '1', '0', '0']);
    expect(cells.at(-1)).toEqual(['total', '142', '18', '0', '75']);
  });
});
