import type { RowText, Words } from '../../words/index.js';
import { frameOf, type FrameView } from './frame.js';

interface SourceView {
  readonly title: string;
  readonly publisher: string;
  readonly year: string;
  readonly where: string;
  /** Address to follow; empty when the source has none. */
  readonly href: string;
  readonly howKey: string;
}

/** One row of a table, in words, with where it comes from. */
export interface RuleView {
  readonly frame: FrameView;
  readonly id: string;
  readonly tableKey: string;
  readonly tableHref: string;
  readonly name: string;
  readonly says: string;
  readonly note: string;
  readonly howKey: string;
  readonly sources: readonly SourceView[];
}

/** Undefined when no table has such a row. */
export function ruleView(id: string, words: Words): RuleView | undefined {
  const row = words.row(id);
  return row && viewOf(row);
}

function viewOf(row: RowText): RuleView {
  return {
    frame: frameOf('rules', { text: row.name }),
    id: row.id,
    tableKey: `table.${row.table}`,
    tableHref: `/rules?table=${encodeURIComponent(row.table)}`,
    name: row.name,
    says: row.says,
    note: row.note ?? '',
    howKey: `how.${row.how}`,
    sources: row.sources.map(sourceView),
  };
}

const ADDRESS = /^https?:\/\/\S+$/;

/** A source as it is printed below a row or a sheet. */
export function sourceView(source: RowText['sources'][number]): SourceView {
  const known = kept.get(source) ?? makeSourceView(source);
  kept.set(source, known);
  return known;
}

/** A source is the same view on every page: made, and drawn, once. */
const kept = new WeakMap<RowText['sources'][number], SourceView>();

function makeSourceView(source: RowText['sources'][number]): SourceView {
  const where = source.where ?? '';
  return {
    title: source.title,
    publisher: source.publisher ?? '',
    year: source.year ?? '',
    where,
    href: ADDRESS.test(where) ? where : '',
    howKey: `how.${source.how}`,
  };
}
