/**
 * The way off, worked out a second time and in another manner: straight from the YAML files, by
 * trying every pair of agents on every rule in turn, with no tables made ready and no bits. Slow and
 * plain on purpose; what reasoning says is held against it.
 */
import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import type { Bench, Bottle, Mix } from '../../server/reasoning/index.js';

interface InkRow {
  readonly id: string;
  readonly liftsWet: readonly string[];
  readonly liftsDried: readonly string[];
  readonly never: readonly string[];
  readonly finishWith?: readonly string[];
}

interface AdditiveRow {
  readonly id: string;
  readonly lifts?: readonly string[];
  readonly never?: readonly string[];
}

interface SurfaceRow {
  readonly id: string;
  readonly method: string;
  readonly oilFilm: string;
  readonly brings: readonly string[];
}

interface AgentRow {
  readonly id: string;
  readonly substance: string;
  readonly residue: string;
  readonly followUps: readonly string[];
}

interface PairRow {
  readonly surface: string;
  readonly agent: string;
  readonly grade: string;
  readonly studioGrade?: string;
}

interface SubstanceRow {
  readonly id: string;
  readonly molarMassGMol?: number;
  readonly flashPointC?: number;
  readonly boilingPointC?: number;
  readonly vapourPressurePa?: number;
  readonly hazardCodes: readonly string[];
  readonly limits: readonly {
    readonly kind: string;
    readonly ppm?: number;
    readonly mgM3?: number;
  }[];
}

interface Ranks {
  readonly nonVolatileBelowPa: number;
  readonly vapour: readonly { readonly below: number; readonly rank: number }[];
  readonly noLimitRank: number;
  readonly fire: Readonly<Record<string, number>>;
  readonly fireCodes: Readonly<Record<string, string>>;
  readonly health: Readonly<Record<string, number>>;
  readonly bands: readonly { readonly band: number }[];
}

const read = (name: string): unknown =>
  parse(readFileSync(new URL(`../../rules/${name}.yaml`, import.meta.url), 'utf8'));

const INKS = read('inks') as readonly InkRow[];
const ADDITIVES = read('additives') as readonly AdditiveRow[];
const SURFACES = read('surfaces') as readonly SurfaceRow[];
const AGENTS = read('agents') as readonly AgentRow[];
const PAIRS = read('pairs') as readonly PairRow[];
const SUBSTANCES = read('substances') as readonly SubstanceRow[];
const { bandRules: RANKS } = read('precautions') as { readonly bandRules: Ranks };

const WORST = Math.max(...RANKS.bands.map((each) => each.band));

/** What an agent comes to: its ranks for vapour, fire and health, the worst of them and their sum. */
export interface Harm {
  readonly ranks: readonly number[];
  readonly band: number;
  readonly hazard: number;
}

/** Harm of one agent; where the studio has bottles of its own, that of the harshest of them. */
export const harmOf = (agentId: string, bottles: readonly Bottle[] = []): Harm => {
  const own = bottles.filter((each) => each.agent === agentId);
  const harms = (own.length === 0 ? [undefined] : own).map((bottle) => harmWith(agentId, bottle));
  harms.sort((a, b) => b.band - a.band || b.hazard - a.hazard);
  return harms[0] as Harm;
};

const harmWith = (agentId: string, bottle: Bottle | undefined): Harm => {
  const agent = AGENTS.find((each) => each.id === agentId);
  const row = SUBSTANCES.find((each) => each.id === agent?.substance);
  if (row === undefined) throw new Error(`no facts for ${agentId}`);
  const ranks = [
    vapourRank(row, bottle),
    fireRank(row, bottle),
    healthRank(bottle?.hazardCodes ?? row.hazardCodes),
  ];
  return { ranks, band: Math.max(...ranks), hazard: ranks.reduce((sum, rank) => sum + rank) };
};

