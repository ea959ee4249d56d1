import type { Agent, AirRules, AirSituation, Catalogue, Region, Substance } from '../types.js';
import { sure } from '../book/sure.js';
import type { AirFigures } from './vapour.js';

/** What the air model looks up, made from the tables once. */
export interface AirBook {
  readonly figures: AirFigures;
  readonly situations: ReadonlyMap<string, AirSituation>;
  /** The least air: what counts where nobody said anything. */
  readonly closed: AirSituation;
  readonly agents: ReadonlyMap<string, Agent>;
  readonly substances: ReadonlyMap<string, Substance>;
  readonly regions: ReadonlyMap<string, Region>;
  /** Substances of the agents, each once: what an unknown liquid might be. */
  readonly agentSubstances: readonly Substance[];
  readonly nonVolatileBelowPa: number;
}

/** Assumes a catalogue that was checked. */
export const makeAirBook = (catalogue: Catalogue): AirBook => {
  const { air, agents, bandRules } = catalogue;
  const substances = byId(catalogue.substances);
  return {
    figures: figuresOf(air),
    situations: byId(air.situations),
    closed: sure(air.situations[0]),
    agents: byId(agents),
    substances,
    regions: byId(catalogue.regions),
    agentSubstances: [...new Set(agents.map((agent) => agent.substance))].map((id) =>
      sure(substances.get(id)),
    ),
    nonVolatileBelowPa: bandRules.nonVolatileBelowPa,
  };
};

const byId = <T extends { readonly id: string }>(rows: readonly T[]): ReadonlyMap<string, T> =>
  new Map(rows.map((row) => [row.id, row]));

/** By id; the catalogue was checked to have them all. */
const figuresOf = ({ figures }: AirRules): AirFigures =>
  Object.fromEntries(figures.map(({ id, value }) => [id, value])) as AirFigures;
