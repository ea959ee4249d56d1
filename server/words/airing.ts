import type { Region } from '../reasoning/index.js';
import { amountText, numberText } from './amounts.js';
import type { Messages } from './messages.js';

const HOUR = 60;
const DAY = 24 * HOUR;
/** Up to here minutes are said, then quarters of an hour, then whole hours. */
const MINUTES_UP_TO = 2 * HOUR;
const QUARTERS_UP_TO = 6 * HOUR;
const FIVE = 5;
const QUARTER = 15;

/** Cubic feet a minute in one cubic metre an hour (1 cfm = 1.699 m3/h, by definition of the foot). */
const CFM = 0.5886;

/** So that 35 is not made 40 by the last digit of a computation. */
const HAIR = 1e-9;

const upTo = (step: number, value: number): number => Math.ceil(value / step - HAIR) * step + 0;

/** An airing time rounded up to what people can say: to five minutes, a quarter, an hour. */
function airingUp(minutes: number): number {
  const inFives = Math.max(FIVE, upTo(FIVE, minutes));
  if (inFives < MINUTES_UP_TO) return inFives;
  return upTo(minutes <= QUARTERS_UP_TO ? QUARTER : HOUR, minutes);
}

/** An airing time, rounded up: "35 minutes", "2.25 hours", "more than a day". */
export function airingText(minutes: number, messages: Messages): string {
  if (minutes > DAY) return messages('airing.overADay');
  const shown = airingUp(minutes);
  return shown < MINUTES_UP_TO
    ? messages('airing.minutes', { n: shown })
    : messages('airing.hours', { n: numberText(shown / HOUR) });
}

/** Minutes that a clock can count down; 0 when it is more than a day. */
export const airingClock = (minutes: number): number => (minutes > DAY ? 0 : airingUp(minutes));

/** Airing time that is spared, rounded down. */
export function airingSpared(minutes: number, messages: Messages): string {
  if (minutes > DAY) return messages('airing.overADay');
  return minutes < MINUTES_UP_TO
    ? messages('airing.minutes', { n: Math.floor(minutes) })
    : messages('airing.hours', { n: numberText(Math.floor(minutes / HOUR)) });
}

/** Most millilitres that a room takes, rounded down to two figures. */
export const mostText = (ml: number, units: Region['units']): string => {
  const most = downToTwo(ml);
  return amountText({ low: most, high: most }, 'ml', units);
};

/** A flow of air, rounded up to two figures; cubic feet a minute beside it in US units. */
export function flowText(m3PerHour: number, units: Region['units'], messages: Messages): string {
  const metric = messages('airing.flow', { n: numberText(upToTwo(m3PerHour)) });
  return units === 'us'
    ? `${metric} (${messages('airing.cfm', { n: numberText(upToTwo(m3PerHour * CFM)) })})`
    : metric;
}

const stepOf = (value: number): number =>
  value <= 0 ? 1 : Math.max(1, 10 ** (Math.floor(Math.log10(value)) - 1));

/** To two figures and no finer than a whole: up, against the user. */
export const upToTwo = (value: number): number => upTo(stepOf(value), value);

/** The same, down. */
export const downToTwo = (value: number): number =>
  Math.floor(value / stepOf(value) + HAIR) * stepOf(value);
