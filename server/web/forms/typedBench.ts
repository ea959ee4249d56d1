import type { BenchInput, MixInput, Room } from '../../reasoning/index.js';

/**
 * A bench as somebody typed it, before anything is checked: every number still
 * text, so that a page can show back exactly what was typed. Address, form and
 * JSON body all come through here.
 */
export interface TypedBench {
  readonly region: string;
  readonly mixes: readonly TypedMix[];
  readonly surfaces: readonly string[];
  readonly equipment: readonly string[];
  /** Absent: whatever the plan wants can be had. */
  readonly agentsAtHand?: readonly string[];
  readonly uses: readonly TypedUse[];
  readonly room: TypedRoom;
  readonly people: {
    readonly count: string;
    readonly under16: string;
    readonly flags: readonly string[];
  };
}

export interface TypedMix {
  readonly name: string;
  readonly parts: readonly TypedPart[];
  readonly additives: readonly TypedAdditive[];
  readonly dried: boolean;
  /** Only on these surfaces; absent: on all of the bench. */
  readonly on?: readonly string[];
}

interface TypedPart {
  readonly ink: string;
  readonly share: string;
  /** Field of the bench page that it was typed in, when it is not the usual one. */
  readonly field?: string;
}

interface TypedAdditive {
  readonly additive: string;
  readonly percent: string;
  readonly field?: string;
}

interface TypedUse {
  readonly agent: string;
  readonly ml: string;
}

/** Numbers of a room, each with the field of the bench page that holds it. */
export const ROOM_FIELDS = {
  volumeM3: 'roomM3',
  lengthM: 'roomLength',
  widthM: 'roomWidth',
  heightM: 'roomHeight',
  airChangesPerHour: 'ach',
  fanM3PerHour: 'fan',
  mixingFactor: 'mixing',
  temperatureC: 'temp',
} as const satisfies Readonly<Partial<Record<keyof Room, string>>>;
export type RoomNumber = keyof typeof ROOM_FIELDS;
export const ROOM_NUMBERS = Object.keys(ROOM_FIELDS) as readonly RoomNumber[];

export type TypedRoom = Readonly<Record<RoomNumber | 'air', string>>;

export const NO_ROOM: TypedRoom = {
  volumeM3: '',
  lengthM: '',
  widthM: '',
  heightM: '',
  air: '',
  airChangesPerHour: '',
  fanM3PerHour: '',
  mixingFactor: '',
  temperatureC: '',
};

/** The bench as it would have been typed. */
export function typedOf(bench: BenchInput): TypedBench {
  return {
    region: bench.region ?? '',
    mixes: bench.mixes.map(typedMixOf),
    surfaces: bench.surfaces,
    equipment: bench.equipment ?? [],
    ...(bench.agentsAtHand && { agentsAtHand: bench.agentsAtHand }),
    uses: (bench.uses ?? []).map((use) => ({ agent: use.agent, ml: String(use.ml) })),
    room: typedRoomOf(bench.room ?? {}),
    people: {
      count: text(bench.people?.count),
      under16: bench.people?.under16 === true ? 'yes' : '',
      flags: bench.people?.flags ?? [],
    },
  };
}

function typedMixOf(mix: MixInput): TypedMix {
  return {
    name: mix.name ?? '',
    parts: mix.parts.map((part) => ({ ink: part.ink, share: text(part.share) })),
    additives: (mix.additives ?? []).map((one) => ({
      additive: one.additive,
      percent: text(one.percent),
    })),
    dried: mix.dried === true,
    ...(mix.on && { on: mix.on }),
  };
}

function typedRoomOf(room: Room): TypedRoom {
  const numbers = ROOM_NUMBERS.map((name) => [name, text(room[name])] as const);
  return { ...NO_ROOM, ...Object.fromEntries(numbers), air: room.air ?? '' };
}

const text = (value: number | undefined): string => (value === undefined ? '' : String(value));
