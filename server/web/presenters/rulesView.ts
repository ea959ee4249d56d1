import type { RowText, Words } from '../../words/index.js';
import { frameOf, type FrameView } from './frame.js';

/** The tables with their counts, or the rows that a search or a table holds. */
export interface RulesView {
  readonly frame: FrameView;
  /** What was searched for, as typed. */
  readonly query: string;
  readonly isSearch: boolean;
  readonly tableKey: string;
  readonly tables: readonly {
    readonly key: string;
    readonly href: string;
    readonly count: number;
    readonly isHere: boolean;
  }[];
  readonly count: number;
  readonly rows: readonly RuleLine[];
  /** True when there are more than are shown: the search has to be narrowed. */
  readonly isCut: boolean;
}

interface RuleLine {
  readonly href: string;
  readonly name: string;
  readonly says: string;
  readonly tableKey: string;
}

/** Most rows on one page: the longest table by itself still fits. */
const MOST_ROWS = 500;

/**
 * Rows in which every word of `q` occurs, in one table or in all. Without a
 * search and without a table it lists the tables only.
 */
export function rulesView(
  { q = '', table = '' }: { readonly q?: string; readonly table?: string },
  words: Words,
): RulesView {
  const rows = words.rows();
  const counts = new Map<string, number>();
  for (const row of rows) counts.set(row.table, (counts.get(row.table) ?? 0) + 1);
  const query = q.trim();
  const isSearch = query !== '';
  const inTable = counts.has(table) ? table : '';
  const found = isSearch || inTable !== '' ? find(rows, query, inTable) : [];
  return {
    frame: frameOf('rules', { key: 'rules.title' }),
    query,
    isSearch,
    tableKey: inTable === '' ? '' : `table.${inTable}`,
    tables: [...counts].map(([name, count]) => ({
      key: `table.${name}`,
      href: `/rules?table=${encodeURIComponent(name)}`,
      count,
      isHere: name === inTable,
    })),
    count: found.length,
    rows: found.slice(0, MOST_ROWS).map((row) => ({
      href: `/rules/${encodeURIComponent(row.id)}`,
      name: row.name,
      says: row.says,
      tableKey: `table.${row.table}`,
    })),
    isCut: found.length > MOST_ROWS,
  };
}

function find(rows: readonly RowText[], query: string, table: string): RowText[] {
  const wanted = query.toLowerCase().split(/\s+/);
  return rows.filter((row) => {
    const text = `${row.id} ${row.name} ${row.says}`.toLowerCase();
    return (table === '' || row.table === table) && wanted.every((word) => text.includes(word));
  });
}
