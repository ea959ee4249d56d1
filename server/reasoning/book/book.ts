import type {
  Additive,
  Agent,
  Catalogue,
  Equipment,
  Ink,
  LineText,
  OtherChemical,
  Region,
  Rule,
  ScaleId,
  Stream,
  Substance,
  Surface,
} from '../types.js';
import { SCALES } from '../types.js';
import { type AirBook, makeAirBook } from '../air/airBook.js';
import { type AgentHazard, agentHazard, hazardFacts } from '../hazard/agentHazard.js';
import type { Candidate } from '../routes/candidate.js';
import type { AgentSet } from './agentSet.js';
import { sure } from './sure.js';

/** Kinds of rows that bring tags. */
export type PresentKind = 'ink' | 'additive' | 'surface' | 'agent' | 'equipment' | 'other';

/** A row that is on the bench, and the tags it brings. */
interface Presence {
  readonly row: string;
  readonly tags: readonly string[];
}

/** A level asked for by a band, which is not a rule row. */
export interface Demand {
  readonly row: string;
  readonly scale: number;
  readonly height: number;
}

/** A rule made ready: its tags as numbers, its levels as places on their scales. */
export interface ReadyRule {
  readonly rule: Rule;
  readonly when: readonly number[];
  readonly anyOf: readonly number[];
  readonly heights: readonly { readonly scale: number; readonly height: number }[];
}

/** What a surface lets agents do, as sets of agents. */
export interface ReadySurface {
  readonly surface: Surface;
  /** Agents that do not harm it. */
  readonly stands: AgentSet;
  /** Those of them that may only be wiped on and off. */
  readonly brief: AgentSet;
  /** Agents that leave nothing on it that must come off. */
  readonly leavesClean: AgentSet;
  /** Choices already worked out, by the set of agents that lift the mix. */
  readonly choices: Map<AgentSet, readonly Candidate[]>;
}

/** Sets of agents for an ink or an additive. */
interface ReadyLifts {
  readonly wet: AgentSet;
  readonly dried: AgentSet;
  readonly never: AgentSet;
  /** Must be the last on the ink; undefined when any will do. */
  readonly finish: AgentSet | undefined;
}

/** The catalogue with everything looked up once. */
export interface Book {
  readonly catalogue: Catalogue;
  readonly air: AirBook;
  /** What a millilitre of an agent does in a room: worked out once, it would come out the same again. */
  readonly airBurdens: Map<string, number>;
  readonly inks: ReadonlyMap<string, Ink>;
  readonly additives: ReadonlyMap<string, Additive>;
  readonly surfaces: ReadonlyMap<string, ReadySurface>;
  readonly agents: readonly Agent[];
  readonly agentIndex: ReadonlyMap<string, number>;
  readonly agentHazards: readonly AgentHazard[];
  readonly allAgents: AgentSet;
  readonly followUps: readonly AgentSet[];
  readonly inkLifts: ReadonlyMap<string, ReadyLifts>;
  readonly additiveLifts: ReadonlyMap<
    string,
    { readonly lifts: AgentSet; readonly never: AgentSet }
  >;
  readonly substances: ReadonlyMap<string, Substance>;
  readonly equipment: ReadonlyMap<string, Equipment>;
  readonly others: ReadonlyMap<string, OtherChemical>;
  readonly people: ReadonlySet<string>;
  readonly streams: ReadonlyMap<string, Stream>;
  readonly lines: ReadonlyMap<string, LineText>;
  /** Lines that name the things they speak of. */
  readonly namesItems: ReadonlySet<string>;
  readonly regions: ReadonlyMap<string, Region>;
  readonly rules: readonly ReadyRule[];
  /** Row (`ink.oil-relief`) to the tags it brings: itself and its marks. */
  readonly tagsOf: ReadonlyMap<string, readonly string[]>;
  /** The same by kind and id, for when no time is to be lost on joining them. */
  readonly presence: Readonly<Record<PresentKind, ReadonlyMap<string, Presence>>>;
  /** Levels that each band asks for. */
  readonly bandDemands: ReadonlyMap<number, readonly Demand[]>;
  /** Tag that some rule asks for to its number. */
  readonly tags: ReadonlyMap<string, number>;
  readonly worstBand: number;
  readonly heightOf: (scale: ScaleId, level: string) => number;
  /** Names as people type them to ids, for inks, additives, surfaces, agents, equipment. */
  readonly spoken: Readonly<
    Record<'ink' | 'additive' | 'surface' | 'agent' | 'equipment', ReadonlyMap<string, string>>
  >;
}

