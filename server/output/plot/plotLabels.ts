import type { AirCurve, PlotLimit } from './curve.js';
import type { Frame } from './frame.js';
import { apart, brokenInto, spanOf, type Label } from './labels.js';
import { group, texted } from './svg.js';

type Point = AirCurve['series'][number];

/** Names of the limits at their lines, names of the curves beside their highest points. */
export const plotLabels = (
  { series, zones, words }: AirCurve,
  drawn: readonly PlotLimit[],
  frame: Frame,
): readonly string[] => {
  const near = (point: Point): number => point.nearMgM3;
  const far = (point: Point): number => point.farMgM3;
  const labels = apart(
    [
      ...drawn.map((limit) => limitLabel(limit, frame)),
      ...(zones === 2 ? curveLabel(series, near, { text: words.near, isAbove: true }, frame) : []),
      ...curveLabel(series, far, { text: words.far, isAbove: zones === 1 }, frame),
    ],
    frame.page,
  );
  return labels.map((label) => written(label, frame));
};

/** Between a label and its line. */
const GAP = 3;

const limitLabel = ({ label, mgM3 }: PlotLimit, { left, right, y, page }: Frame): Label => {
  const lines = brokenInto(label, right - left, page);
  const half = (lines.length * page.lineHeight) / 2;
  return { lines, className: 'limit', x: right, y: y(mgM3) - half, anchor: 'end' };
};

/** Past this share of the page a label stands before its point, so as to fit. */
const LATE = 0.6;

/** Above a curve, or below it, from its highest point on, clear of it all along. */
const curveLabel = (
  series: readonly Point[],
  level: (point: Point) => number,
  { text, isAbove }: { readonly text: string; readonly isAbove: boolean },
  frame: Frame,
): readonly Label[] => {
  const top = series.reduce<Point | undefined>(
    (best, point) => (best && level(best) >= level(point) ? best : point),
    undefined,
  );
  if (!top) return [];
  const { left, right, page } = frame;
  const at = frame.x(top.min);
  const isLate = at > left + (right - left) * LATE;
  const label: Label = {
    lines: [text],
    className: isAbove ? 'near' : 'far',
    x: isLate ? at - 2 * GAP : at + 2 * GAP,
    y: frame.y(level(top)),
    anchor: isLate ? 'end' : 'start',
  };
  const [from, to] = spanOf(label, page);
  const heights = series
    .filter(({ min }) => frame.x(min) >= from && frame.x(min) <= to)
    .map((point) => frame.y(level(point)));
  const away = page.lineHeight / 2 + GAP;
  const y = isAbove ? Math.min(label.y, ...heights) - away : Math.max(label.y, ...heights) + away;
  return [{ ...label, y }];
};

const written = ({ lines, className, x, y, anchor }: Label, { page }: Frame): string =>
  group(
    'text',
    { class: className, 'text-anchor': anchor },
    lines.map((line, row) =>
      texted('tspan', { x, y: y + (row - (lines.length - 1) / 2) * page.lineHeight }, line),
    ),
  );
