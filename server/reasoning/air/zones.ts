/** Air of a room as one or two well-mixed zones, in the modes that each follow one rate. */
export interface Zones {
  /** Slow first. */
  readonly modes: readonly Mode[];
}

interface Mode {
  /** Per minute, never positive. */
  readonly rate: number;
  /** What a milligram let out at the bench adds to it, per cubic metre. */
  readonly gain: number;
  /** What it counts for in the air away from the bench; it counts once for the air at it. */
  readonly far: number;
}

/**
 * One zone: `V dC/dt = G - Q C`. Air is the effective flow (real flow over the mixing factor), in
 * cubic metres a minute.
 */
export const oneZone = ({
  airM3PerMin,
  volumeM3,
}: {
  readonly airM3PerMin: number;
  readonly volumeM3: number;
}): Zones => ({ modes: [{ rate: -airM3PerMin / volumeM3 + 0, gain: 1 / volumeM3, far: 1 }] });

/**
 * Two zones: near field round the bench, far field the rest of the room.
 *
 *     VN dCN/dt = G + B (CF - CN)          VF dCF/dt = B (CN - CF) - Q CF
 *
 * The 2 x 2 system has two real rates, and is solved by them: exact, not stepped. Model: M. Nicas,
 * Am. Ind. Hyg. Assoc. J. 57:542-550 (1996), from memory.
 */
export const twoZones = ({
  airM3PerMin,
  exchangeM3PerMin,
  nearM3,
  farM3,
}: {
  readonly airM3PerMin: number;
  readonly exchangeM3PerMin: number;
  readonly nearM3: number;
  readonly farM3: number;
}): Zones => {
  const out = exchangeM3PerMin / nearM3;
  const back = exchangeM3PerMin / farM3;
  const away = airM3PerMin / farM3;
  const sum = out + back + away;
  const quick = -(sum + Math.sqrt(sum * sum - 4 * out * away)) / 2;
  // The product of the rates is known; taking the slow one from it loses no digits.
  const slow = (out * away) / quick + 0;
  const farOf = (rate: number): number => (rate + out) / out;
  const gain = 1 / (nearM3 * (farOf(slow) - farOf(quick)));
  return {
    modes: [
      { rate: slow, gain: -farOf(quick) * gain, far: farOf(slow) },
      { rate: quick, gain: farOf(slow) * gain, far: farOf(quick) },
    ],
  };
};

/**
 * The near field as a half sphere on the bench: free surface, volume, and the air exchanged through
 * it, `B = 1/2 S v` (m3/min), at an air speed in metres a minute. From memory: AIHA, Mathematical
 * Models for Estimating Occupational Exposure to Chemicals, 2nd ed. 2009.
 */
export const nearField = ({
  radiusM,
  airSpeedMMin,
}: {
  readonly radiusM: number;
  readonly airSpeedMMin: number;
}): {
  readonly surfaceM2: number;
  readonly volumeM3: number;
  readonly exchangeM3PerMin: number;
} => {
  const surfaceM2 = 2 * Math.PI * radiusM ** 2;
  return {
    surfaceM2,
    volumeM3: (surfaceM2 * radiusM) / 3,
    exchangeM3PerMin: (surfaceM2 * airSpeedMMin) / 2,
  };
};
