import type { AirAnswer, AirShare, Catalogue } from '../../reasoning/index.js';
import { opening, type Words } from '../../words/index.js';
import { byId } from './byId.js';
import { sourceView } from './ruleView.js';

/** One published limit beside what is expected. */
export interface AirLimitView {
  readonly substance: string;
  /** Page of the row that prints it. */
  readonly href: string;
  readonly limit: string;
  /** Over which time. */
  readonly kind: string;
  readonly where: string;
  readonly printed: string;
  readonly expected: string;
  readonly isOver: boolean;
  readonly howKey: string;
  readonly sources: readonly ReturnType<typeof sourceView>[];
}

const KIND_KEYS: Readonly<Record<AirShare['kind'], string>> = {
  'long-term': 'air.kind.day',
  'short-term': 'air.kind.short',
  ceiling: 'air.kind.ceiling',
  excursion: 'air.kind.excursion',
};

/** The limits that count in the room's region, lowest first; and those of other places. */
export function airLimitsView(
  { shares }: AirAnswer,
  { words, catalogue }: { readonly words: Words; readonly catalogue: Catalogue },
): { readonly here: readonly AirLimitView[]; readonly elsewhere: readonly AirLimitView[] } {
  const view = (share: AirShare): AirLimitView => {
    const source = byId(catalogue.sources, share.source);
    return {
      substance: opening(words.name('substance', share.substance)),
      href: `/rules/substance.${encodeURIComponent(share.substance)}`,
      limit: share.limit,
      kind: words.message(KIND_KEYS[share.kind]),
      where: words.name('region', share.region),
      printed: printedText(share, words),
      expected: words.airShare(share.of),
      isOver: share.of > 1,
      howKey: `how.${share.how}`,
      sources: source ? [sourceView(source)] : [],
    };
  };
  return {
    here: shares.filter(({ applies }) => applies).map(view),
    elsewhere: shares.filter(({ applies }) => !applies).map(view),
  };
}

/** As its table prints it; ppm is never turned into mg/m3 without saying by which molar mass. */
function printedText(share: AirShare, { message, number, airLimit }: Words): string {
  const { printed, molarMassGMol, limitMgM3 } = share;
  const { mgM3, ppm } = printed;
  const counted = message('air.countedAs', {
    level: message('air.mgM3', { n: airLimit(limitMgM3) }),
  });
  return [
    ...(mgM3 === undefined ? [] : [message('air.mgM3', { n: number(mgM3) })]),
    ...(ppm === undefined ? [] : [message('air.ppm', { n: number(ppm) })]),
    ...(mgM3 === limitMgM3 ? [] : [counted]),
    ...(molarMassGMol === undefined ? [] : [message('air.byMass', { n: number(molarMassGMol) })]),
  ].join(', ');
}
