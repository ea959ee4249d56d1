import { ticks } from 'd3-array';
import type { PlotWords } from './curve.js';
import type { Frame } from './frame.js';
import { shape, texted } from './svg.js';

const HOUR = 60;
/** Beside the names of the bands. */
const UNIT_ABOVE = 14;
/** Up to here time is counted in minutes. */
const MINUTES_UP_TO = 2 * HOUR;

/** Hairline axes with their numbers and units. */
export const axes = (frame: Frame, words: PlotWords): readonly string[] => {
  const { left, right, top, bottom, height, width, x, y, horizonMin, mostMgM3 } = frame;
  const unit = horizonMin <= MINUTES_UP_TO ? 1 : HOUR;
  return [
    shape('path', {
      class: 'axis',
      d: `M${String(left)} ${String(top)}V${String(bottom)}H${String(right)}`,
    }),
    ...ticks(0, mostMgM3, frame.stepsY).map((level) =>
      texted(
        'text',
        { class: 'tick-y', x: left - 6, y: y(level), 'text-anchor': 'end' },
        words.number(level),
      ),
    ),
    ...ticks(0, horizonMin / unit, frame.stepsX).flatMap((time) => {
      const at = x(time * unit);
      return [
        shape('path', { class: 'axis', d: `M${at.toFixed(1)} ${String(bottom)}v5` }),
        texted(
          'text',
          { class: 'tick-x', x: at, y: bottom + 14, 'text-anchor': 'middle' },
          words.number(time),
        ),
      ];
    }),
    texted(
      'text',
      { class: 'unit', x: 0, y: top - UNIT_ABOVE, 'text-anchor': 'start' },
      words.level,
    ),
    texted(
      'text',
      { class: 'unit', x: width - 10, y: height - 10, 'text-anchor': 'end' },
      unit === 1 ? words.minutes : words.hours,
    ),
  ];
};
