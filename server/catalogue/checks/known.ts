import type { Placed, Reader, Table } from '../reader.js';
import type { Path } from '../tableFile.js';
import type { Tables } from '../readTables.js';

/** What a reference may point at: its words for a message, and the ids there are. */
export interface Known {
  readonly what: string;
  readonly ids: ReadonlySet<string> | undefined;
}

const MOST_LISTED = 20;

/** `an agent id (soap-water, veg-oil ...)`; a long list is counted, not printed. */
export function accepted({ what, ids = new Set() }: Known): string {
  return `${what} (${ids.size > MOST_LISTED ? `one of ${ids.size}` : [...ids].join(', ')})`;
}

/** What the checks share: the tables, and ways to note an id that is not known. */
export interface Checking {
  readonly tables: Tables;
  readonly say: Reader['say'];
  /** Notes `found` at `path` of a row unless it is known. */
  readonly expect: (at: Placed<unknown>, path: Path, found: string, known: Known) => void;
  /** The same for every entry of a column that holds a list of ids, or nothing. */
  readonly expectAll: (
    at: Placed<unknown>,
    path: Path,
    found: readonly string[] | undefined,
    known: Known,
  ) => void;
}

export function makeChecking(tables: Tables, say: Reader['say']): Checking {
  const expect: Checking['expect'] = (at, path, found, known) => {
    if (known.ids === undefined || known.ids.has(found)) return;
    say(at.file, [...at.path, ...path], found, accepted(known));
  };
  return {
    tables,
    say,
    expect,
    expectAll: (at, path, found = [], known) => {
      found.forEach((id, place) => {
        expect(at, [...path, place], id, known);
      });
    },
  };
}

/** The ids of these tables taken together; not known when one of them could not be read. */
export function known(what: string, ...tables: readonly Table<unknown>[]): Known {
  const ids = new Set<string>();
  for (const table of tables) {
    if (table.ids === undefined) return { what, ids: undefined };
    for (const id of table.ids) ids.add(id);
  }
  return { what, ids };
}
