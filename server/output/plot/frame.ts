import type { Page } from './labels.js';

/** For a phone, or for a page twice as wide; letters are as large in both. */
export type PlotWidth = 'narrow' | 'wide';

/** Where things stand in a drawing. */
export interface Frame {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly horizonMin: number;
  readonly mostMgM3: number;
  readonly x: (min: number) => number;
  readonly y: (mgM3: number) => number;
  readonly page: Page;
  /** About how many steps fit beside and below the axes. */
  readonly stepsX: number;
  readonly stepsY: number;
}

const WIDTHS: Readonly<Record<PlotWidth, number>> = { narrow: 360, wide: 720 };
const HEIGHT = 400;
const LINE = 16;
/** Room for the numbers on the left, the bands above, the numbers and the unit below. */
const LEFT = 58;
const RIGHT = 10;
const TOP = 36;
const BOTTOM = 46;
/** Air above the highest point. */
const HEADROOM = 1.12;
/** Room that a number needs below the axis. */
const STEP = 70;

/** The frame of a drawing whose curves go so long and so high. Never empty, so nothing divides by nought. */
export const frameOf = (
  width: PlotWidth,
  most: { readonly horizonMin: number; readonly mostMgM3: number },
): Frame => {
  const [left, right, top, bottom] = [LEFT, WIDTHS[width] - RIGHT, TOP, HEIGHT - BOTTOM];
  const horizonMin = Math.max(1, most.horizonMin);
  const mostMgM3 = Math.max(1, most.mostMgM3) * HEADROOM;
  return {
    width: WIDTHS[width],
    height: HEIGHT,
    ...{ left, right, top, bottom, horizonMin, mostMgM3 },
    x: (min) => left + ((right - left) * min) / horizonMin,
    y: (mgM3) => bottom - ((bottom - top) * mgM3) / mostMgM3,
    page: { lineHeight: LINE, top, bottom },
    stepsX: Math.floor((right - left) / STEP),
    stepsY: 5,
  };
};
