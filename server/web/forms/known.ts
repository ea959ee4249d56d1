import type { Catalogue } from '../../reasoning/index.js';

/** The ids that reading a bench has to know. All others may be unknown: that is an answer too. */
export interface KnownIds {
  readonly regions: ReadonlySet<string>;
  readonly inks: ReadonlySet<string>;
  readonly additives: ReadonlySet<string>;
  /** Inks that may also be given as an additive with a percent. */
  readonly extenders: ReadonlySet<string>;
  readonly surfaces: ReadonlySet<string>;
  /** Machines and tools, and other chemicals that stand in the room. */
  readonly equipment: ReadonlySet<string>;
}

/** The ids of a catalogue that reading a bench has to know. */
export function knownIds(catalogue: Catalogue): KnownIds {
  const ids = (rows: readonly { readonly id: string }[]) => new Set(rows.map((row) => row.id));
  return {
    regions: ids(catalogue.regions),
    inks: ids(catalogue.inks),
    additives: ids(catalogue.additives),
    extenders: ids(catalogue.inks.filter((ink) => ink.extender === true)),
    surfaces: ids(catalogue.surfaces),
    equipment: ids([...catalogue.equipment, ...catalogue.others]),
  };
}
