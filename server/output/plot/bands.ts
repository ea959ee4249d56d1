import type { AirCurve } from './curve.js';
import type { Frame } from './frame.js';
import { widthOf } from './labels.js';
import { shape, texted } from './svg.js';

/** Names of the bands stand this far above them. */
const NAMES_ABOVE = 14;
/** Between two names. */
const GAP = 12;

/** Wash-up and airing as light bands, each named above; airing that never ends goes on to the edge. */
export const bands = (
  { endMin, airOutMin, horizonMin, words }: AirCurve,
  frame: Frame,
): readonly string[] => {
  const { x, top, bottom, left, right, page } = frame;
  const washedUp = Math.min(endMin, horizonMin);
  const aired = Math.min(endMin + (airOutMin ?? horizonMin), horizonMin);
  const nameY = top - NAMES_ABOVE;
  const airingX = Math.max(x(washedUp), left + widthOf(words.washUp, page) + GAP);
  const fits = airingX + widthOf(words.airing, page) <= right;
  const band = (className: string, from: number, to: number): string =>
    shape('rect', {
      class: `band ${className}`,
      x: x(from),
      y: top - 4,
      width: x(to) - x(from),
      height: bottom - top + 4,
    });
  return [
    ...(washedUp > 0 ? [band('washing', 0, washedUp)] : []),
    ...(aired > washedUp ? [band('airing', washedUp, aired)] : []),
    texted('text', { class: 'band', x: left, y: nameY, 'text-anchor': 'start' }, words.washUp),
    texted(
      'text',
      {
        class: 'band',
        x: fits ? airingX : right,
        y: nameY,
        'text-anchor': fits ? 'start' : 'end',
      },
      words.airing,
    ),
  ];
};
