import type { AirAnswer, AirRange } from '../../reasoning/index.js';
import type { Words } from '../../words/index.js';
import type { AirJson } from './airAnswer.js';

/** An estimate of the air as JSON: what never comes is null, and cautions are in words. */
export function airJson(answer: AirAnswer, words: Words): AirJson {
  const { airOutMin, fanNeededM3PerHour, mostMl, shares, ranges, cautions } = answer;
  return {
    ...answer,
    airOutMin: airOutMin ?? null,
    fanNeededM3PerHour: fanNeededM3PerHour ?? null,
    mostMl: mostMl.map(({ ml, carefulMl, ...most }) => ({
      ...most,
      name:
        most.agent === undefined
          ? words.name('substance', most.substance)
          : words.name('agent', most.agent),
      ml: ml ?? null,
      carefulMl: carefulMl ?? null,
    })),
    shares: shares.map((share) => ({ ...share, name: words.name('substance', share.substance) })),
    ranges: {
      peakMgM3: endsOf(ranges.peakMgM3),
      worst15MinMgM3: endsOf(ranges.worst15MinMgM3),
      average8hMgM3: endsOf(ranges.average8hMgM3),
      combinedShare: endsOf(ranges.combinedShare),
      shareOfLel: endsOf(ranges.shareOfLel),
      airOutMin: endsOf(ranges.airOutMin),
    },
    cautions: cautions.map((said) => words.airCaution(said)),
    cautionIds: cautions.map(({ id }) => id),
    sources: sourcesOf(answer, words),
    defer: words.defer(answer.region),
  };
}

const endsOf = ({ low, high }: AirRange): AirJson['ranges']['peakMgM3'] => ({
  low: low ?? null,
  high: high ?? null,
});

/** Where the limits are printed, each source once. */
const sourcesOf = ({ shares }: AirAnswer, words: Words): AirJson['sources'] =>
  Object.fromEntries(
    shares.flatMap(({ substance, source }) =>
      (words.row(`substance.${substance}`)?.sources ?? [])
        .filter(({ id }) => id === source)
        .map((row) => [source, row] as const),
    ),
  );
