import type { z } from 'zod';
import { issueProblems } from './issueProblems.js';
import { shown, type Problem } from './problems.js';
import { childOf, idOf, readTableFile, type Path, type TableFile } from './tableFile.js';

/** A good row and where it stands. */
export interface Placed<Row> {
  readonly file: TableFile;
  readonly path: Path;
  readonly row: Row;
}

/** The rows of one list: the good ones, and the ids of all, good or not. */
export interface Table<Row> {
  readonly rows: readonly Placed<Row>[];
  /** `undefined` when the list could not be read at all: then no id is called unknown. */
  readonly ids: ReadonlySet<string> | undefined;
}

/** A table whose rows all stand in one list of one file. */
export interface List<Row> extends Table<Row> {
  readonly file: TableFile;
  readonly path: Path;
}

/** Reads files of one folder and gathers every problem on the way. */
export interface Reader {
  readonly problems: Problem[];
  readonly open: (name: string) => TableFile;
  /** The list at `at` of a file, row by row: one bad row hides no other. */
  readonly list: <Row extends { readonly id: string }>(
    file: TableFile,
    at: Path,
    schema: z.ZodType<Row>,
  ) => List<Row>;
  /** One thing that is not a list: the whole file, or what stands at `at`. */
  readonly one: <Value>(
    file: TableFile,
    at: Path,
    schema: z.ZodType<Value>,
    value?: unknown,
  ) => Placed<Value> | undefined;
  /** Notes what is wrong at a place; `field` names one that is not there yet. */
  readonly say: (
    file: TableFile,
    path: Path,
    found: unknown,
    accepts: string,
    field?: string,
  ) => void;
}

export function makeReader(dir: string): Reader {
  const problems: Problem[] = [];

  const open: Reader['open'] = (name) => {
    const file = readTableFile(dir, name);
    problems.push(...file.problems);
    return file;
  };

  const say: Reader['say'] = (file, path, found, accepts, field = file.fieldOf(path)) => {
    problems.push({
      file: file.name,
      line: file.lineOf(path),
      field,
      found: shown(found),
      accepts,
    });
  };

  const one: Reader['one'] = (file, at, schema, value = valueAt(file, at)) => {
    if (file.value === undefined) return undefined;
    const read = schema.safeParse(value);
    if (read.success) return { file, path: at, row: read.data };
    for (const issue of read.error.issues) {
      for (const { path, found, accepts } of issueProblems(issue, value)) {
        say(file, [...at, ...path], found, accepts);
      }
    }
    return undefined;
  };

  const list: Reader['list'] = (file, at, schema) => {
    const raw = valueAt(file, at);
    if (!Array.isArray(raw)) {
      if (file.value !== undefined) say(file, at, raw, 'a list of rows');
      return { rows: [], ids: undefined, file, path: at };
    }
    const rows = raw.flatMap(
      (value: unknown, place) => one(file, [...at, place], schema, value) ?? [],
    );
    const ids = new Set<string>();
    raw.map(idOf).forEach((id, place) => {
      if (id === undefined) return;
      if (ids.has(id)) say(file, [...at, place, 'id'], id, 'an id that no other row has');
      ids.add(id);
    });
    return { rows, ids, file, path: at };
  };

  return { problems, open, list, one, say };
}

function valueAt(file: TableFile, at: Path): unknown {
  return at.reduce(childOf, file.value);
}