const byId = <T extends { readonly id: string }>(rows: readonly T[]): ReadonlyMap<string, T> =>
  new Map(rows.map((row) => [row.id, row]));

const asTyped = (text: string): string => text.trim().toLowerCase().replace(/\s+/g, ' ');

const spokenNames = (
  rows: readonly { readonly id: string; readonly name: string; readonly shortName?: string }[],
): ReadonlyMap<string, string> => {
  const names = new Map<string, string>();
  for (const row of rows) {
    names.set(asTyped(row.name), row.id);
    if (row.shortName !== undefined) names.set(asTyped(row.shortName), row.id);
  }
  for (const row of rows) names.set(row.id, row.id);
  return names;
};

/** Everything that reasoning looks up, made from the tables once. Assumes a catalogue that was checked. */
export const makeBook = (catalogue: Catalogue): Book => {
  const { agents } = catalogue;
  const agentIndex = new Map(agents.map((agent, index) => [agent.id, index]));
  const setOf = (ids: readonly string[]): AgentSet =>
    ids.reduce((set, id) => set | (1 << sure(agentIndex.get(id))), 0);
  const allAgents = setOf(agents.map((agent) => agent.id));

  const substances = byId(catalogue.substances);
  const scales = SCALES.map((id) => catalogue.scales.find((scale) => scale.id === id));
  const heightOf = (scale: ScaleId, level: string): number =>
    sure(scales[SCALES.indexOf(scale)]).levels.findIndex((each) => each.id === level);

  const tags = new Map<string, number>();
  const tag = (name: string): number => {
    const known = tags.get(name);
    if (known !== undefined) return known;
    tags.set(name, tags.size);
    return tags.size - 1;
  };

  const streams = byId(catalogue.streams);
  const rules = catalogue.rules.map((rule): ReadyRule => ({
    rule,
    when: rule.when.map(tag),
    anyOf: rule.anyOf.map(tag),
    heights: [
      ...Object.entries(rule.require).map(([scale, level]) => ({
        scale: SCALES.indexOf(scale as ScaleId),
        height: heightOf(scale as ScaleId, level),
      })),
      ...rule.streams.map((id) => ({
        scale: SCALES.indexOf('rags'),
        height: heightOf('rags', sure(streams.get(id)).level),
      })),
    ],
  }));

  const presence = presenceOf(catalogue);
  return {
    catalogue,
    air: makeAirBook(catalogue),
    airBurdens: new Map(),
    inks: byId(catalogue.inks),
    additives: byId(catalogue.additives),
    surfaces: readySurfaces(catalogue, setOf),
    agents,
    agentIndex,
    agentHazards: agents.map((agent) =>
      agentHazard(hazardFacts(sure(substances.get(agent.substance))), catalogue.bandRules),
    ),
    allAgents,
    followUps: agents.map((agent) => setOf(agent.followUps)),
    inkLifts: new Map(
      catalogue.inks.map((ink) => [
        ink.id,
        {
          wet: setOf(ink.liftsWet),
          dried: setOf(ink.liftsDried),
          never: setOf(ink.never),
          finish: ink.finishWith === undefined ? undefined : setOf(ink.finishWith),
        },
      ]),
    ),
    additiveLifts: new Map(
      catalogue.additives.map((additive) => [
        additive.id,
        {
          lifts: additive.lifts === undefined ? allAgents : setOf(additive.lifts),
          never: setOf(additive.never ?? []),
        },
      ]),
    ),
    substances,
    equipment: byId(catalogue.equipment),
    others: byId(catalogue.others),
    people: new Set(catalogue.people.map((person) => person.id)),
    streams,
    lines: byId(catalogue.lines),
    namesItems: new Set(
      catalogue.lines
        .filter((line) => `${line.head} ${line.rest}`.includes('{items}'))
        .map((line) => line.id),
    ),
    regions: byId(catalogue.regions),
    rules,
    presence,
    tagsOf: tagsByRow(presence),
    bandDemands: new Map(
      catalogue.bandRules.bands.map((band) => [
        band.band,
        Object.entries(band.require).map(([scale, level]) => ({
          row: `band.${band.id}`,
          scale: SCALES.indexOf(scale as ScaleId),
          height: heightOf(scale as ScaleId, level),
        })),
      ]),
    ),
    tags,
    worstBand: Math.max(...catalogue.bandRules.bands.map((band) => band.band)),
    heightOf,
    spoken: {
      ink: spokenNames(catalogue.inks),
      additive: spokenNames([
        ...catalogue.additives,
        ...catalogue.inks.filter((ink) => ink.extender === true),
      ]),
      surface: spokenNames(catalogue.surfaces),
      agent: spokenNames([...catalogue.agents, ...catalogue.others]),
      equipment: spokenNames([...catalogue.equipment, ...catalogue.others]),
    },
  };
};

