import type { Catalogue } from '../../reasoning/index.js';
import type { Words } from '../../words/index.js';
import { unitName } from '../forms/sumsBody.js';
import { figuresOf, idsOf, type ShownFigure } from '../forms/sumsFigures.js';
import type { Outcome, Sum } from '../forms/sumsSum.js';
import { unitsOf } from '../forms/sumsUnits.js';

interface Said {
  readonly label: string;
  readonly text: string;
}

/** What a sum comes to: its first figure large, the steps below it, row by row where it has rows. */
export interface SumResultView {
  readonly first: readonly Said[];
  readonly others: readonly Said[];
  readonly rows: readonly { readonly name: string; readonly figures: readonly Said[] }[];
}

/** Limits, and air that is there: the less of them, the more careful. All else is rounded up. */
const LESS_IS_CAREFUL: ReadonlySet<string> = new Set([
  ...['mixtureLimit', 'liquidLimit', 'atLimit', 'raw', 'rounded', 'mixtureLfl', 'lflThen'],
  ...['shiftFactor', 'doseFactor'],
  ...['counted', 'byFlow', 'byFloor', 'byHalfLife', 'halfLifeFlow', 'effective'],
]);

/** Figures that others are worked out with, or that differ from 1 in their last digits only. */
const FINE: ReadonlySet<string> = new Set(['molarVolume', 'mixtureDensity']);

const digits = (roundingMode: 'floor' | 'ceil', most = 3) =>
  new Intl.NumberFormat('en-GB', { maximumSignificantDigits: most, roundingMode });
const DOWN = digits('floor');
const UP = digits('ceil');
const FINER = digits('ceil', 5);

const formatOf = (name: string): Intl.NumberFormat => {
  if (FINE.has(name)) return FINER;
  return LESS_IS_CAREFUL.has(name) ? DOWN : UP;
};
/** Digits that a computed number can be trusted with; what is behind them is noise, not a reason to round. */
const TRUSTED = 10;

/** A sum that was worked out, in words. */
export function resultView(
  sum: Sum,
  { figures, rows = {} }: Outcome,
  { catalogue, message }: { readonly catalogue: Catalogue; readonly message: Words['message'] },
): SumResultView {
  const said = (figure: ShownFigure): Said => ({
    label: message(`sums.out.${figure.name}`),
    text: textOf(figure, message),
  });
  const columns = new Map(catalogue.hydrocarbons.columns.map(({ id, name }) => [id, name]));
  const [first, ...others] = [
    ...figuresOf(sum.answers, figures).map(said),
    ...idsOf(sum.answers, figures).map(([name, id]) => ({
      label: message(`sums.out.${name}`),
      text: columns.get(id) ?? id,
    })),
  ];
  return {
    first: first ? [first] : [],
    others,
    rows: Object.entries(rows).flatMap(([name, list]) =>
      list
        .map((row) => figuresOf(sum.rowAnswers[name] ?? {}, row).map(said))
        .map((found, at) => ({ name: message('sums.rowOf', { n: at + 1 }), figures: found }))
        .filter((row) => row.figures.length > 0),
    ),
  };
}

/** A figure in its metric unit, others in brackets. */
function textOf({ name, values }: ShownFigure, message: Words['message']): string {
  if (values.every(({ value }) => value === null)) return message('sums.never');
  const format = formatOf(name);
  const [main = '', ...others] = values.map(({ unit, value }) => {
    const number = format.format(Number((value ?? 0).toPrecision(TRUSTED)));
    return unit === unitsOf('plain')[0] ? number : `${number} ${unitName(unit, message)}`;
  });
  return others.length > 0 ? `${main} (${others.join(', ')})` : main;
}
