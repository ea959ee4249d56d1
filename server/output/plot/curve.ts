import type { AirAnswer } from '../../reasoning/index.js';

/** A published limit as a line: who set it and how much, and the level in mg/m3. */
export interface PlotLimit {
  readonly label: string;
  readonly mgM3: number;
}

/** All that people read in the drawing. */
export interface PlotWords {
  readonly title: string;
  readonly says: string;
  readonly near: string;
  readonly far: string;
  readonly washUp: string;
  readonly airing: string;
  readonly level: string;
  readonly minutes: string;
  readonly hours: string;
  readonly number: (value: number) => string;
}

export interface AirCurve extends Pick<
  AirAnswer,
  'series' | 'horizonMin' | 'endMin' | 'airOutMin' | 'zones'
> {
  readonly limits: readonly PlotLimit[];
  readonly words: PlotWords;
}
