import type { AirAnswer, AirRange } from '../../reasoning/index.js';
import type { Words } from '../../words/index.js';

/** The four numbers of an estimate in words, each rounded against the reader; then fire. */
export interface AirAnswersView {
  /** How long to air; says so when it never clears. */
  readonly airOut: string;
  readonly airOutNotes: readonly string[];
  readonly level: string;
  readonly against: string;
  readonly isOver: boolean;
  readonly most: readonly { readonly text: string; readonly said: string }[];
  readonly fan: string;
  readonly fanNow: string;
  /** The room as it was counted. */
  readonly basis: readonly string[];
  readonly fire: string;
}

/** The answers of an estimate. */
export function airAnswersView(answer: AirAnswer, words: Words): AirAnswersView {
  const { region, room, combinedShare, ranges, shareOfLel } = answer;
  const { message } = words;
  return {
    ...airOutOf(answer, words),
    level: words.airLevel(answer.worst15MinMgM3),
    against: message('air.against', {
      share: words.airShare(combinedShare),
      ...endsOf(ranges.combinedShare, words),
    }),
    isOver: combinedShare > 1,
    most: answer.mostMl.map((most) => ({
      text: mostText(most, answer, words),
      said: message('air.said', { ml: words.airMost(most.saidMl, region) }),
    })),
    fan: fanText(answer, words),
    fanNow: message('air.fanNow', { flow: words.airFlow(room.airM3PerHour, region) }),
    basis: basisOf(answer, words),
    fire: message('air.fireSays', {
      share: words.airShare(shareOfLel),
      ...endsOf(ranges.shareOfLel, words),
    }),
  };
}

/** The most of one liquid at the worst end of what was guessed, with its name where there are several. */
export function mostText(
  { agent, substance, carefulMl }: AirAnswer['mostMl'][number],
  { mostMl, region }: Pick<AirAnswer, 'mostMl' | 'region'>,
  words: Words,
): string {
  const most = words.airMost(carefulMl, region);
  if (mostMl.length < 2) return most;
  const name =
    agent === undefined ? words.name('substance', substance) : words.short('agent', agent);
  return words.message('air.mostOf', { agent: name, ml: most });
}

/** An airing time; absent: it never clears. */
export const airOutText = (minutes: number | undefined, words: Words): string =>
  minutes === undefined ? words.message('air.never') : words.airing(minutes);

function airOutOf(
  { airOutMin, ranges }: AirAnswer,
  words: Words,
): Pick<AirAnswersView, 'airOut' | 'airOutNotes'> {
  const { message } = words;
  if (airOutMin === undefined) {
    return { airOut: message('air.neverClears'), airOutNotes: [message('air.thisAiring')] };
  }
  const { low, high } = ranges.airOutMin;
  const values = { low: airOutText(low, words), high: airOutText(high, words) };
  return {
    airOut: message('air.about', { time: words.airing(airOutMin) }),
    airOutNotes: [
      message('air.afterLast'),
      high === undefined ? message('air.maybeNever', values) : message('air.maybe', values),
    ],
  };
}

function fanText({ fanNeededM3PerHour: flow, region }: AirAnswer, words: Words): string {
  if (flow === undefined) return words.message('air.fanNone');
  return flow === 0 ? words.message('air.fanNil') : words.airFlow(flow, region);
}

/** Both ends are there: only airing may have no end. */
const endsOf = ({ low = 0, high = 0 }: AirRange, words: Words) => ({
  low: words.airShare(low),
  high: words.airShare(high),
});

/** Digits that somebody can picture. */
const TENTHS = 10;
const tenths = (value: number): number => Math.round(value * TENTHS) / TENTHS;

function basisOf({ room, region }: AirAnswer, words: Words): AirAnswersView['basis'] {
  const { number, message } = words;
  const caught = message('air.basisCaught', { share: words.airShare(room.captured) });
  return [
    message('air.basis', {
      volume: words.airVolume(tenths(room.volumeM3), region),
      flow: words.airFlow(room.airM3PerHour, region),
      changes: number(tenths(room.airChangesPerHour)),
      mixing: number(room.mixingFactor),
      warm: number(room.temperatureC),
    }),
    ...(room.captured > 0 ? [caught] : []),
  ];
}
