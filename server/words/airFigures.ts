import type { Region } from '../reasoning/index.js';
import { flowText, mostText, upToTwo } from './airing.js';
import { numberText } from './amounts.js';
import type { Messages } from './messages.js';

/** Figures of the air model as people read them, each rounded against the reader. */
export interface AirFigureWords {
  /** A level in the air, rounded up: "490 mg/m³". */
  readonly airLevel: (mgM3: number) => string;
  /** A published limit in mg/m3, rounded down: "593". */
  readonly airLimit: (mgM3: number) => string;
  /** What is expected over what is allowed, rounded up: "46 %", "1.4 times". */
  readonly airShare: (share: number) => string;
  /** The most that a room takes, rounded down; undefined: no amount passes a limit. */
  readonly airMost: (ml: number | undefined, regionId: string) => string;
  readonly airFlow: (m3PerHour: number, regionId: string) => string;
  /** The size of a room; cubic feet beside it where the region counts in them. */
  readonly airVolume: (m3: number, regionId: string) => string;
  /** A number with no more digits than it has. */
  readonly number: (value: number) => string;
}

const PERCENT = 100;
/** From here on times are told whole. */
const WHOLE_FROM = 10;
const TENTH = 10;
/** So that 46 is not made 47 by the last digit of a computation. */
const HAIR = 1e-9;

/** Cubic feet in a cubic metre (NIST Handbook 44, appendix C). */
const CUBIC_FEET = 35.31;

const DOWN = new Intl.NumberFormat('en-GB', { maximumSignificantDigits: 3, roundingMode: 'floor' });

/** Puts figures of the air model into words. */
export function makeAirFigures(
  messages: Messages,
  regionOf: (regionId: string) => Region,
): AirFigureWords {
  const share = (of: number): string => {
    const percent = Math.ceil(of * PERCENT - HAIR);
    if (percent <= PERCENT) return messages('air.percent', { n: Math.max(1, percent) });
    const times = of < WHOLE_FROM ? Math.ceil(of * TENTH - HAIR) / TENTH : upToTwo(of);
    return messages('air.times', { n: numberText(times) });
  };
  return {
    airLevel: (mgM3) => messages('air.mgM3', { n: numberText(upToTwo(mgM3)) }),
    airLimit: (mgM3) => DOWN.format(mgM3),
    airShare: share,
    airMost: (ml, regionId) => {
      if (ml === undefined) return messages('air.mostAny');
      return ml < 1 ? messages('air.mostNone') : mostText(ml, regionOf(regionId).units);
    },
    airFlow: (m3PerHour, regionId) => flowText(m3PerHour, regionOf(regionId).units, messages),
    airVolume: (m3, regionId) => {
      const metric = messages('air.m3', { n: numberText(m3) });
      return regionOf(regionId).units === 'us'
        ? `${metric} (${messages('air.cubicFeet', { n: numberText(Math.round(m3 * CUBIC_FEET)) })})`
        : metric;
    },
    number: numberText,
  };
}
