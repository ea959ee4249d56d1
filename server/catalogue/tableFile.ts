import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { LineCounter, isCollection, isMap, isNode, isPair, isScalar, parseDocument } from 'yaml';
import type { Problem } from './problems.js';

/** Where a value stands in a file: keys and list places, outermost first. */
export type Path = readonly PropertyKey[];

/** One file of rules/, read and parsed, that can say on which line each value stands. */
export interface TableFile {
  readonly name: string;
  /** `undefined` when the file is missing or is not YAML. */
  readonly value: unknown;
  readonly problems: readonly Problem[];
  /** Line of the value at `path`; of the nearest thing around it when it is not there. */
  readonly lineOf: (path: Path) => number;
  /** `inks.oil-relief.liftsWet[2]`: rows by their id, other places by number. */
  readonly fieldOf: (path: Path) => string;
}

/** Reads `dir/name`. Anything wrong with the file as a whole is a problem, not an exception. */
export function readTableFile(dir: string, name: string): TableFile {
  const table = name.replace(/\.yaml$/, '').replaceAll('/', '.');
  const file = `rules/${name}`;
  let text: string;
  try {
    text = readFileSync(join(dir, name), 'utf8');
  } catch {
    return unusable(file, table, [
      { file, line: 1, field: table, found: 'no such file', accepts: 'a table in YAML' },
    ]);
  }
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false });
  const faults = [...document.errors, ...document.warnings];
  if (faults.length > 0) {
    return unusable(
      file,
      table,
      faults.map(({ pos, message }) => ({
        file,
        line: lines.linePos(pos[0]).line,
        field: table,
        found: message,
        accepts: 'YAML that can be read in one way only',
      })),
    );
  }
  const value: unknown = document.toJS();
  return {
    name: file,
    value,
    problems: [],
    lineOf: (path) => lines.linePos(offsetOf(document.contents, path)).line,
    fieldOf: (path) => fieldOf(table, value, path),
  };
}

function unusable(name: string, table: string, problems: readonly Problem[]): TableFile {
  return { name, value: undefined, problems, lineOf: () => 1, fieldOf: () => table };
}

function offsetOf(node: unknown, path: Path): number {
  const [key, ...rest] = path;
  const here = isNode(node) ? (node.range?.[0] ?? 0) : 0;
  if (key === undefined || !isCollection(node)) return here;
  if (isMap(node)) {
    const pair = node.items.find((item) => isScalar(item.key) && item.key.value === key);
    if (!isPair(pair) || !isScalar(pair.key)) return here;
    return rest.length === 0 ? (pair.key.range?.[0] ?? here) : offsetOf(pair.value, rest);
  }
  const item = node.items[Number(key)];
  return item === undefined ? here : offsetOf(item, rest);
}

function fieldOf(table: string, value: unknown, path: Path): string {
  let field = table;
  let here: unknown = value;
  for (const key of path) {
    here = childOf(here, key);
    const id = typeof key === 'number' ? idOf(here) : undefined;
    if (id !== undefined) field += `.${id}`;
    else field += typeof key === 'number' ? `[${key}]` : `.${String(key)}`;
  }
  return field;
}

/** What stands at `key` in a list or mapping; `undefined` when there is nothing. */
export function childOf(value: unknown, key: PropertyKey): unknown {
  return typeof value === 'object' && value !== null
    ? (value as Readonly<Record<PropertyKey, unknown>>)[key]
    : undefined;
}

/** The id that a row as written goes by: its own, or that of a pair; `undefined` when it has none. */
export function idOf(row: unknown): string | undefined {
  const [id, surface, agent] = ['id', 'surface', 'agent'].map((key) => childOf(row, key));
  if (typeof id === 'string') return id;
  return typeof surface === 'string' && typeof agent === 'string'
    ? `${surface}.${agent}`
    : undefined;
}
