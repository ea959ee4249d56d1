import type { RoomNumber, TypedRoom } from './typedBench.js';

/** What somebody says about the air of a room, as typed: every number still text, to be shown back. */
export interface AirForm {
  readonly region: string;
  readonly room: TypedRoom;
  readonly zones: string;
  readonly shift: string;
  /** Rows that something was typed in. */
  readonly uses: readonly TypedAirUse[];
}

export interface TypedAirUse {
  /** An agent, or `substance.acetone`. */
  readonly what: string;
  readonly ml: string;
  readonly startMin: string;
  readonly minutes: string;
  /** In percent of the liquid. */
  readonly evaporates: string;
  readonly lidded: boolean;
}

/** Numbers of a room, each with the field of the page that holds it. */
export const AIR_ROOM_FIELDS = {
  volumeM3: 'm3',
  lengthM: 'l',
  widthM: 'w',
  heightM: 'h',
  airChangesPerHour: 'ach',
  fanM3PerHour: 'fan',
  mixingFactor: 'mixing',
  temperatureC: 'temp',
} as const satisfies Readonly<Record<RoomNumber, string>>;

/** Texts of a use, each with the field that holds it in row 0, `what0`. */
export const AIR_USE_FIELDS = {
  what: 'what',
  ml: 'ml',
  startMin: 'start',
  minutes: 'min',
  evaporates: 'share',
} as const satisfies Readonly<Partial<Record<keyof TypedAirUse, string>>>;
export type AirUseText = keyof typeof AIR_USE_FIELDS;