const vapourRank = (row: SubstanceRow, bottle: Bottle | undefined): number => {
  const pascals = bottle?.vapourPressurePa ?? row.vapourPressurePa ?? 0;
  if (pascals < RANKS.nonVolatileBelowPa) return 0;
  const ppm = pascals / 0.101325;
  const mgM3 = row.molarMassGMol && (pascals * row.molarMassGMol) / (0.008314462618 * 293.15);
  const ratios: number[] = [];
  if (bottle?.limitMgM3 !== undefined) {
    if (mgM3 !== undefined) ratios.push(mgM3 / bottle.limitMgM3);
  } else {
    for (const limit of row.limits) {
      if (limit.kind !== 'long-term') continue;
      if (limit.ppm !== undefined) ratios.push(ppm / limit.ppm);
      if (limit.mgM3 !== undefined && mgM3 !== undefined) ratios.push(mgM3 / limit.mgM3);
    }
  }
  if (ratios.length === 0) return RANKS.noLimitRank;
  const worst = Math.max(...ratios);
  for (const step of RANKS.vapour) if (worst < step.below) return step.rank;
  return RANKS.noLimitRank;
};

const fireRank = (row: SubstanceRow, bottle: Bottle | undefined): number => {
  const flash = bottle?.flashPointC ?? row.flashPointC;
  const boils = bottle?.boilingPointC ?? row.boilingPointC;
  // A flash point of its own says how a bottle burns, unless it has codes of its own as well.
  const codes = bottle?.hazardCodes ?? (bottle?.flashPointC === undefined ? row.hazardCodes : []);
  const categories = codes.flatMap((code) => RANKS.fireCodes[code] ?? []);
  if (flash === undefined || flash > 93) categories.push('none');
  else if (flash > 60) categories.push('4');
  else if (flash >= 23) categories.push('3');
  else categories.push(boils !== undefined && boils > 35 ? '2' : '1');
  return Math.max(...categories.map((category) => RANKS.fire[category] ?? WORST));
};

const healthRank = (codes: readonly string[]): number => {
  let worst = 0;
  for (const code of codes) {
    if (code in RANKS.fireCodes) continue;
    worst = Math.max(worst, RANKS.health[code] ?? WORST);
  }
  return worst;
};

/** The stricter of what the material and what the studio says. */
export const gradeOf = (surface: string, agent: string): string => {
  const pair = PAIRS.find((each) => each.surface === surface && each.agent === agent);
  const grades = [pair?.grade, pair?.studioGrade];
  return ['harms', 'brief', 'ok'].find((grade) => grades.includes(grade)) ?? 'harms';
};

const grades = new Map(
  SURFACES.flatMap((surface) =>
    AGENTS.map((agent) => [`${surface.id} ${agent.id}`, gradeOf(surface.id, agent.id)] as const),
  ),
);

/** One way to take a mix off a surface: an agent, perhaps another after it. */
export interface Way {
  readonly agents: readonly string[];
  readonly band: number;
  readonly hazard: number;
}

/** A mix on a surface with all ways that do the job and do no harm; none: it is stuck. */
export interface Job {
  readonly mix: string;
  readonly surface: string;
  /** False where no agent is ever used (scraped, spent as a rag, kept clean). */
  readonly isWashed: boolean;
  readonly ways: readonly Way[];
}

/** Which surfaces a mix is on: those named for it or all, and the parts that come with them. */
const surfacesUnder = (bench: Bench, mix: Mix): ReadonlySet<string> => {
  const named = mix.on ?? [...bench.surfaces, ...bench.mixes.flatMap((each) => each.on ?? [])];
  const under = new Set(named);
  for (const id of named) {
    for (const brought of SURFACES.find((row) => row.id === id)?.brings ?? []) under.add(brought);
  }
  return under;
};

/** Every mix on every surface that it is on, with all the ways off. */
export const jobsOf = (bench: Bench): readonly Job[] =>
  bench.mixes.flatMap((mix) => {
    const asks = asksOf(mix);
    return [...surfacesUnder(bench, mix)].map((surface): Job => {
      const row = SURFACES.find((each) => each.id === surface);
      const isWashed = row === undefined || row.method === 'wash';
      const ways =
        row === undefined || !isWashed || asks === undefined ? [] : remembered(bench, asks, row);
      return { mix: mix.id, surface, isWashed, ways };
    });
  });

