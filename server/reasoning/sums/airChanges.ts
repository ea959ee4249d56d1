/** Air changes of a room an hour, by what is known of it. */

const SECONDS_IN_HOUR = 3600;
const L_IN_M3 = 1000;

/** From flow and volume, `Q / V` (both by one unit of volume). Undefined where there is no volume. */
export const changesByFlow = (flowPerHour: number, volume: number): number | undefined =>
  volume > 0 ? flowPerHour / volume : undefined;

/**
 * From a floor rate and the height, `3.6 q / h` (l/s on a square metre, metres). Undefined where the
 * height is 0.
 * @example changesByFloor(3.5, 3) // 4.2
 */
export const changesByFloor = (rateLSM2: number, heightM: number): number | undefined =>
  heightM > 0 ? (rateLSM2 * SECONDS_IN_HOUR) / L_IN_M3 / heightM : undefined;

/**
 * Outdoor air for one person, from the rate for people, the rate for floor and how densely people
 * stand: `Rp + Ra / density`, in the unit of the first (density: people on one unit of floor).
 * Undefined where nobody is there. Source: ASHRAE 62.1-2016, table 6.2.2.1, as read.
 */
export const airPerPerson = ({
  personRate,
  floorRate,
  peoplePerFloor,
}: {
  readonly personRate: number;
  readonly floorRate: number;
  readonly peoplePerFloor: number;
}): number | undefined =>
  peoplePerFloor > 0 ? personRate + floorRate / peoplePerFloor : undefined;
