import type { Words } from '../../words/index.js';
import type { Problem } from '../forms/problem.js';

/** Something that was typed wrong, with the way to its field. */
export interface AirProblemView {
  /** Empty when it is about the whole page. */
  readonly href: string;
  readonly label: string;
  readonly got: string;
  readonly accepts: string;
}

/** Fields of the page, by the words that stand beside them. */
const LABELS: Readonly<Record<string, string>> = {
  in: 'field.region',
  m3: 'field.roomM3',
  l: 'field.roomLength',
  w: 'field.roomWidth',
  h: 'field.roomHeight',
  air: 'field.air',
  ach: 'field.ach',
  fan: 'field.fan',
  mixing: 'field.mixing',
  temp: 'field.temp',
  zones: 'air.zones',
  shift: 'air.shift',
  what: 'air.what',
  ml: 'air.ml',
  start: 'air.start',
  min: 'air.min',
  share: 'air.share',
};

const FIELD = /^(m3|[a-z]+)(\d*)$/;

/** Each problem with the label of its field, and the row where it stands in one. */
export function airProblems(
  problems: readonly Problem[],
  { message }: Words,
): readonly AirProblemView[] {
  return problems.map(({ field, got, accepts }) => {
    const [, name = '', row = ''] = FIELD.exec(field) ?? [];
    const label = message(LABELS[name] ?? 'air.uses');
    const use = row === '' ? '' : `${message('air.use', { n: Number(row) + 1 })}: `;
    return { href: field === '' ? '' : `#${field}`, label: `${use}${label}`, got, accepts };
  });
}
