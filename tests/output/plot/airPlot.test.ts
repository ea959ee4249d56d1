import { load } from 'cheerio';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airPlot } from '../../../server/output/plot/airPlot.js';
import type { AirCurve } from '../../../server/output/plot/curve.js';
import { anAirAnswer } from '../../support/anAirAnswer.js';
import { runs } from '../../support/arbitraries.js';

const words: AirCurve['words'] = {
  title: 'Vapour <over> time',
  says: 'Highest after 20 min.',
  near: 'at the bench',
  far: 'in the room',
  washUp: 'Wash-up',
  airing: 'Airing',
  level: 'mg/m³',
  minutes: 'minutes',
  hours: 'hours',
  number: String,
};
const LIMITS = [
  { label: 'WEL, day: 54', mgM3: 54 },
  { label: 'WEL, 15 min: 300', mgM3: 300 },
];
const curve = (but: Partial<AirCurve> = {}): AirCurve => ({
  ...anAirAnswer,
  limits: LIMITS,
  words,
  ...but,
});
const WIDTHS = ['narrow', 'wide'] as const;
const drawn = (but: Partial<AirCurve> = {}, width: (typeof WIDTHS)[number] = 'wide') =>
  load(airPlot(curve(but), width), { xml: true });

type Drawing = ReturnType<typeof drawn>;

const numbers = (text = ''): readonly number[] => (text.match(/-?\d+(\.\d+)?/g) ?? []).map(Number);

/** Corners of a path of straight lines. */
const corners = ($: Drawing, selector: string): readonly (readonly [number, number])[] => {
  const found = numbers($(selector).attr('d'));
  return found.flatMap((x, at) => (at % 2 === 0 ? [[x, found[at + 1] ?? NaN] as const] : []));
};

/** Where the number of an axis stands: pairs of value and place. */
const axis = ($: Drawing, selector: string, place: 'x' | 'y') =>
  $(selector)
    .toArray()
    .map((each) => [Number($(each).text()), Number($(each).attr(place))] as const);

/** The value at a place of an axis, by two of its numbers. */
const valueAt = (marks: readonly (readonly [number, number])[], at: number): number => {
  const [[zero, from], [most, to]] = [marks[0], marks.at(-1)] as [
    readonly [number, number],
    readonly [number, number],
  ];
  return zero + ((at - from) / (to - from)) * (most - zero);
};

/** What each label covers: seven pixels a letter, sixteen a line. */
const boxes = ($: Drawing) =>
  $('text.near, text.far, text.limit')
    .toArray()
    .flatMap((text) =>
      $(text)
        .children('tspan')
        .toArray()
        .map((line) => {
          const width = $(line).text().length * 7;
          const x = Number($(line).attr('x'));
          const y = Number($(line).attr('y'));
          const from = $(text).attr('text-anchor') === 'end' ? x - width : x;
          return { from, to: from + width, top: y - 8, bottom: y + 8, of: text };
        }),
    );

const overlaps = ($: Drawing): number => {
  const all = boxes($);
  return all.filter((one, at) =>
    all
      .slice(at + 1)
      .some(
        (other) =>
          one.of !== other.of &&
          one.from < other.to &&
          other.from < one.to &&
          one.top < other.bottom - 0.2 &&
          other.top < one.bottom - 0.2,
      ),
  ).length;
};

