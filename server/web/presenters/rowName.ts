import type { NameKind, Words } from '../../words/index.js';

const KINDS: ReadonlySet<string> = new Set<NameKind>([
  'ink',
  'additive',
  'agent',
  'surface',
  'equipment',
]);
const isKind = (text: string): text is NameKind => KINDS.has(text);

/**
 * The short label of what a row id names; what was typed when no table has it.
 *
 * @example rowName('ink.oil-relief', words) // 'Oil relief ink'
 */
export function rowName(rowId: string, words: Words): string {
  const dot = rowId.indexOf('.');
  const [kind, id] = [rowId.slice(0, dot), rowId.slice(dot + 1)];
  return isKind(kind) ? words.short(kind, id) : id;
}
