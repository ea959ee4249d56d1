import { PHASES, type Phase, type SheetLine } from '../../reasoning/index.js';
import { airingClock, type Words } from '../../words/index.js';
import { whyOf, type WhyView } from './reasons.js';

/** A phase with its mark, its colour (by `id`) and its lines in working order. */
export interface PhaseView {
  readonly id: Phase;
  readonly titleKey: string;
  readonly mark: string;
  /** True of the phase that is drawn as a full block, with numbers and without tick boxes. */
  readonly isAid: boolean;
  readonly lines: readonly LineView[];
}

export interface LineView {
  /** Id of the tick box: the same for the same line of the same bench, so that ticks survive. */
  readonly id: string;
  readonly head: string;
  readonly rest: string;
  /** True of the working order of one tool. */
  readonly isTool: boolean;
  /** Minutes that a clock beside it counts down from the last wipe; 0: none does. */
  readonly clock: number;
  readonly why: WhyView;
}

const MARKS: Readonly<Record<Phase, string>> = {
  'before-inking': 'signs/triangle',
  'while-printing': 'signs/disc',
  'wash-up': 'signs/square',
  'rags-and-waste': 'signs/diamond',
  'lock-up': 'signs/pentagon',
  'if-it-goes-wrong': 'signs/cross',
};
const AID: Phase = 'if-it-goes-wrong';

/** Phases that have lines, in the order of the day. */
export function phasesOf(
  lines: readonly SheetLine[],
  lineOf: (line: SheetLine) => LineView,
): readonly PhaseView[] {
  return PHASES.map((id) => ({
    id,
    titleKey: `phase.${id}`,
    mark: MARKS[id],
    isAid: id === AID,
    lines: lines.filter((line) => line.phase === id).map(lineOf),
  })).filter((phase) => phase.lines.length > 0 || phase.isAid);
}

/** What the lines of one sheet have in common. */
interface SheetOfLines {
  readonly words: Words;
  readonly region: string;
  /** Rules that hold for every bench: what they say is said at the first of their lines only. */
  readonly always: ReadonlySet<string>;
}

/** Lines that are kept made; when there are more, all are made anew. */
const MOST_KEPT = 4000;
const kept = new WeakMap<Words, Map<string, LineView>>();

/**
 * Makes the lines of one sheet, in reading order. The same line on another sheet
 * is the same view: made, and drawn, once.
 */
export function makeLineOf({ words, region, always }: SheetOfLines): (line: SheetLine) => LineView {
  const lines = kept.get(words) ?? new Map<string, LineView>();
  kept.set(words, lines);
  const told = new Set<string>();
  return (line) => {
    const [first = ''] = line.because;
    const isTold = told.has(first);
    if (always.has(first)) told.add(first);
    const key = keyOf(line, region, isTold);
    const known = lines.get(key);
    if (known) return known;
    if (lines.size >= MOST_KEPT) lines.clear();
    const view = makeLine(line, words, region, isTold);
    lines.set(key, view);
    return view;
  };
}

/** All that a line's view is made of. Written out by hand: this is done for every line of every sheet. */
function keyOf(
  { id, text, values, because, folded, route }: SheetLine,
  region: string,
  isTold: boolean,
): string {
  const filled = Object.keys(values).length > 0 ? JSON.stringify(values) : '';
  const passes = route ? JSON.stringify(route.passes) : '';
  return `${region} ${id} ${text} ${because.join()} ${folded.join()} ${filled} ${passes} ${isTold}`;
}

/** A line that says how long to air has a clock. */
const clockOf = ({ values: { airing } }: SheetLine): number =>
  typeof airing === 'number' ? airingClock(airing) : 0;

function makeLine(line: SheetLine, words: Words, region: string, isTold: boolean): LineView {
  const { head, rest } = words.line(line, region);
  const why = whyOf(line.because, line.folded, words);
  return {
    id: `line-${line.id.replace(/\s/g, '_')}`,
    head,
    rest,
    isTool: line.route !== undefined,
    clock: clockOf(line),
    why: isTold ? { ...why, first: { ...why.first, says: '' } } : why,
  };
}
