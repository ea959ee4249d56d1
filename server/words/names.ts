import type { Catalogue } from '../reasoning/index.js';

export const NAME_KINDS = [
  'ink',
  'additive',
  'surface',
  'agent',
  'equipment',
  'person',
  'stream',
  'other',
  'region',
  'scale',
  'substance',
  'material',
] as const;
export type NameKind = (typeof NAME_KINDS)[number];

interface Named {
  readonly id: string;
  readonly name: string;
  readonly shortName?: string;
}

export interface Names {
  /** The label of a row; what was typed when no row has that id. */
  readonly name: (kind: NameKind, id: string) => string;
  readonly short: (kind: NameKind, id: string) => string;
  /**
   * The short label of `ink.oil-relief`, or of the first kind that has a row of a bare id; of
   * `ink.my tin`, which no table has, what was typed.
   */
  readonly any: (rowId: string) => string | undefined;
  readonly isKnown: (kind: NameKind, id: string) => boolean;
}

/** Looks up labels of all tables by kind and id. */
export function makeNames(catalogue: Catalogue): Names {
  const rows: Readonly<Record<NameKind, readonly Named[]>> = {
    ink: catalogue.inks,
    additive: catalogue.additives,
    surface: catalogue.surfaces,
    agent: catalogue.agents,
    equipment: catalogue.equipment,
    person: catalogue.people,
    stream: catalogue.streams,
    other: catalogue.others,
    region: catalogue.regions,
    scale: catalogue.scales,
    substance: catalogue.substances,
    material: catalogue.gloves.materials,
  };
  const byKind = new Map(
    NAME_KINDS.map((kind) => [kind, new Map(rows[kind].map((row) => [row.id, row]))] as const),
  );
  // An extender may be named as an additive, another chemical as something at hand or near.
  const also: Readonly<Partial<Record<NameKind, NameKind>>> = {
    additive: 'ink',
    agent: 'other',
    equipment: 'other',
  };
  const find = (kind: NameKind, id: string): Named | undefined => {
    const second = also[kind];
    return byKind.get(kind)?.get(id) ?? (second && byKind.get(second)?.get(id));
  };
  return {
    name: (kind, id) => find(kind, id)?.name ?? id,
    short: (kind, id) => shortOf(find(kind, id)) ?? id,
    any: (rowId) => {
      const dot = rowId.indexOf('.');
      const [said, id] = [rowId.slice(0, Math.max(dot, 0)), rowId.slice(dot + 1)];
      const kind = NAME_KINDS.find((one) => one === said || byKind.get(one)?.has(rowId) === true);
      if (kind === undefined) return undefined;
      return kind === said ? (shortOf(find(kind, id)) ?? id) : shortOf(find(kind, rowId));
    },
    isKnown: (kind, id) => find(kind, id) !== undefined,
  };
}

const shortOf = (row: Named | undefined): string | undefined => row?.shortName ?? row?.name;
