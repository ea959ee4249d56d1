import type { AirAnswer } from '../types.js';
import type { Book } from '../book/book.js';
import { SPOKEN } from './lineTexts.js';
import type { Spoken } from './spoken.js';

/** What the vapour of a sheet's own route asks of its room: how much, whether at all, how long after. */
export const airLines = (book: Book, air: AirAnswer | undefined): readonly Spoken[] => {
  if (air === undefined) return [];
  const rowsOf = (agent: string | undefined): readonly string[] =>
    agent !== undefined && book.agentIndex.has(agent) ? [`agent.${agent}`] : [];
  const agents = air.mostMl.flatMap(({ agent }) => rowsOf(agent));
  const { situation } = air.room;
  const because = [...(situation === undefined ? [] : [`airing.${situation}`]), ...agents];
  return [
    ...overLines(air, ['airing.most-share', ...because]),
    ...air.mostMl.flatMap(({ agent, carefulMl }) =>
      // Of what nobody knows no amount is named, as if it were fine.
      agent === undefined || carefulMl === undefined || !book.agentIndex.has(agent)
        ? []
        : [mostLine(agent, carefulMl)],
    ),
    airOutLine(air, ['airing.target-share', ...because]),
  ];
};

/** Less than a millilitre is none. */
const mostLine = (agent: string, ml: number): Spoken => ({
  text: ml < 1 ? SPOKEN.airNone : SPOKEN.airMost,
  values: { agent, most: ml },
  about: agent,
  because: ['airing.most-share', `agent.${agent}`],
});

const overLines = (air: AirAnswer, because: readonly string[]): readonly Spoken[] => {
  const isOver = air.cautions.some(({ id }) => id === 'over-limit' || id === 'over-lel');
  if (!isOver) return [];
  const { fanNeededM3PerHour } = air;
  return [
    fanNeededM3PerHour === undefined
      ? { text: SPOKEN.airNoFan, because }
      : { text: SPOKEN.airOver, values: { flow: fanNeededM3PerHour }, because },
  ];
};

const airOutLine = ({ airOutMin }: AirAnswer, because: readonly string[]): Spoken =>
  airOutMin === undefined
    ? { text: SPOKEN.airNeverClears, because }
    : { text: SPOKEN.airOut, values: { airing: airOutMin }, because };
