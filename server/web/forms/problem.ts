/**
 * Something a person can get wrong: where it stands in the bench, which field
 * of the bench page shows it, what was given and what is accepted instead.
 */
export interface Problem {
  /** JSON pointer (RFC 6901) into the bench, "/mixes/0/parts/1/share"; "" is the whole bench. */
  readonly path: string;
  /** Name of the field of the bench page that it belongs to; "" when it is about the whole page. */
  readonly field: string;
  readonly got: string;
  readonly accepts: string;
}

/** Most problems told at one time; the rest is told once these are put right. */
export const PROBLEMS_TOLD = 20;