describe('the plot of the air', () => {
  it.each(WIDTHS)('draws each point of the curves where its axes say: %s', (width) => {
    const $ = drawn({}, width);
    const across = axis($, '.tick-x', 'x');
    const up = axis($, '.tick-y', 'y');
    for (const [selector, level] of [
      ['.curve.near', 'nearMgM3'],
      ['.curve.far', 'farMgM3'],
    ] as const) {
      const points = corners($, selector);
      expect(points).toHaveLength(anAirAnswer.series.length);
      for (const [at, point] of anAirAnswer.series.entries()) {
        const [x, y] = points[at] ?? [NaN, NaN];
        // A tenth of a pixel each way; the axis is in hours.
        expect(Math.abs(valueAt(across, x) * 60 - point.min)).toBeLessThan(1);
        expect(Math.abs(valueAt(up, y) - point[level])).toBeLessThan(1);
      }
    }
  });

  it('draws a limit at its level, with its name', () => {
    const $ = drawn();
    const up = axis($, '.tick-y', 'y');
    const levels = $('path.limit')
      .toArray()
      .map((each) => valueAt(up, numbers($(each).attr('d'))[1] ?? NaN));
    expect(levels.map(Math.round)).toEqual([54, 300]);
    expect($('text.limit').text()).toContain('WEL, day: 54');
  });

  it('leaves limits far above the curves off, rather than press the curves flat', () => {
    const $ = drawn({ limits: [...LIMITS, { label: 'high', mgM3: 1300 }] });
    expect($('path.limit')).toHaveLength(2);
    expect($('text').text()).not.toContain('high');
  });

  it('counts in minutes up to two hours, then in hours', () => {
    const unit = (horizonMin: number) => drawn({ horizonMin })('.unit').last().text();
    expect([unit(120), unit(121)]).toEqual(['minutes', 'hours']);
  });

  it('shows wash-up and airing as bands that meet, airing no longer than the page', () => {
    const edges = ($: Drawing, name: string): readonly [number, number] => {
      const x = Number($(`rect.${name}`).attr('x'));
      return [x, x + Number($(`rect.${name}`).attr('width'))];
    };
    const $ = drawn();
    expect(edges($, 'washing')[1]).toBeCloseTo(edges($, 'airing')[0], 0);
    const across = axis($, '.tick-x', 'x');
    expect(Math.abs(valueAt(across, edges($, 'airing')[1]) * 60 - 266)).toBeLessThan(1);
    const { series, horizonMin, endMin, zones } = anAirAnswer;
    const endless = { series, horizonMin, endMin, zones, limits: LIMITS, words };
    const never = load(airPlot(endless, 'wide'), { xml: true });
    expect(Math.abs(valueAt(across, edges(never, 'airing')[1]) * 60 - 300)).toBeLessThan(1);
  });

  it('keeps the names of the bands apart, however short the wash-up is', () => {
    for (const width of WIDTHS) {
      for (const endMin of [0, 1, 150, 299]) {
        const [one, other] = drawn({ endMin, airOutMin: 30 }, width)('text.band').toArray();
        const endOfFirst = Number(one?.attribs['x']) + words.washUp.length * 7;
        const isEnd = other?.attribs['text-anchor'] === 'end';
        const startOfSecond = Number(other?.attribs['x']) - (isEnd ? words.airing.length * 7.6 : 0);
        expect(startOfSecond).toBeGreaterThan(endOfFirst);
      }
    }
  });

  it('has one curve where the room is counted as one', () => {
    const $ = drawn({ zones: 1 });
    expect($('.curve')).toHaveLength(1);
    expect($('text.near, text.far').text()).toBe('in the room');
  });

  it('is named and described for those who cannot see it', () => {
    const $ = drawn();
    const [title = '', says = ''] = ($('svg').attr('aria-labelledby') ?? '').split(' ');
    expect($('svg').attr('role')).toBe('img');
    expect($(`title#${title}`).text()).toBe('Vapour <over> time');
    expect($(`desc#${says}`).text()).toBe('Highest after 20 min.');
  });

  it('carries no style of its own, so that page, dark ground and print decide', () => {
    expect(airPlot(curve(), 'wide')).not.toMatch(/ style=| fill=| stroke=|#[\da-f]{3}/);
  });

  it('is a drawing even of an empty room', () => {
    for (const width of WIDTHS) {
      const nothing = { series: [], limits: [], horizonMin: 0, endMin: 0, airOutMin: 0 };
      const svg = airPlot(curve(nothing), width);
      expect(svg).not.toMatch(/NaN|Infinity|undefined/);
      expect(load(svg, { xml: true })('text.near, text.far')).toHaveLength(0);
    }
  });

  it('never puts one label over another, nor one off the page, nor a number that is none', () => {
    const level = fc.double({ min: 0, max: 50_000, noNaN: true });
    const day = fc.record({
      levels: fc.array(fc.tuple(level, level), { minLength: 2, maxLength: 8 }),
      limits: fc.array(fc.double({ min: 0.1, max: 50_000, noNaN: true }), { maxLength: 8 }),
      horizonMin: fc.integer({ min: 1, max: 2880 }),
      endMin: fc.integer({ min: 0, max: 2880 }),
      width: fc.constantFrom(...WIDTHS),
    });
    fc.assert(
      fc.property(day, ({ levels, limits, horizonMin, endMin, width }) => {
        const series = levels.map(([nearMgM3, farMgM3], at) => ({
          min: (horizonMin * at) / (levels.length - 1),
          nearMgM3,
          farMgM3,
        }));
        const named = limits.map((mgM3) => ({
          mgM3,
          label: `Turpentine, WEL: ${mgM3.toFixed(0)}`,
        }));
        const $ = drawn({ series, horizonMin, endMin, limits: named }, width);
        expect($.xml()).not.toMatch(/NaN|Infinity|undefined/);
        expect(overlaps($)).toBe(0);
        const right = width === 'wide' ? 720 : 360;
        for (const box of boxes($)) {
          expect(box.from).toBeGreaterThanOrEqual(0);
          expect(box.to).toBeLessThanOrEqual(right);
          expect(box.top).toBeGreaterThan(20);
          expect(box.bottom).toBeLessThan(380);
        }
      }),
      runs(300),
    );
  });
});
