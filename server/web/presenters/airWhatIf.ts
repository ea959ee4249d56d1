import type { AirAnswer, AirInput, AirUse, Catalogue, Reasoner } from '../../reasoning/index.js';
import { inside, opening, type Words } from '../../words/index.js';

/** A change that makes the air better, and the answer with it. */
export interface AirChange {
  readonly name: string;
  readonly answer: AirAnswer;
}

interface Parts {
  readonly reasoner: Pick<Reasoner, 'air'>;
  readonly catalogue: Catalogue;
  readonly words: Words;
}

interface Said {
  readonly input: AirInput;
  readonly answer: AirAnswer;
}

/**
 * What if there were more air, lids, less liquid, or a milder agent? Only what makes the air better
 * in something and in nothing worse.
 */
export function airChanges(said: Said, parts: Parts): readonly AirChange[] {
  const { input } = said;
  const changed = (name: string, uses: readonly AirUse[]): AirChange => ({
    name: parts.words.message(name),
    answer: parts.reasoner.air({ ...input, uses }),
  });
  return [
    ...moreAir(input, parts),
    changed(
      'air.lids',
      input.uses.map((use) => ({ ...use, lidded: true })),
    ),
    changed(
      'air.half',
      input.uses.map((use) => ({ ...use, ml: use.ml / 2 })),
    ),
    ...milderAgent(said, parts),
  ].filter((change) => isBetter(change.answer, said.answer));
}

const isBetter = (one: AirAnswer, other: AirAnswer): boolean => {
  const pairs = [
    [one.combinedShare, other.combinedShare],
    [one.airOutMin ?? Infinity, other.airOutMin ?? Infinity],
  ] as const;
  return pairs.every(([now, said]) => now <= said) && pairs.some(([now, said]) => now < said);
};

/** The same day in each kind of air; what was measured gives way to the guess for it. */
function moreAir(
  { room, ...input }: AirInput,
  { reasoner, catalogue, words }: Parts,
): readonly AirChange[] {
  const { volumeM3, lengthM, widthM, heightM, temperatureC } = room;
  const unmeasured = { volumeM3, lengthM, widthM, heightM, temperatureC };
  return catalogue.air.situations.map(({ id }) => ({
    name: opening(words.level('air', id)),
    answer: reasoner.air({ ...input, room: { ...unmeasured, air: id } }),
  }));
}

/** For the harshest agent in use, the nearest milder one that gives off vapour and betters the air. */
function milderAgent({ input, answer }: Said, parts: Parts): readonly AirChange[] {
  const { agents } = parts.catalogue;
  const places = input.uses.map(({ agent }) => agents.findIndex(({ id }) => id === agent));
  const place = Math.max(-1, ...places);
  const what = agents[place];
  if (!what) return [];
  for (const milder of agents.slice(0, place).reverse()) {
    const uses = input.uses.map((use) =>
      use.agent === what.id ? { ...use, agent: milder.id } : use,
    );
    const changed = parts.reasoner.air({ ...input, uses });
    const isVolatile = changed.mostMl.some(({ agent }) => agent === milder.id);
    if (isVolatile && isBetter(changed, answer)) {
      const names = { for: milder.shortName, what: inside(what.shortName) };
      return [{ name: parts.words.message('air.instead', names), answer: changed }];
    }
  }
  return [];
}
