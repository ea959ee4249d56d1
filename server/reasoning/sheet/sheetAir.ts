import type { AirInput, AirUse, Amounts, Bench } from '../types.js';
import { volumeOf } from '../air/room.js';
import type { Book } from '../book/book.js';
import { sure } from '../book/sure.js';
import type { AgentHazard } from '../hazard/agentHazard.js';

/**
 * What is asked about the air of a bench in its room: the millilitres that its routes take at most
 * and those that were said to be in use (the larger, where both are known). Undefined where nobody
 * said how large the room is, or nothing gives off vapour.
 */
export const sheetAir = (
  book: Book,
  bench: Bench,
  amounts: Amounts,
  hazards: readonly AgentHazard[],
): AirInput | undefined => {
  const { room, region, bottles } = bench;
  if (room === undefined || volumeOf(room) === undefined) return undefined;
  const uses = usesOf(book, bench, amounts, hazards);
  return uses.length === 0 ? undefined : { region, room, bottles, uses };
};

const usesOf = (
  book: Book,
  bench: Bench,
  amounts: Amounts,
  hazards: readonly AgentHazard[],
): readonly AirUse[] => {
  const poured = new Map<string, number>();
  for (const { agent, ml } of bench.uses) poured.set(agent, (poured.get(agent) ?? 0) + ml);
  for (const { agent, range } of amounts.ml) {
    poured.set(agent, Math.max(range.high, poured.get(agent) ?? 0));
  }
  return [...poured]
    .filter(([agent]) => {
      const index = book.agentIndex.get(agent);
      return index === undefined || sure(hazards[index]).vapourRank > 0;
    })
    .map(([agent, ml]) => ({ agent, ml }));
};