/** The ways of the mildest band. */
export const mildestWays = (job: Job): readonly Way[] => {
  const least = Math.min(...job.ways.map((way) => way.band));
  return job.ways.filter((way) => way.band === least);
};

/** What a mix asks of the agents that take it off; undefined when something in it is not known. */
interface Asks {
  readonly liftedBy: readonly AgentRow[];
  readonly untouchedBy: readonly string[];
  /** Ids of which one must be used last, for each ink that says so. */
  readonly finishes: readonly (readonly string[])[];
}

const asksOf = (mix: Mix): Asks | undefined => {
  const inks = mix.parts.map((part) => INKS.find((row) => row.id === part.ink));
  const additives = mix.additives.map((dose) => ADDITIVES.find((row) => row.id === dose.additive));
  if (inks.length === 0 || inks.includes(undefined) || additives.includes(undefined)) {
    return undefined;
  }
  return {
    liftedBy: AGENTS.filter(
      ({ id }) =>
        inks.every((row) => (mix.dried ? row?.liftsDried : row?.liftsWet)?.includes(id)) &&
        !inks.some((row) => row?.never.includes(id)) &&
        additives.every((row) => row?.lifts?.includes(id) ?? true),
    ),
    untouchedBy: additives.flatMap((row) => row?.never ?? []),
    finishes: inks.flatMap((row) => (row?.finishWith === undefined ? [] : [row.finishWith])),
  };
};

const usual = new Map<string, readonly Way[]>();

/** The ways of a bench with all at hand and no bottles of its own are worked out once for all mixes alike. */
const remembered = (bench: Bench, asks: Asks, surface: SurfaceRow): readonly Way[] => {
  if (bench.agentsAtHand !== undefined || bench.bottles.length > 0) {
    return waysOff(bench, asks, surface);
  }
  const { liftedBy, untouchedBy, finishes } = asks;
  const key = JSON.stringify([surface.id, liftedBy.map(({ id }) => id), untouchedBy, finishes]);
  const ways = usual.get(key) ?? waysOff(bench, asks, surface);
  usual.set(key, ways);
  return ways;
};

/** All ways to do it without harm: one agent, or one and another that takes off what it left. */
const waysOff = (bench: Bench, asks: Asks, surface: SurfaceRow): readonly Way[] => {
  const usable = AGENTS.filter(
    ({ id }) =>
      (bench.agentsAtHand?.includes(id) ?? true) &&
      grades.get(`${surface.id} ${id}`) !== 'harms' &&
      !asks.untouchedBy.includes(id),
  );
  const finishes = ({ id }: AgentRow): boolean => asks.finishes.every((ids) => ids.includes(id));
  const leavesFilm = ({ residue }: AgentRow): boolean =>
    residue !== 'none' && !(residue === 'oil-film' && surface.oilFilm === 'may-stay');

  const ways: Way[] = [];
  for (const first of usable) {
    if (!asks.liftedBy.includes(first)) continue;
    if (!finishes(first)) {
      for (const last of usable) {
        if (finishes(last) && !leavesFilm(last)) ways.push(wayWith(bench, first, last));
      }
    } else if (leavesFilm(first)) {
      for (const last of usable) {
        if (first.followUps.includes(last.id)) ways.push(wayWith(bench, first, last));
      }
    } else {
      ways.push(wayWith(bench, first));
    }
  }
  return ways;
};

const wayWith = (bench: Bench, ...agents: readonly AgentRow[]): Way => {
  const harms = agents.map((agent) => harm(bench, agent.id));
  return {
    agents: agents.map((agent) => agent.id),
    band: Math.max(...harms.map((each) => each.band)),
    hazard: harms.reduce((sum, each) => sum + each.hazard, 0),
  };
};

const known = new Map<string, Harm>();

const harm = (bench: Bench, agent: string): Harm => {
  if (bench.bottles.length > 0) return harmOf(agent, bench.bottles);
  const facts = known.get(agent) ?? harmOf(agent);
  known.set(agent, facts);
  return facts;
};
