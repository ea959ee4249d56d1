import type { Bench, Mix, StuckReason, Surface } from '../types.js';
import { type AgentSet, sizeOf } from '../book/agentSet.js';
import type { Book, ReadySurface } from '../book/book.js';
import { sure } from '../book/sure.js';
import type { AgentHazard } from '../hazard/agentHazard.js';
import type { Candidate } from './candidate.js';

/** A mix on a surface, and what may be done: choices of the mildest band, nothing to do, or stuck. */
export interface Task {
  readonly mix: Mix;
  readonly surfaceId: string;
  readonly surface: Surface | undefined;
  readonly choices: readonly Candidate[];
  readonly stuck: StuckReason | undefined;
  /** Mildest choices were everything at hand; only when stuck for want of them. */
  readonly wouldDo: readonly Candidate[];
  /**
   * Agents that any part of the mix alone could be taken off with here, and what may follow them.
   * Whatever is chosen for a mix with less in it is among them.
   */
  readonly mightUse: AgentSet;
  /** Band that it counts as, the worst when stuck; below all of them where nothing is to be done. */
  readonly band: number;
}

/** Agents that take every part of a mix off, and those that must not touch it. */
interface MixLifts {
  readonly lifts: AgentSet;
  /** Not even as a follow-up. */
  readonly never: AgentSet;
  readonly finish: AgentSet | undefined;
  readonly known: boolean;
  /** Agents that take at least one part off, and what may follow them. */
  readonly anyPart: AgentSet;
}

/**
 * What lifts a mix: an agent must lift every part, and an oil-based additive narrows it further, so
 * that any share of plain oil in washable ink leaves only the oil routes.
 */
const mixLifts = (book: Book, mix: Mix): MixLifts => {
  let lifts = book.allAgents;
  let anyPart = 0;
  let never = 0;
  let finish: AgentSet | undefined;
  let known = mix.parts.length > 0;
  for (const part of mix.parts) {
    const ink = book.inkLifts.get(part.ink);
    if (ink === undefined) {
      known = false;
      continue;
    }
    const liftsPart = (mix.dried ? ink.dried : ink.wet) & ~ink.never;
    lifts &= liftsPart;
    anyPart |= liftsPart | (ink.finish ?? 0);
    if (ink.finish !== undefined) finish = (finish ?? book.allAgents) & ink.finish;
  }
  for (const dose of mix.additives) {
    const additive = book.additiveLifts.get(dose.additive);
    if (additive === undefined) {
      known = false;
      continue;
    }
    lifts &= additive.lifts;
    never |= additive.never;
  }
  book.followUps.forEach((next, agent) => {
    if ((anyPart & (1 << agent)) !== 0) anyPart |= next;
  });
  return { lifts: lifts & ~never, never, finish, known, anyPart };
};

/** Every mix on every surface it is on, with the choices of the mildest band for each. */
export const tasksOf = (
  book: Book,
  bench: Bench,
  surfaces: readonly string[],
  hazards: readonly AgentHazard[],
): readonly Task[] => {
  const hand = atHand(book, bench);
  return bench.mixes.flatMap((mix) => {
    const lifts = mixLifts(book, mix);
    return surfacesOf(book, mix, surfaces).map((id) => taskOf(book, mix, lifts, id, hand, hazards));
  });
};

const atHand = (book: Book, bench: Bench): AgentSet =>
  bench.agentsAtHand === undefined
    ? book.allAgents
    : bench.agentsAtHand.reduce((set, id) => {
        const index = book.agentIndex.get(id);
        return index === undefined ? set : set | (1 << index);
      }, 0);

const surfacesOf = (book: Book, mix: Mix, surfaces: readonly string[]): readonly string[] => {
  const { on } = mix;
  if (on === undefined) return surfaces;
  const brought = on.flatMap((id) => book.surfaces.get(id)?.surface.brings ?? []);
  return surfaces.filter((id) => on.includes(id) || brought.includes(id));
};

