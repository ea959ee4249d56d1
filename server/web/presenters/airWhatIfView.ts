import type { AirAnswer } from '../../reasoning/index.js';
import type { Words } from '../../words/index.js';
import { airOutText, mostText } from './airAnswersView.js';
import type { AirChange } from './airWhatIf.js';

/** One change beside the others: what it comes to. */
export interface AirWhatIfRow {
  readonly name: string;
  readonly worst: string;
  readonly share: string;
  readonly airOut: string;
  readonly most: readonly string[];
}

/** First what was said, then each change that shows in at least one of the figures; none: no table. */
export function airWhatIfView(
  said: AirAnswer,
  changes: readonly AirChange[],
  words: Words,
): readonly AirWhatIfRow[] {
  const first = rowOf({ name: words.message('air.asSaid'), answer: said }, words);
  const rows = changes.map((change) => rowOf(change, words)).filter((row) => !isSame(row, first));
  return rows.length === 0 ? [] : [first, ...rows];
}

const rowOf = ({ name, answer }: AirChange, words: Words): AirWhatIfRow => ({
  name,
  worst: words.airLevel(answer.worst15MinMgM3),
  share: words.airShare(answer.combinedShare),
  airOut: airOutText(answer.airOutMin, words),
  most: answer.mostMl.map((most) => mostText(most, answer, words)),
});

const isSame = (one: AirWhatIfRow, other: AirWhatIfRow): boolean =>
  JSON.stringify({ ...one, name: '' }) === JSON.stringify({ ...other, name: '' });
