import type { Catalogue, Sheet, SheetLine, Source } from '../../reasoning/index.js';
import type { Words } from '../../words/index.js';
import { answersOf, type AnswersView } from './answers.js';
import { byId } from './byId.js';
import { frameOf, type FrameView } from './frame.js';
import { longDate } from './longDate.js';
import { onBench, type OnView } from './onBench.js';
import { lineOf, phasesOf, type LineView, type PhaseView } from './phases.js';
import { readyOf, type ReadyView } from './ready.js';
import { recipeOf, type RecipeView } from './recipe.js';
import { regionNumbers, type RegionNumbersView } from './regionNumbers.js';
import { rowName } from './rowName.js';
import { sourceView } from './ruleView.js';
import { swapOf, type SwapView } from './swaps.js';

/** The sheet as it is read: answers first, steps next, reasons in the margin. */
export interface SheetView {
  readonly frame: FrameView;
  readonly name: string;
  readonly benchHref: string;
  /** Pairs on this bench that must never meet: above everything else. */
  readonly stops: readonly {
    readonly words: string;
    readonly makes: string;
    readonly href: string;
  }[];
  readonly mixes: readonly RecipeView[];
  readonly on: OnView;
  /** Data sheets and local rules come before this page. */
  readonly deferral: readonly LineView[];
  readonly answers: AnswersView;
  readonly ready: ReadyView;
  readonly unknown: readonly {
    readonly name: string;
    readonly kindKey: string;
    readonly section: number;
  }[];
  readonly doses: readonly { readonly name: string; readonly textKey: string }[];
  readonly phases: readonly PhaseView[];
  readonly numbers: RegionNumbersView;
  readonly swaps: readonly SwapView[];
  readonly sources: readonly ReturnType<typeof sourceView>[];
  readonly foot: {
    readonly address: string;
    readonly madeOn: string;
    readonly madeOnIso: string;
    readonly version: string;
    readonly region: string;
    /** Drawing of the address as a QR code. */
    readonly qrHref: string;
    readonly textHref: string;
    readonly jsonHref: string;
  };
}

export interface SheetContext {
  readonly words: Words;
  readonly catalogue: Catalogue;
  /** The one address of this bench, from "/sheet?" on. */
  readonly address: string;
  /** ISO date. */
  readonly madeOn: string;
  readonly version: string;
}

/** The line that says what comes before this page: it stands in a frame of its own, not in a phase. */
const DEFERRAL = 'defer';

export function sheetView(sheet: Sheet, context: SheetContext): SheetView {
  const { words, catalogue } = context;
  const { bench } = sheet;
  const region = byId(catalogue.regions, bench.region);
  if (!region) throw new RangeError(`no region called ${bench.region}`);
  const query = context.address.slice(context.address.indexOf('?'));
  const mixes = bench.mixes.map((mix) =>
    recipeOf({ ...mix, isDried: mix.dried }, catalogue, words),
  );
  const isDeferral = (line: SheetLine) => line.text === DEFERRAL;
  const rest = sheet.lines.filter((line) => !isDeferral(line));
  const name = nameOf(mixes);
  return {
    frame: frameOf('sheet', { text: name }, { region: region.id, scripts: ['sheet.js'] }),
    name,
    benchHref: `/${query}`,
    stops: stopsOf(sheet, catalogue),
    // The name of the only mix is the name of the sheet.
    mixes: mixes.length > 1 ? mixes : mixes.map((mix) => ({ ...mix, name: '' })),
    on: onBench(bench, words),
    deferral: sheet.lines.filter(isDeferral).map((line) => lineOf(line, words, region.id)),
    answers: answersOf(sheet, catalogue, words),
    ready: readyOf(sheet, catalogue, words),
    unknown: sheet.unknown.map(({ kind, id, sdsSection }) => ({
      name: id,
      kindKey: `kind.${kind}`,
      section: sdsSection,
    })),
    doses: dosesOf(sheet, words),
    phases: phasesOf(rest, { words, region: region.id }),
    numbers: regionNumbers(region),
    swaps: sheet.swaps.map((swap) => swapOf(swap, words)),
    sources: sourcesOf(sheet, words),
    foot: {
      address: context.address,
      madeOn: longDate(context.madeOn),
      madeOnIso: context.madeOn,
      version: context.version,
      region: region.name,
      qrHref: `/qr.svg${query}`,
      textHref: `/sheet.txt${query}`,
      jsonHref: `/sheet.json${query}`,
    },
  };
}

/** The mixes' own names; where one has none, what is in it. */
function nameOf(mixes: readonly RecipeView[]): string {
  const names = mixes.map((mix) =>
    mix.name === '' ? mix.parts.map((part) => part.name).join(' + ') : mix.name,
  );
  return [...new Set(names)].join(', ');
}

function stopsOf(sheet: Sheet, catalogue: Catalogue): SheetView['stops'] {
  return sheet.neverTogether.map(({ id }) => {
    const pair = byId(catalogue.neverTogether, id);
    return {
      words: pair?.words ?? id,
      makes: pair?.makes ?? '',
      href: `/rules/never.${encodeURIComponent(id)}`,
    };
  });
}

/** Doses over the usual or the highest; what bottles say stands in the lines. */
function dosesOf(sheet: Sheet, words: Words): SheetView['doses'] {
  return sheet.flags
    .filter((flag) => flag.kind === 'dose-above-usual' || flag.kind === 'dose-above-highest')
    .map((flag) => ({
      name: rowName(flag.subject, words),
      textKey: `flag.${flag.kind}`,
    }));
}

/** Every source that a reason on the sheet rests on, once, by title. */
function sourcesOf(sheet: Sheet, words: Words): SheetView['sources'] {
  const reasons = new Set<string>();
  for (const line of sheet.lines) for (const id of line.because) reasons.add(id);
  const sources = new Set<Source>();
  for (const id of reasons) for (const one of words.row(id)?.sources ?? []) sources.add(one);
  return [...sources].sort((one, other) => (one.title < other.title ? -1 : 1)).map(sourceView);
}
