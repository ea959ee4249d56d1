import { type LevelReached, SCALES } from '../types.js';
import type { Book } from '../book/book.js';
import { sure } from '../book/sure.js';
import type { Demand } from '../book/book.js';
import type { Held } from './holdRules.js';

/** The level of every scale with the rows that asked for it, milder ones folded. */
export const levelsReached = (
  book: Book,
  held: Held,
  demands: readonly Demand[],
): readonly LevelReached[] =>
  SCALES.map((scale, index) => {
    const height = sure(held.heights[index]);
    const { levels } = sure(book.catalogue.scales.find((each) => each.id === scale));
    const asked = [
      ...held.rules.flatMap(({ rule, heights }) =>
        heights
          .filter((each) => each.scale === index)
          .map((each) => ({ row: rule.id, height: each.height })),
      ),
      ...demands.filter((each) => each.scale === index),
    ];
    const rowsAt = (wanted: (height: number) => boolean): readonly string[] => [
      ...new Set(asked.filter((each) => wanted(each.height)).map((each) => each.row)),
    ];
    const because = rowsAt((each) => each === height);
    return {
      scale,
      level: sure(levels[height]).id,
      height,
      because,
      folded: rowsAt((each) => each < height).filter((row) => !because.includes(row)),
    };
  });
