import { type Bench, type Room, SCALES } from '../types.js';
import { makeDay } from '../air/day.js';
import { burdenOf } from '../air/levels.js';
import { liquidsOf } from '../air/liquids.js';
import { COUNTED, roomOf, volumeOf, zonesOf } from '../air/room.js';
import type { Book, Demand } from '../book/book.js';
import { sure } from '../book/sure.js';
import type { AgentHazard } from '../hazard/agentHazard.js';
import type { Task } from '../routes/candidates.js';

const AIR = SCALES.indexOf('air');

/** Row of airing.yaml that says how much of a limit is planned for at most. */
const MOST = 'airing.most-share';

/** A liquid that may be put out, and how much of it at most. */
interface Pour {
  readonly agent: string;
  readonly ml: number;
}

/**
 * The level of air that the vapour asks of this room, when it is more than the rules ask for already
 * (`floor`). Every surface counts with the worst that it might be washed with, up to the band that
 * it is at: like the bands themselves, so that more on the bench can only raise it.
 */
export const airDemand = (
  book: Book,
  bench: Bench,
  tasks: readonly Task[],
  hazards: readonly AgentHazard[],
  floor: number,
): Demand | undefined => {
  if (bench.room === undefined || volumeOf(bench.room) === undefined) return undefined;
  const washes = washesOf(book, bench, tasks, hazards);
  const { situations } = book.catalogue.air;
  const last = situations.length;
  for (let height = floor; height < last; height += 1) {
    const situation = sure(situations[height]).id;
    const burden = ({ agent, ml }: Pour): number => ml * burdenPerMl(book, bench, agent, situation);
    const all =
      washes.reduce((sum, pours) => sum + Math.max(0, ...pours.map(burden)), 0) +
      bench.uses.reduce((sum, use) => sum + burden(use), 0);
    if (all <= 1) return height === floor ? undefined : { row: MOST, scale: AIR, height };
  }
  return floor >= last ? undefined : { row: MOST, scale: AIR, height: last };
};

/** For every surface, what it might be washed with of all that is at hand. */
const washesOf = (
  book: Book,
  { agentsAtHand }: Bench,
  tasks: readonly Task[],
  hazards: readonly AgentHazard[],
): readonly (readonly Pour[])[] => {
  const bySurface = new Map<string, Map<string, Pour>>();
  for (const { surfaceId, surface, mightUse, band } of tasks) {
    const pours = bySurface.get(surfaceId) ?? new Map<string, Pour>();
    bySurface.set(surfaceId, pours);
    book.agents.forEach((agent, index) => {
      const hazard = sure(hazards[index]);
      const isAtHand = agentsAtHand?.includes(agent.id) ?? true;
      const might = isAtHand && (mightUse & (1 << index)) !== 0 && hazard.band <= band;
      if (!might || hazard.vapourRank === 0) return;
      pours.set(agent.id, { agent: agent.id, ml: agent.ml[surface?.size ?? 'large'].high });
    });
  }
  return [...bySurface.values()].map((pours) => [...pours.values()]);
};

/** Enough for all agents in all situations of a few rooms. */
const MOST_KNOWN = 500;

/** What one millilitre of an agent, alone in this room, reaches of the most that is planned for. */
const burdenPerMl = (book: Book, bench: Bench, agent: string, situation: string): number => {
  // Whatever was measured is of the room as it is; this asks about another.
  const room: Room = {
    ...bench.room,
    airChangesPerHour: undefined,
    fanM3PerHour: undefined,
    air: situation,
  };
  const bottles = bench.bottles.filter((bottle) => bottle.agent === agent);
  const key = JSON.stringify([agent, room, bench.region, bottles]);
  const known = book.airBurdens.get(key);
  if (known !== undefined) return known;
  const counted = roomOf(book.air, room, COUNTED, 2);
  const input = { room, bottles, uses: [{ agent, ml: 1 }] };
  const region = sure(book.regions.get(bench.region));
  const { liquids } = liquidsOf(book.air, input, region, counted.temperatureC);
  const setting = { zones: zonesOf(counted), captured: counted.captured, drying: 1 };
  const burden = burdenOf(book.air.figures, makeDay(book.air, liquids, setting));
  if (book.airBurdens.size >= MOST_KNOWN) book.airBurdens.clear();
  book.airBurdens.set(key, burden);
  return burden;
};
