import type { Room } from '../../reasoning/index.js';
import type { KnownIds } from './known.js';
import { ACCEPTS, NUMBERS, type NumberName } from './limits.js';
import { readNumber } from './number.js';
import type { Problem } from './problem.js';
import { cleanText, shown } from './text.js';
import { ROOM_NUMBERS, type RoomNumber, type TypedRoom } from './typedBench.js';

/** Parts of what was typed that more than one page asks for. */

/** Takes a problem down and lets the reading go on, so that all are told at once. */
export type Tell = (path: string, field: string, got: string, accepts: string) => void;

/** Takes problems down in that list, each with what was typed short enough to be shown. */
export const taking =
  (problems: Problem[]): Tell =>
  (path, field, got, accepts) => {
    problems.push({ path, field, got: shown(got), accepts });
  };

/** The region that was typed; told as a problem when no table knows it. */
export function readRegion(typed: string, field: string, known: KnownIds, tell: Tell): string {
  const region = cleanText(typed).toLowerCase();
  if (region !== '' && !known.regions.has(region)) {
    tell('/region', field, typed, `one of ${[...known.regions].join(', ')}`);
  }
  return region;
}

const SIDES: ReadonlySet<string> = new Set(['lengthM', 'widthM', 'heightM']);

/** The room that was typed, if anything was; `fields` are those of the page that it is typed on. */
export function readRoom(
  typed: TypedRoom,
  fields: Readonly<Record<RoomNumber, string>>,
  tell: Tell,
): Room | undefined {
  const air = cleanText(typed.air);
  const read = ROOM_NUMBERS.flatMap((name) => {
    const value = optional(name, typed[name], `/room/${name}`, fields[name], tell);
    return value === undefined ? [] : [[name, value] as const];
  });
  const sides = read.filter(([name]) => SIDES.has(name)).map(([, side]) => side);
  const isTold = sides.some(Number.isNaN);
  if (!isTold && sides.length > 0 && sides.length < SIDES.size) {
    tell('/room', fields.lengthM, sides.join(' x '), ACCEPTS.roomSides);
  }
  if (read.length === 0 && air === '') return undefined;
  // Three sides say more than a volume, and an address holds one of the two.
  const kept = sides.length === SIDES.size ? read.filter(([name]) => name !== 'volumeM3') : read;
  return { ...Object.fromEntries(kept), ...(air !== '' && { air }) };
}

/** The number typed, if anything was. */
export function optional(
  name: NumberName,
  typed: string,
  path: string,
  field: string,
  tell: Tell,
): number | undefined {
  return typed.trim() === '' ? undefined : number(name, typed, path, field, tell);
}

/** The number typed; NaN once it has been told as a problem. */
export function number(
  name: NumberName,
  typed: string,
  path: string,
  field: string,
  tell: Tell,
): number {
  const value = readNumber(typed);
  const { low, high } = NUMBERS[name];
  const isWrong =
    value === undefined ||
    value < low ||
    value > high ||
    (name === 'count' && !Number.isInteger(value));
  if (!isWrong) return value;
  tell(path, field, typed.trim() === '' ? 'nothing' : typed, ACCEPTS[name]);
  return Number.NaN;
}
