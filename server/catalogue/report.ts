import type { Catalogue, How } from '../reasoning/index.js';

/** How many rows each table has, and how many of them were read, recalled or are common practice. */
export function reportTables(catalogue: Catalogue): string {
  const { gloves, oils, air, hydrocarbons, sds, bandRules, ragsFor, ...lists } = catalogue;
  const tables: Readonly<Record<string, readonly object[]>> = {
    ...lists,
    oils: oils.oils,
    'oils: schemes': oils.schemes,
    'air: situations': air.situations,
    'air: figures': air.figures,
    'air: cautions': air.cautions,
    'hydrocarbons: columns': hydrocarbons.columns,
    'hydrocarbons: groups': hydrocarbons.groups,
    'sds sections': sds.sections,
    'gloves: materials': gloves.materials,
    'gloves: chart': gloves.chart,
    'gloves: breakthrough': gloves.breakthrough,
    bands: bandRules.bands,
    'rags for a surface': [ragsFor],
  };
  const counted = Object.entries(tables).map(([name, rows]) => countRows(name, rows));
  const total = countRows('total', Object.values(tables).flat());
  return [HEAD, ...counted, total].map(asLine).join('\n');
}

const HOWS: readonly How[] = ['read', 'from memory', 'common practice'];
const HEAD: readonly string[] = ['table', 'rows', ...HOWS];

function countRows(name: string, rows: readonly object[]): readonly string[] {
  const counts = HOWS.map((how) => rows.filter((row) => 'how' in row && row.how === how).length);
  return [name, String(rows.length), ...counts.map(String)];
}

function asLine([name = '', ...cells]: readonly string[]): string {
  return name.padEnd(24) + cells.map((cell) => cell.padStart(17)).join('');
}
