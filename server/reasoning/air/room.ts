import type { AirRoom, AirSituation, Guess, Room } from '../types.js';
import type { AirBook } from './airBook.js';
import { type Zones, nearField, oneZone, twoZones } from './zones.js';

/** Which end of each guess is counted with. */
export interface Ends {
  readonly air: keyof Guess;
  readonly mixing: keyof Guess;
  readonly captured: keyof Guess;
}

export const COUNTED: Ends = { air: 'counted', mixing: 'counted', captured: 'counted' };

const MINUTES_IN_HOUR = 60;

/** Cubic metres of a room; three sides before a volume. Undefined when it was not said. */
export const volumeOf = ({ volumeM3, lengthM, widthM, heightM }: Room): number | undefined =>
  lengthM === undefined || widthM === undefined || heightM === undefined
    ? volumeM3
    : lengthM * widthM * heightM;

/** The situation of a room; air that nobody said, or that no table knows, is that of a closed room. */
const situationOf = (book: AirBook, air: string | undefined): AirSituation =>
  book.situations.get(air ?? '') ?? book.closed;

/** Whether the flow of air was measured, so that nothing is guessed about it. */
export const isMeasured = ({ airChangesPerHour, fanM3PerHour }: Room): boolean =>
  airChangesPerHour !== undefined || fanM3PerHour !== undefined;

/**
 * The room as the model counts with it. A measured flow beats the situation, the smaller of two
 * measured ones counts; a room without a size is no larger than the air at the bench.
 */
export const roomOf = (book: AirBook, room: Room, ends: Ends, zones: 1 | 2): AirRoom => {
  const situation = situationOf(book, room.air);
  const said = volumeOf(room) ?? 0;
  const near = nearField({
    radiusM: book.figures['near-radius-m'],
    airSpeedMMin: book.figures['near-air-speed-m-min'],
  });
  const volumeM3 = said > 0 ? said : near.volumeM3;
  const measured = [
    ...(room.fanM3PerHour === undefined ? [] : [room.fanM3PerHour]),
    ...(room.airChangesPerHour === undefined ? [] : [room.airChangesPerHour * volumeM3]),
  ];
  const airM3PerHour =
    measured.length > 0 ? Math.min(...measured) : situation.airChangesPerHour[ends.air] * volumeM3;
  return {
    volumeM3,
    ...(measured.length > 0 ? {} : { situation: situation.id }),
    airM3PerHour,
    airChangesPerHour: airM3PerHour / volumeM3,
    mixingFactor: Math.max(1, room.mixingFactor ?? situation.mixingFactor[ends.mixing]),
    captured: situation.captured[ends.captured],
    temperatureC: room.temperatureC ?? book.figures['temperature-c'],
    ...(zones === 1
      ? {}
      : {
          // The bench never takes up more than half of the room.
          nearVolumeM3: Math.min(near.volumeM3, volumeM3 / 2),
          exchangeM3PerMin: near.exchangeM3PerMin,
        }),
  };
};

/** Its air as one zone, or as two: bench and room. */
export const zonesOf = (room: AirRoom): Zones => {
  const airM3PerMin = room.airM3PerHour / room.mixingFactor / MINUTES_IN_HOUR;
  const { nearVolumeM3, exchangeM3PerMin, volumeM3 } = room;
  return nearVolumeM3 === undefined || exchangeM3PerMin === undefined
    ? oneZone({ airM3PerMin, volumeM3 })
    : twoZones({
        airM3PerMin,
        exchangeM3PerMin,
        nearM3: nearVolumeM3,
        farM3: volumeM3 - nearVolumeM3,
      });
};
