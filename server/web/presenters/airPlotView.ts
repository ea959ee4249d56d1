import { airPlot } from '../../output/plot/airPlot.js';
import type { AirCurve, PlotLimit } from '../../output/plot/curve.js';
import { limitsToDraw } from '../../output/plot/limitsToDraw.js';
import type { AirAnswer, AirShare } from '../../reasoning/index.js';
import { joined, type Words } from '../../words/index.js';

/** The curve as a drawing for each width of page, and as a table. */
export interface AirPlotView {
  readonly wide: string;
  readonly narrow: string;
  /** Names the limits that are too high to be drawn; empty when there are none. */
  readonly offTop: string;
  readonly hasNear: boolean;
  readonly rows: readonly { readonly time: string; readonly near: string; readonly far: string }[];
}

/** Rows that the table has, beside the highest point and the end of the wash-up. */
const ROWS = 12;
const TENTHS = 10;

/** The drawing of an estimate and its table. */
export function airPlotView(answer: AirAnswer, words: Words): AirPlotView {
  const { series, zones } = answer;
  const limits = limitsOf(answer, words);
  const offTop = limitsToDraw({ series, limits }).offTop.map(({ label }) => label);
  const curve: AirCurve = { ...answer, limits, words: plotWords(answer, words) };
  return {
    wide: airPlot(curve, 'wide'),
    narrow: airPlot(curve, 'narrow'),
    offTop:
      offTop.length === 0 ? '' : words.message('air.plot.offTop', { limits: offTop.join('; ') }),
    hasNear: zones === 2,
    rows: tableOf(answer, words),
  };
}

const KIND_KEYS: Readonly<Record<AirShare['kind'], string>> = {
  'long-term': 'air.plot.day',
  'short-term': 'air.plot.short',
  ceiling: 'air.plot.ceiling',
  excursion: 'air.plot.short',
};

/** The limits that count here; those of one level and one length of time share a line. */
function limitsOf({ shares, mostMl }: AirAnswer, words: Words): readonly PlotLimit[] {
  const isMany = mostMl.length > 1;
  const byLine = new Map<string, readonly AirShare[]>();
  for (const share of shares.filter(({ applies }) => applies)) {
    const line = `${isMany ? share.substance : ''} ${share.kind} ${words.airLimit(share.limitMgM3)}`;
    byLine.set(line, [...(byLine.get(line) ?? []), share]);
  }
  return [...byLine.values()].flatMap((same) => {
    const [first] = same;
    if (!first) return [];
    const values = {
      limit: joined([...new Set(same.map(({ limit }) => limit))]),
      kind: words.message(KIND_KEYS[first.kind]),
      level: words.airLimit(first.limitMgM3),
    };
    const substance = liquidName(first.substance, mostMl, words);
    return {
      mgM3: first.limitMgM3,
      label: isMany
        ? words.message('air.plot.limitOf', { substance, ...values })
        : words.message('air.plot.limit', values),
    };
  });
}

/** What people call a substance here: the agent that it came in. */
function liquidName(id: string, mostMl: AirAnswer['mostMl'], words: Words): string {
  const agent = mostMl.find(({ substance }) => substance === id)?.agent;
  return agent === undefined ? words.name('substance', id) : words.short('agent', agent);
}

/** Finer at the beginning, where much happens. */
const timeText = (min: number, { message, number }: Words): string =>
  message('air.minutes', {
    n: number(min < TENTHS ? Math.round(min * TENTHS) / TENTHS : Math.round(min)),
  });

function plotWords(answer: AirAnswer, words: Words): AirCurve['words'] {
  const { message } = words;
  return {
    title: message('air.plot'),
    says: message('air.plot.says', {
      at: timeText(answer.peakAtMin, words),
      peak: words.airLevel(answer.peakMgM3),
      worst: words.airLevel(answer.worst15MinMgM3),
    }),
    near: message('air.plot.near'),
    far: message('air.plot.far'),
    washUp: message('air.plot.washUp'),
    airing: message('air.plot.airing'),
    level: message('air.plot.level'),
    minutes: message('air.plot.minutes'),
    hours: message('air.plot.hours'),
    number: words.number,
  };
}

/** Points of the curve evenly, and the two that people look for; each time once. */
function tableOf({ series, peakAtMin, endMin }: AirAnswer, words: Words): AirPlotView['rows'] {
  const step = Math.max(1, Math.ceil(series.length / ROWS));
  const rows = new Map<string, AirPlotView['rows'][number]>();
  for (const [place, { min, nearMgM3, farMgM3 }] of series.entries()) {
    const time = timeText(min, words);
    const isShown = place % step === 0 || min === peakAtMin || min === endMin;
    if (!isShown || rows.has(time)) continue;
    rows.set(time, { time, near: words.airLevel(nearMgM3), far: words.airLevel(farMgM3) });
  }
  return [...rows.values()];
}
