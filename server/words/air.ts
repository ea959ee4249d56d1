import type { AirSaid, Catalogue, Value } from '../reasoning/index.js';
import { numberText } from './amounts.js';
import { fill, makeTemplate } from './fill.js';
import { inside, opening } from './joined.js';
import type { Names } from './names.js';

/** What is said beside an estimate of the air. */
export interface AirWords {
  /** The caution, in the words of airing.yaml. */
  readonly airCaution: (said: AirSaid) => string;
}

/** Cautions of airing.yaml, each cut up once at the start. */
export function makeAirWords(
  catalogue: Catalogue,
  names: Names,
  levelName: (levelId: string) => string | undefined,
): AirWords {
  const texts = new Map(
    catalogue.air.cautions.map(({ id, words }) => [id, makeTemplate(words)] as const),
  );
  const valueText = (value: Value | undefined): string => {
    if (typeof value === 'number') return numberText(value);
    if (typeof value !== 'string') return '';
    const label = names.any(value) ?? levelName(value);
    return label === undefined ? value : inside(label);
  };
  return {
    airCaution: ({ id, values }) =>
      fill(texts.get(id) ?? [], ({ key, opens }) => {
        const words = valueText(values[key]);
        return opens ? opening(words) : words;
      }),
  };
}
