import type { Catalogue, Sheet, SheetLine, Source } from '../../reasoning/index.js';
import { longDate, type Words } from '../../words/index.js';
import { canonicalAirAddress } from '../forms/airAddress.js';
import { answersOf, type AnswersView } from './answers.js';
import { byId } from './byId.js';
import { frameOf, type FrameView } from './frame.js';
import { onBench, type OnView } from './onBench.js';
import { makeLineOf, phasesOf, type LineView, type PhaseView } from './phases.js';
import { readyOf, type ReadyView } from './ready.js';
import { recipeOf, type RecipeView } from './recipe.js';
import { regionNumbers, type RegionNumbersView } from './regionNumbers.js';
import { sourceView } from './ruleView.js';

/** The sheet as it is read: answers first, steps next, reasons in the margin. */
export interface SheetView {
  readonly frame: FrameView;
  readonly name: string;
  readonly benchHref: string;
  /** The same sheet for each region; empty when the bench says where it is. */
  readonly ask: readonly { readonly name: string; readonly href: string }[];
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
  /** The vapour of this sheet on its own page; empty where there is none to work out. */
  readonly airHref: string;
  readonly ready: ReadyView;
  readonly unknown: readonly { readonly kindKey: string; readonly says: string }[];
  /** What is to be said of doses over the usual or the highest. */
  readonly doses: readonly string[];
  readonly phases: readonly PhaseView[];
  /** True of a sheet with so many lines that it is printed closer. */
  readonly isLong: boolean;
  readonly numbers: RegionNumbersView;
  /** What would make the next wash-up milder, a sentence each. */
  readonly swaps: readonly string[];
  readonly sources: readonly ReturnType<typeof sourceView>[];
  readonly sourceCount: number;
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

/** A sheet of more lines prints the first reason of each only, to stay on two pages. */
const LONG_FROM = 56;

/** The line that says what comes before this page: it stands in a frame of its own, not in a phase. */
const DEFERRAL = 'defer';

/**
 * The page of a sheet.
 *
 * @throws RangeError when no table has the region of the bench.
 */
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
  const sources = sourcesOf(sheet, words);
  const line = makeLineOf({ words, region: region.id, always: alwaysOf(catalogue) });
  return {
    frame: frameOf('sheet', name === '' ? { key: 'sheet.noInk' } : { text: name }, {
      region: region.id,
      scripts: ['sheet.js', ...(sheet.air === undefined ? [] : ['clock.js'])],
    }),
    name,
    benchHref: `/${query}`,
    ask: askOf(query, catalogue),
    stops: stopsOf(sheet, catalogue),
    // The name of the only mix is the name of the sheet.
    mixes: mixes.length > 1 ? mixes : mixes.map((mix) => ({ ...mix, name: '' })),
    on: onBench(bench, words),
    deferral: sheet.lines.filter(isDeferral).map(line),
    answers: answersOf(sheet, catalogue, words),
    airHref: airHrefOf(sheet),
    ready: readyOf(sheet, catalogue, words),
    unknown: sheet.unknown.map((one) => ({
      kindKey: `kind.${one.kind}`,
      says: words.unknown(one),
    })),
    doses: dosesOf(sheet, words),
    phases: phasesOf(rest, line),
    isLong: sheet.lines.length > LONG_FROM,
    numbers: regionNumbers(region),
    swaps: sheet.swaps.map((swap) => words.swap(swap)),
    sources,
    sourceCount: sources.length,
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

function airHrefOf({ air, bench }: Sheet): string {
  if (air === undefined) return '';
  const uses = air.mostMl.map(({ agent, substance, saidMl }) => ({
    ...(agent === undefined ? { substance } : { agent }),
    ml: saidMl,
  }));
  return `/air?${canonicalAirAddress({ region: bench.region, room: bench.room ?? {}, uses })}`;
}

/** Rules that hold for every bench: what they say need not be said at each line. */
const alwaysOf = ({ rules }: Catalogue): ReadonlySet<string> =>
  new Set(
    rules.filter(({ when, anyOf }) => when.join() === ALWAYS && anyOf.length === 0).map(idOf),
  );

const ALWAYS = 'always';
const idOf = ({ id }: { readonly id: string }): string => id;

function askOf(query: string, catalogue: Catalogue): SheetView['ask'] {
  if (new URLSearchParams(query).has('in')) return [];
  const rest = query.length > 1 ? `&${query.slice(1)}` : '';
  return catalogue.regions.map(({ id, name }) => ({ name, href: `/sheet?in=${id}${rest}` }));
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
    .map((flag) => words.flag(flag));
}

/** Every source that a reason on the sheet rests on, once, by title. */
function sourcesOf(sheet: Sheet, words: Words): SheetView['sources'] {
  const reasons = new Set<string>();
  for (const line of sheet.lines) for (const id of line.because) reasons.add(id);
  const sources = new Set<Source>();
  for (const id of reasons) for (const one of words.row(id)?.sources ?? []) sources.add(one);
  return [...sources].sort((one, other) => (one.title < other.title ? -1 : 1)).map(sourceView);
}