const presenceOf = (catalogue: Catalogue): Book['presence'] => {
  const each = (
    kind: PresentKind,
    rows: readonly { readonly id: string; readonly marks: readonly string[] }[],
  ): ReadonlyMap<string, Presence> =>
    new Map(
      rows.map(({ id, marks }) => {
        const row = `${kind}.${id}`;
        return [id, { row, tags: [row, ...marks.map((mark) => `mark.${mark}`)] }];
      }),
    );
  return {
    ink: each('ink', catalogue.inks),
    additive: each('additive', catalogue.additives),
    surface: each('surface', catalogue.surfaces),
    agent: each('agent', catalogue.agents),
    equipment: each('equipment', catalogue.equipment),
    other: each('other', catalogue.others),
  };
};

const tagsByRow = (presence: Book['presence']): Book['tagsOf'] =>
  new Map(
    Object.values(presence).flatMap((rows) =>
      [...rows.values()].map(({ row, tags }) => [row, tags] as const),
    ),
  );

/** The id that typed text means, or the text itself, tidied, when no row has that name. */
export const resolveId = (book: Book, kind: keyof Book['spoken'], typed: string): string =>
  book.spoken[kind].get(asTyped(typed)) ?? typed.trim().replace(/\s+/g, ' ');

const readySurfaces = (
  catalogue: Catalogue,
  setOf: (ids: readonly string[]) => AgentSet,
): ReadonlyMap<string, ReadySurface> => {
  const stands = new Map<string, string[]>();
  const brief = new Map<string, string[]>();
  const push = (map: Map<string, string[]>, key: string, value: string): void => {
    map.set(key, [...(map.get(key) ?? []), value]);
  };
  for (const pair of catalogue.pairs) {
    const harms = pair.grade === 'harms' || pair.studioGrade === 'harms';
    if (harms) continue;
    push(stands, pair.surface, pair.agent);
    if (pair.grade === 'brief' || pair.studioGrade === 'brief')
      push(brief, pair.surface, pair.agent);
  }
  return new Map(
    catalogue.surfaces.map((surface) => [
      surface.id,
      {
        surface,
        stands: setOf(stands.get(surface.id) ?? []),
        brief: setOf(brief.get(surface.id) ?? []),
        leavesClean: setOf(
          catalogue.agents
            .filter(
              ({ residue }) =>
                residue === 'none' || (residue === 'oil-film' && surface.oilFilm === 'may-stay'),
            )
            .map((agent) => agent.id),
        ),
        choices: new Map<AgentSet, readonly Candidate[]>(),
      },
    ]),
  );
};
