import type { Bench, Room } from '../../reasoning/index.js';
import type { Words } from '../../words/index.js';

/** One sentence: what has ink on it, what stands near, the room, the people. */
export interface OnView {
  readonly surfaces: string;
  readonly equipment: string;
  readonly room: string;
  readonly air: string;
  /** Words of the count of people; empty when not said. */
  readonly count: string;
  readonly people: string;
  readonly isDried: boolean;
}

/** What the bench of a sheet is, in words; ids that no table knows as they were typed. */
export function onBench(bench: Bench, words: Words): OnView {
  const { count, under16, flags } = bench.people;
  const people = [...(under16 ? ['under16'] : []), ...flags.filter((flag) => flag !== 'under16')];
  return {
    surfaces: bench.surfaces.map((id) => words.short('surface', id)).join(', '),
    equipment: bench.equipment.map((id) => words.short('equipment', id)).join(', '),
    room: sizeOf(bench.room ?? {}),
    air: airOf(bench.room ?? {}, words),
    count: count === undefined ? '' : String(count),
    people: people.map((id) => words.name('person', id)).join(', '),
    isDried: bench.mixes.some((mix) => mix.dried),
  };
}

function sizeOf(room: Room): string {
  if (room.volumeM3 !== undefined) return `${room.volumeM3} m³`;
  const sides = [room.lengthM, room.widthM, room.heightM].flatMap((side) => side ?? []);
  return sides.length === 3 ? `${sides.join(' × ')} m` : '';
}

function airOf(room: Room, words: Words): string {
  const said = [
    room.air === undefined ? '' : words.level('air', room.air),
    room.fanM3PerHour === undefined ? '' : `${room.fanM3PerHour} m³/h`,
    room.airChangesPerHour === undefined ? '' : `${room.airChangesPerHour}/h`,
  ];
  return said.filter((text) => text !== '').join(', ');
}
