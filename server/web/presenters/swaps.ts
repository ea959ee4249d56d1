import type { Swap } from '../../reasoning/index.js';
import type { Words } from '../../words/index.js';
import { rowName } from './rowName.js';

/** What would make the next wash-up milder. */
export interface SwapView {
  /** "swap.swap" or "swap.leave-out". */
  readonly doKey: string;
  readonly what: string;
  /** What to take in its place; empty when it is left out. */
  readonly for: string;
  readonly spares: readonly {
    readonly scale: string;
    readonly from: string;
    readonly to: string;
  }[];
  readonly sparesAgents: readonly string[];
}

export function swapOf(swap: Swap, words: Words): SwapView {
  return {
    doKey: `swap.${swap.kind}`,
    what: rowName(swap.what, words),
    for: swap.for === undefined ? '' : rowName(swap.for, words),
    spares: swap.spares.map(({ scale, from, to }) => ({
      scale: words.name('scale', scale),
      from: words.level(scale, from),
      to: words.level(scale, to),
    })),
    sparesAgents: swap.sparesAgents.map((id) => words.short('agent', id)),
  };
}
