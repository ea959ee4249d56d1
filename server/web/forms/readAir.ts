import type { AirInput, AirUse } from '../../reasoning/index.js';
import {
  AIR_ROOM_FIELDS,
  AIR_USE_FIELDS,
  type AirForm,
  type AirUseText,
  type TypedAirUse,
} from './airForm.js';
import { canonicalAir } from './canonicalAir.js';
import type { KnownIds } from './known.js';
import { ACCEPTS, MOST, type NumberName } from './limits.js';
import { PROBLEMS_TOLD, type Problem } from './problem.js';
import { number, optional, readRegion, readRoom, taking, type Tell } from './readParts.js';
import { cleanText } from './text.js';

export type AirReading =
  | { readonly input: AirInput; readonly problems?: never }
  | { readonly problems: readonly Problem[]; readonly input?: never };

/** What stands before the id of a substance, to tell it from an agent of the same name. */
export const SUBSTANCE = 'substance.';

/** The room and the uses that were typed, or all that is wrong with them. */
export function readAir(typed: AirForm, known: KnownIds): AirReading {
  const problems: Problem[] = [];
  const tell = taking(problems);
  const region = readRegion(typed.region, 'in', known, tell);
  const room = readRoom(typed.room, AIR_ROOM_FIELDS, tell) ?? {};
  const uses = readUses(typed.uses, tell);
  const zones = readZones(typed.zones, tell);
  const shiftHours = optional('shiftHours', typed.shift, '/shiftHours', 'shift', tell);
  const isSized = room.volumeM3 !== undefined || room.lengthM !== undefined;
  if (typed.uses.length > 0 && !isSized && problems.length === 0) {
    tell('/room', AIR_ROOM_FIELDS.volumeM3, 'nothing', ACCEPTS.roomSize);
  }
  if (problems.length > 0) return { problems: problems.slice(0, PROBLEMS_TOLD) };
  return {
    input: canonicalAir({
      ...(region !== '' && { region }),
      room,
      uses,
      ...(zones !== undefined && { zones }),
      ...(shiftHours !== undefined && { shiftHours }),
    }),
  };
}

function readZones(typed: string, tell: Tell): 1 | 2 | undefined {
  const zones = typed.trim();
  if (zones === '1') return 1;
  if (zones === '2') return 2;
  if (zones !== '') tell('/zones', 'zones', typed, ACCEPTS.zones);
  return undefined;
}

function readUses(typed: readonly TypedAirUse[], tell: Tell): readonly AirUse[] {
  if (typed.length > MOST.airUses) {
    tell('/uses', '', typed.length.toLocaleString('en-GB'), ACCEPTS.airUses);
    return [];
  }
  return typed.map((use, row) => readUse(use, row, tell));
}

function readUse(typed: TypedAirUse, row: number, tell: Tell): AirUse {
  const path = `/uses/${row}`;
  const field = (name: AirUseText): string => `${AIR_USE_FIELDS[name]}${row}`;
  const what = cleanText(typed.what);
  const isSubstance = what.startsWith(SUBSTANCE);
  const name = isSubstance ? what.slice(SUBSTANCE.length).trim() : what;
  if (name === '') tell(`${path}/agent`, field('what'), 'nothing', ACCEPTS.liquid);
  const ml = number('airMl', typed.ml, `${path}/ml`, field('ml'), tell);
  const perhaps = (
    name: 'startMin' | 'minutes' | 'evaporates',
    bounds: NumberName = name,
  ): number | undefined => optional(bounds, typed[name], `${path}/${name}`, field(name), tell);
  const startMin = perhaps('startMin');
  const minutes = perhaps('minutes');
  const percent = perhaps('evaporates', 'evaporatesPercent');
  return {
    ...(isSubstance ? { substance: name } : { agent: name }),
    ml,
    ...(startMin !== undefined && { startMin }),
    ...(minutes !== undefined && { minutes }),
    ...(percent !== undefined && { evaporates: shareOf(percent) }),
    ...(typed.lidded && { lidded: true }),
  };
}

/** The share that a percent of three decimals stands for, written back as that percent. */
const shareOf = (percent: number): number => Math.round(percent * 1e3) / 1e5;
