import type { Flag, SheetLine, ScaleId, Swap, Unknown } from '../reasoning/index.js';
import { airingSpared, mostText } from './airing.js';
import { inside, joined, opening } from './joined.js';
import type { LineWords } from './lines.js';
import type { Messages } from './messages.js';
import type { Names } from './names.js';

/** Short sayings about one result of the reasoning, for places that are not lines of the sheet. */
export interface Sayings {
  readonly unknown: (unknown: Unknown) => string;
  readonly swap: (swap: Swap) => string;
  readonly flag: (flag: Flag) => string;
  /** When to change gloves, from the minutes that they hold; absent: nothing is published. */
  readonly change: (afterMin: number | undefined) => string;
}

/** Which line of lines.yaml says it: the same words as on the sheet, so that a fact has one wording. */
export const SAID_BY = {
  hasDataSheet: 'unknown-thing',
  hasNone: 'unknown-other',
  changeAfter: 'gloves-change-after',
  changeNow: 'gloves-change-now',
  changeTorn: 'gloves-change-torn',
  flags: {
    'dose-above-usual': 'dose-check',
    'dose-above-highest': 'dose-stop',
    'bottle-milder': 'bottle-milder',
    'bottle-used': 'bottle-used',
  } satisfies Readonly<Record<Flag['kind'], string>>,
} as const;

const HAS_DATA_SHEET: ReadonlySet<Unknown['kind']> = new Set(['ink', 'additive', 'agent']);

interface Spoken {
  readonly names: Names;
  readonly level: (scale: ScaleId, levelId: string) => string;
  readonly messages: Messages;
  /** Fills a text of lines.yaml. */
  readonly fillLine: (line: Pick<SheetLine, 'text' | 'values'>) => LineWords;
}

/** Sayings from lines.yaml and from the messages; nothing is worded here. */
export function makeSayings({ names, level, messages, fillLine }: Spoken): Sayings {
  const any = (id: string): string => inside(names.any(id) ?? id);
  const line = (text: string, values: SheetLine['values']): string => {
    const { head, rest } = fillLine({ text, values });
    return `${head} ${rest}`.trim();
  };
  const swapWords = (swap: Swap): string => {
    const { what, for: other, spares, sparesAgents, sparesMl, sparesAirOutMin } = swap;
    const change =
      other === undefined
        ? messages('swap.leaveOut', { what: any(what) })
        : messages('swap.take', { what: any(what), for: any(other) });
    const levels = spares.map(({ scale, to }) => level(scale, to)).join('; ');
    const agents = sparesAgents.map((id) => inside(names.short('agent', id)));
    const amounts = sparesMl.map(({ agent, ml }) =>
      messages('swap.amount', {
        ml: mostText(ml, 'metric'),
        agent: inside(names.short('agent', agent)),
      }),
    );
    return [
      opening(change),
      ...(levels === '' ? [] : [messages('swap.enough', { levels })]),
      ...(agents.length === 0 ? [] : [messages('swap.noAgent', { agents: joined(agents, 'or') })]),
      ...(sparesMl.length === 0 ? [] : [messages('swap.lessMl', { amounts: joined(amounts) })]),
      ...(sparesAirOutMin === undefined
        ? []
        : [messages('swap.airing', { airing: airingSpared(sparesAirOutMin, messages) })]),
    ].join(' ');
  };
  return {
    unknown: ({ kind, id, sdsSection }) =>
      line(HAS_DATA_SHEET.has(kind) ? SAID_BY.hasDataSheet : SAID_BY.hasNone, {
        what: id,
        section: sdsSection,
      }),
    swap: swapWords,
    flag: ({ kind, subject, values }) => line(SAID_BY.flags[kind], { what: subject, ...values }),
    change: (afterMin) => {
      if (afterMin === undefined) return fillLine({ text: SAID_BY.changeTorn, values: {} }).head;
      const text = afterMin === 0 ? SAID_BY.changeNow : SAID_BY.changeAfter;
      return fillLine({ text, values: { minutes: afterMin } }).head;
    },
  };
}
