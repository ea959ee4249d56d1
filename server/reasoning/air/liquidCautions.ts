import type { AirCautionId, AirSaid, Bottle, Substance } from '../types.js';
import type { AirLimit } from './limits.js';

/** The caution, when something holds. */
export const when = (
  holds: boolean,
  id: AirCautionId,
  values: AirSaid['values'] = {},
): AirSaid[] => (holds ? [{ id, values }] : []);

/** A liquid and what is published on it. */
interface Published {
  /** As words name it: a row, or what was typed. */
  readonly what: string;
  readonly unknown: string | undefined;
  readonly substance: Substance;
  readonly limits: readonly AirLimit[];
  /** Lowest long-term limit that counts here. */
  readonly long: AirLimit | undefined;
  readonly bottles: readonly Bottle[];
}

/** What must be said of one liquid, whatever the room. */
export const liquidCautions = (published: Published): readonly AirSaid[] => {
  const { what, unknown, substance, limits, long, bottles } = published;
  // All else would be said of whatever it is counted as.
  if (unknown !== undefined) return [{ id: 'unknown', values: { what } }];
  const lower =
    long &&
    limits.find(
      ({ kind, limitMgM3, applies }) =>
        kind === 'long-term' && !applies && limitMgM3 < long.limitMgM3,
    );
  const printed = substance.limits.flatMap(({ kind, mgM3 }) =>
    kind === 'long-term' && mgM3 !== undefined ? [mgM3] : [],
  );
  const isMilder = bottles.some(({ limitMgM3 = 0 }) => limitMgM3 > Math.min(...printed));
  return [
    ...when(long === undefined, 'no-limit', { what }),
    ...when(substance.isMixture === true, 'mixture', { what }),
    ...(lower === undefined
      ? []
      : when(true, 'lower-elsewhere', {
          what,
          limit: lower.limit,
          mgM3: Math.floor(lower.limitMgM3),
        })),
    ...when(isMilder, 'bottle-limit', { what }),
  ];
};

/** A liquid as words name it: what was typed, or a row of a table. */
export const nameOf = ({
  unknown,
  agent,
  substance,
}: {
  readonly unknown?: string;
  readonly agent?: string;
  readonly substance: Substance;
}): string => unknown ?? (agent === undefined ? `substance.${substance.id}` : `agent.${agent}`);
