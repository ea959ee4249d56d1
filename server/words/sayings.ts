import type { Flag, Route, ScaleId, Swap, Unknown } from '../reasoning/index.js';
import { numberText, rangeText } from './amounts.js';
import { inside, joined, opening } from './joined.js';
import type { Names } from './names.js';

/** Short sayings about one result of the reasoning, for answers that are not lines of the sheet. */
export interface Sayings {
  /** Why a surface has no route, and whom to go to. */
  readonly stuck: (route: Route) => string;
  readonly unknown: (unknown: Unknown) => string;
  readonly swap: (swap: Swap) => string;
  readonly flag: (flag: Flag) => string;
}

const STUCK: Readonly<Record<NonNullable<Route['stuck']>, string>> = {
  'unknown-ink': 'Nobody here can name this ink, so nothing is named to take it off {surface}.',
  'unknown-surface': 'Nobody here knows {surface}, so nothing is named that leaves it unharmed.',
  'parts-share-no-agent': 'No one thing takes every part of this mix off {surface}.',
  'all-harm': 'All that takes this mix off does harm to {surface}.',
  'not-at-hand': 'Nothing at hand takes this mix off {surface} unharmed.',
};

const HAS_DATA_SHEET: ReadonlySet<Unknown['kind']> = new Set(['ink', 'additive', 'agent']);

export function makeSayings(
  names: Names,
  level: (scale: ScaleId, levelId: string) => string,
): Sayings {
  const any = (id: string): string => inside(names.any(id) ?? id);
  const agents = (ids: readonly string[], last: string): string =>
    joined(
      ids.map((id) => inside(names.short('agent', id))),
      last,
    );
  return {
    stuck: (route) => {
      const why = STUCK[route.stuck ?? 'all-harm'];
      const would = route.wouldDo ?? [];
      return [
        why.replace('{surface}', inside(names.short('surface', route.surface))),
        'Leave it, and ask the keeper.',
        ...(would.length > 0 ? [`It could be done with ${agents(would, 'or')}.`] : []),
      ].join(' ');
    },
    unknown: ({ kind, id, sdsSection }) => {
      const settles = HAS_DATA_SHEET.has(kind)
        ? `Section ${sdsSection} of its safety data sheet settles it.`
        : 'Ask the keeper.';
      return `No table knows "${id}", so it counts as the worst of its kind. ${settles}`;
    },
    swap: (swap) => {
      const change =
        swap.for === undefined
          ? `Leave out ${any(swap.what)}`
          : `Take ${any(swap.for)} instead of ${any(swap.what)}`;
      const spared = [
        ...(swap.sparesAgents.length > 0 ? [`no ${agents(swap.sparesAgents, 'or')}`] : []),
        ...swap.spares.map(
          ({ scale, to }) => `${inside(names.name('scale', scale))}: ${level(scale, to)}`,
        ),
      ];
      return spared.length === 0 ? `${change}.` : `${change}. It spares you: ${spared.join('; ')}.`;
    },
    flag: (flag) => {
      const { percent, usual, highest } = flag.values;
      const much = typeof percent === 'number' ? ` ${numberText(percent)} %` : '';
      const bound = flag.kind === 'dose-above-highest' ? (highest ?? usual) : usual;
      const most =
        typeof bound === 'number'
          ? ` (${numberText(bound)} %)`
          : typeof bound === 'object' && 'low' in bound
            ? ` (${rangeText(bound)} %)`
            : '';
      return opening(
        `${any(flag.subject)}:${much} ${FLAGS[flag.kind]}${most}.`.replace(':  ', ': '),
      );
    },
  };
}

const FLAGS: Readonly<Record<Flag['kind'], string>> = {
  'dose-above-usual': 'is more than usual',
  'dose-above-highest': 'is more than the highest that is known to work',
  'bottle-milder': 'your bottle is milder on paper than its kind; the keeper checks it first',
  'bottle-used': 'the figures are from your own data sheet',
};
