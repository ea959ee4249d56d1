import { type BenchInput, type MixInput, compare, largestOf } from '../../reasoning/index.js';

/**
 * The bench with every list sorted and each thing once, so that equal benches
 * are equal and have one address. Of an ink or additive that is named twice the
 * larger figure stands. Doing it twice changes nothing.
 */
export function canonicalBench(bench: BenchInput): BenchInput {
  const { equipment, agentsAtHand, uses, people } = bench;
  return {
    ...bench,
    mixes: bench.mixes.map(canonicalMix).sort(byText),
    surfaces: sortedIds(bench.surfaces),
    ...(equipment && { equipment: sortedIds(equipment) }),
    ...(agentsAtHand && { agentsAtHand: sortedIds(agentsAtHand) }),
    ...(uses && { uses: eachOnce(uses, (use) => [use.agent, use.ml]) }),
    ...(people?.flags && { people: { ...people, flags: sortedIds(people.flags) } }),
  };
}

function canonicalMix(mix: MixInput): MixInput {
  return {
    ...mix,
    parts: mergedParts(mix.parts),
    ...(mix.additives && { additives: mergedAdditives(mix.additives) }),
    ...(mix.on && { on: sortedIds(mix.on) }),
  };
}

/** Parts of a mix, each ink once, the larger share of it, sorted by ink. */
export const mergedParts = (parts: MixInput['parts']): MixInput['parts'] =>
  largestOf(
    parts,
    (part) => part.ink,
    (part) => part.share,
  ).sort((one, other) => compare(one.ink, other.ink));

/** Additives of a mix, each once, the larger percent of it, sorted. */
export const mergedAdditives = (
  additives: NonNullable<MixInput['additives']>,
): NonNullable<MixInput['additives']> =>
  largestOf(
    additives,
    (one) => one.additive,
    (one) => one.percent,
  ).sort((one, other) => compare(one.additive, other.additive));

const sortedIds = (ids: readonly string[]): readonly string[] =>
  ids.length < 2 ? ids : [...new Set(ids)].sort();

/** Sorted by what they are, then by how much; exact repeats once. */
function eachOnce<T>(
  many: readonly T[],
  key: (one: T) => readonly [string, number | undefined],
): readonly T[] {
  if (many.length < 2) return many;
  const byKey = new Map(many.map((one) => [key(one).join(' '), one]));
  return [...byKey.values()].sort((one, other) => {
    const [[a, x], [b, y]] = [key(one), key(other)];
    return a === b ? (x ?? -1) - (y ?? -1) : compare(a, b);
  });
}

const byText = (one: MixInput, other: MixInput): number =>
  compare(JSON.stringify(one), JSON.stringify(other));
