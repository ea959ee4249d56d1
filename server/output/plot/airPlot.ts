import { line } from 'd3-shape';
import { axes } from './axes.js';
import { bands } from './bands.js';
import type { AirCurve } from './curve.js';
import { frameOf, type PlotWidth } from './frame.js';
import { limitsToDraw } from './limitsToDraw.js';
import { plotLabels } from './plotLabels.js';
import { group, shape, texted } from './svg.js';

type Point = AirCurve['series'][number];

/**
 * Vapour over time as an SVG drawing, mg/m3 by minutes or hours: at the bench solid, in the room
 * dashed, limits as lines, wash-up and airing as bands. Drawn for a phone or for a wider page.
 */
export const airPlot = (curve: AirCurve, width: PlotWidth): string => {
  const { series, zones, words } = curve;
  const { drawn, peakMgM3 } = limitsToDraw(curve);
  const frame = frameOf(width, {
    horizonMin: curve.horizonMin,
    mostMgM3: Math.max(peakMgM3, ...drawn.map(({ mgM3 }) => mgM3)),
  });
  const curveOf = (className: string, level: (point: Point) => number): string => {
    const path = line<Point>(
      (point) => frame.x(point.min),
      (point) => frame.y(level(point)),
    ).digits(1);
    return shape('path', { class: `curve ${className}`, d: path(series) ?? '' });
  };
  const id = `air-plot-${width}`;
  return group(
    'svg',
    {
      class: `plot ${width}`,
      viewBox: `0 0 ${String(frame.width)} ${String(frame.height)}`,
      role: 'img',
      'aria-labelledby': `${id} ${id}-says`,
    },
    [
      texted('title', { id }, words.title),
      texted('desc', { id: `${id}-says` }, words.says),
      ...bands(curve, frame),
      ...axes(frame, words),
      ...drawn.map(({ mgM3 }) =>
        shape('path', {
          class: 'limit',
          d: `M${String(frame.left)} ${frame.y(mgM3).toFixed(1)}H${String(frame.right)}`,
        }),
      ),
      curveOf('far', (point) => point.farMgM3),
      ...(zones === 2 ? [curveOf('near', (point) => point.nearMgM3)] : []),
      ...plotLabels(curve, drawn, frame),
    ],
  );
};
