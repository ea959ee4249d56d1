import type { Catalogue, ScaleId, Sheet } from '../../reasoning/index.js';
import { inside, type Words } from '../../words/index.js';
import { byId } from './byId.js';

/** What takes it off, air, gloves, rags: who reads only this is already better off. */
export interface AnswersView {
  readonly agents: readonly string[];
  /** How many tools have no way that does no harm. */
  readonly stuck: number;
  readonly air: string;
  /** How long the room must air after the last wipe; empty where nobody knows. */
  readonly aired: string;
  readonly people: string;
  /** The material that holds best; empty when none can be named. */
  readonly glove: string;
  readonly otherGloves: readonly string[];
  /** When to change them, as the line about it says. */
  readonly change: string;
  /** True when the rags go more than one way. */
  readonly isSorted: boolean;
  readonly rags: readonly {
    readonly name: string;
    readonly container: string;
    readonly emptied: string;
  }[];
}

/** The four answers of a sheet, each in a few words of the tables. */
export function answersOf(sheet: Sheet, catalogue: Catalogue, words: Words): AnswersView {
  const level = (scale: ScaleId): string => {
    const reached = sheet.levels.find((one) => one.scale === scale);
    return reached ? words.level(scale, reached.level) : '';
  };
  const { materials, changeAfterMin } = sheet.gloves;
  const [glove = '', ...others] = materials.map(({ id }) => words.name('material', id));
  return {
    agents: sheet.plan.agents.map((id) => words.short('agent', id)),
    stuck: sheet.plan.routes.filter((route) => route.stuck !== undefined).length,
    air: level('air'),
    aired: airedOf(sheet, words),
    people: level('people'),
    glove,
    otherGloves: others.map(inside),
    change: words.change(changeAfterMin),
    isSorted: sheet.streams.length > 1,
    rags: sheet.streams.map(({ id }) => {
      const stream = byId(catalogue.streams, id);
      return {
        name: words.name('stream', id),
        container: stream?.container ?? '',
        emptied: stream?.emptied ?? '',
      };
    }),
  };
}

function airedOf({ air }: Sheet, words: Words): string {
  if (air === undefined) return '';
  return air.airOutMin === undefined
    ? words.message('answer.neverAired')
    : words.message('answer.aired', { airing: words.airing(air.airOutMin) });
}