const taskOf = (
  book: Book,
  mix: Mix,
  lifts: MixLifts,
  surfaceId: string,
  hand: AgentSet,
  hazards: readonly AgentHazard[],
): Task => {
  const ready = book.surfaces.get(surfaceId);
  const mightUse = lifts.anyPart & (ready?.stands ?? book.allAgents);
  const surface = ready?.surface;
  const stuckFor = (stuck: StuckReason): Task => ({
    ...{ mix, surfaceId, surface, choices: [], wouldDo: [], mightUse },
    band: book.worstBand,
    stuck,
  });
  if (ready === undefined) return stuckFor('unknown-surface');
  if (ready.surface.method !== 'wash') {
    return { ...stuckFor('all-harm'), mightUse: 0, band: -1, stuck: undefined };
  }
  if (!lifts.known) return stuckFor('unknown-ink');
  if (lifts.lifts === 0) return stuckFor('parts-share-no-agent');
  const choices = mildestChoices(book, lifts, ready, hand, hazards);
  if (choices[0] !== undefined) {
    const { band } = choices[0];
    return { mix, surfaceId, surface, choices, wouldDo: [], mightUse, band, stuck: undefined };
  }
  const wouldDo =
    hand === book.allAgents ? [] : mildest(candidates(book, lifts, ready, book.allAgents, hazards));
  if (wouldDo[0] === undefined) return stuckFor('all-harm');
  const band = Math.max(wouldDo[0].band, bandOf(hazards, mightUse & hand));
  return { mix, surfaceId, surface, choices: [], wouldDo, mightUse, band, stuck: 'not-at-hand' };
};

/** The harshest band among these agents; 0 when there are none. */
const bandOf = (hazards: readonly AgentHazard[], agents: AgentSet): number =>
  hazards.reduce(
    (worst, hazard, agent) =>
      (agents & (1 << agent)) === 0 ? worst : Math.max(worst, hazard.band),
    0,
  );

/**
 * The choices of the mildest band. Remembered for the generic agents, all at hand, which is nearly
 * every task: the tables have few different sets of agents, so the memory stays small.
 */
const mildestChoices = (
  book: Book,
  lifts: MixLifts,
  ready: ReadySurface,
  hand: AgentSet,
  hazards: readonly AgentHazard[],
): readonly Candidate[] => {
  const isUsual =
    hand === book.allAgents &&
    hazards === book.agentHazards &&
    lifts.never === 0 &&
    lifts.finish === undefined;
  if (!isUsual) return mildest(candidates(book, lifts, ready, hand, hazards));
  const known = ready.choices.get(lifts.lifts);
  if (known !== undefined) return known;
  const choices = mildest(candidates(book, lifts, ready, hand, hazards));
  ready.choices.set(lifts.lifts, choices);
  return choices;
};

const mildest = (all: readonly Candidate[]): readonly Candidate[] => {
  const band = all.reduce((least, each) => Math.min(least, each.band), Number.MAX_SAFE_INTEGER);
  return all.filter((each) => each.band === band);
};

const candidates = (
  book: Book,
  lifts: MixLifts,
  { stands, brief, leavesClean }: ReadySurface,
  hand: AgentSet,
  hazards: readonly AgentHazard[],
): readonly Candidate[] => {
  const usable = stands & hand & ~lifts.never;
  const found: Candidate[] = [];
  for (let agent = 0; agent < book.agents.length; agent += 1) {
    if ((lifts.lifts & usable & (1 << agent)) === 0) continue;
    const needed = followUpsNeeded(book, lifts, leavesClean, agent);
    if (needed === undefined) {
      found.push(candidate(agent, undefined, brief, hazards));
      continue;
    }
    for (let next = 0; next < book.agents.length; next += 1) {
      if ((needed & usable & (1 << next)) !== 0) found.push(candidate(agent, next, brief, hazards));
    }
  }
  return found;
};

/** Agents of which one must follow; undefined when none need. */
const followUpsNeeded = (
  book: Book,
  lifts: MixLifts,
  leavesClean: AgentSet,
  agent: number,
): AgentSet | undefined => {
  const bit = 1 << agent;
  const { finish } = lifts;
  if (finish !== undefined && (finish & bit) === 0) return finish & leavesClean;
  return (leavesClean & bit) === 0 ? book.followUps[agent] : undefined;
};

const candidate = (
  agent: number,
  followUp: number | undefined,
  brief: AgentSet,
  hazards: readonly AgentHazard[],
): Candidate => {
  const first = sure(hazards[agent]);
  const second = followUp === undefined ? undefined : hazards[followUp];
  const agents = (1 << agent) | (followUp === undefined ? 0 : 1 << followUp);
  return {
    agent,
    followUp,
    agents,
    band: Math.max(first.band, second?.band ?? 0),
    hazard: first.hazard + (second?.hazard ?? 0),
    briefs: sizeOf(agents & brief),
  };
};
