import type { Catalogue, Reasoner } from '../reasoning/index.js';
import type { Words } from '../words/index.js';

/** Today, as people write it: an ISO date. The only time that a page may know. */
export interface Clock {
  readonly today: () => string;
}

/** What the pages are made of; main.ts brings it, tests bring their own. */
export interface Parts {
  readonly catalogue: Catalogue;
  readonly reasoner: Reasoner;
  readonly words: Words;
  readonly clock: Clock;
  /** The address that people reach this server by; left out: whatever they asked for. */
  readonly publicOrigin?: string;
  /** Of the program, as package.json says it. */
  readonly version: string;
}
