import type { BenchInput, MixInput } from '../../reasoning/index.js';

/**
 * The bench with every list sorted and each thing once, so that equal benches
 * are equal and have one address. Doing it twice changes nothing.
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
    parts: eachOnce(mix.parts, (part) => [part.ink, part.share]),
    ...(mix.additives && {
      additives: eachOnce(mix.additives, (one) => [one.additive, one.percent]),
    }),
    ...(mix.on && { on: sortedIds(mix.on) }),
  };
}

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
    return a === b ? (x ?? -1) - (y ?? -1) : inOrder(a, b);
  });
}

const byText = (one: MixInput, other: MixInput): number =>
  inOrder(JSON.stringify(one), JSON.stringify(other));

const inOrder = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
