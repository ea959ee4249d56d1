import type { How } from '../../reasoning/index.js';
import type { Placed } from '../reader.js';
import { known, type Checking } from './known.js';

interface Sourced {
  readonly how: How;
  readonly sources: readonly string[];
}

/** Every row names sources that are there, and what was read was read in a source. */
export function checkSources({ tables, say, expect, expectAll }: Checking): void {
  const source = known('a source id', tables.sources);
  const recalled = new Set(
    tables.sources.rows.filter(({ row }) => row.how !== 'read').map(({ row }) => row.id),
  );
  for (const at of sourcedRows(tables)) {
    const { how, sources } = at.row;
    expectAll(at, ['sources'], sources, source);
    if (how === 'read' && sources.every((id) => recalled.has(id))) {
      say(at.file, [...at.path, 'sources'], sources, 'a source that was read, as how says');
    }
  }
  for (const at of tables.substances.rows) {
    at.row.limits.forEach((limit, place) => {
      expect(at, ['limits', place, 'source'], limit.source, source);
    });
  }
  for (const at of tables.regions.rows) {
    if (at.row.wipes !== undefined) expect(at, ['wipes', 'source'], at.row.wipes.source, source);
  }
}

function sourcedRows(tables: Checking['tables']): readonly Placed<Sourced>[] {
  return Object.values(tables)
    .flatMap((table): readonly (Placed<object> | undefined)[] =>
      table !== undefined && 'rows' in table ? table.rows : [table],
    )
    .filter(isSourced);
}

function isSourced(at: Placed<object> | undefined): at is Placed<Sourced> {
  return at !== undefined && 'sources' in at.row;
}
