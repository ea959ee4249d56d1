import type { Because, Route, Value } from '../types.js';

export type Values = Readonly<Record<string, Value>>;

/** A line on its way: which text, filled with what, and why. */
export interface Spoken {
  readonly text: string;
  readonly values?: Values;
  readonly because: Because;
  readonly folded?: Because;
  readonly route?: Route;
  /** What it speaks of, where one text is printed for several things. */
  readonly about?: string;
}
