import type { Because } from '../../reasoning/index.js';
import type { Words } from '../../words/index.js';

/** One reason: the row that put something on the sheet, and the first thing it says. */
interface ReasonView {
  readonly name: string;
  readonly says: string;
  /** Where the row stands in full; empty when no table has it. */
  readonly href: string;
}

/** Why a line is there: the first reason in full, the others by name, milder ones folded. */
export interface WhyView {
  readonly first: ReasonView;
  readonly others: readonly ReasonView[];
  readonly folded: readonly ReasonView[];
  readonly foldedCount: number;
}

/** Tables whose rows say nothing about why: their name is enough. */
const NAMED_ONLY: ReadonlySet<string> = new Set(['regions']);

/** Reasons of a line by the ids in `because` and `folded`; an id that no table has stays as it is. */
export function whyOf(because: Because, folded: Because, words: Words): WhyView {
  const reason = (id: string) => reasonOf(id, words);
  const [first = '', ...others] = because;
  return {
    first: reason(first),
    others: others.map(reason),
    folded: folded.map(reason),
    foldedCount: folded.length,
  };
}

function reasonOf(id: string, words: Words): ReasonView {
  const row = words.row(id);
  if (!row) return { name: id, says: '', href: '' };
  const says = NAMED_ONLY.has(row.table) ? '' : firstSentence(row.says);
  return { name: row.name, says, href: `/rules/${encodeURIComponent(id)}` };
}

/** The rest stands on the row's own page. */
const firstSentence = (text: string): string => text.split(/(?<=[.!?]) /, 1)[0] ?? '';
