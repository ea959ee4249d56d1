import { SCALES } from '../types.js';
import type { Book, Demand, ReadyRule } from '../book/book.js';
import { sure } from '../book/sure.js';

/** How high each scale must go, and who says so. */
export interface Held {
  readonly rules: readonly ReadyRule[];
  /** Place on each scale, in the order of SCALES. */
  readonly heights: readonly number[];
}

/** Joins two places on one scale: the more careful one. */
export const joinHeights = (a: number, b: number): number => Math.max(a, b);

/**
 * The rules that hold when these tags are present, and the strictest level of every scale.
 * A rule holds when all of `when` and one of `anyOf` (when it has any) are present.
 */
export const holdRules = (
  book: Book,
  tags: ReadonlySet<string>,
  demands: readonly Demand[],
): Held => {
  const present = new Uint8Array(book.tags.size);
  for (const tag of tags) {
    const number = book.tags.get(tag);
    if (number !== undefined) present[number] = 1;
  }
  const isPresent = (tag: number): boolean => present[tag] === 1;
  const rules = book.rules.filter(
    (rule) => rule.when.every(isPresent) && (rule.anyOf.length === 0 || rule.anyOf.some(isPresent)),
  );
  const heights = SCALES.map(() => 0);
  const raise = (scale: number, height: number): void => {
    heights[scale] = joinHeights(sure(heights[scale]), height);
  };
  for (const rule of rules) for (const each of rule.heights) raise(each.scale, each.height);
  for (const each of demands) raise(each.scale, each.height);
  return { rules, heights };
};
