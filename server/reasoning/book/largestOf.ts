/**
 * Each key once, in the order first met; named twice, the row with the larger figure stands. No
 * figure counts as the least, one that could not be read (`NaN`) as the most: the cautious way.
 */
export const largestOf = <T>(
  rows: readonly T[],
  keyOf: (row: T) => string,
  figureOf: (row: T) => number | undefined,
): T[] => {
  const sizeOf = (row: T): number => {
    const figure = figureOf(row) ?? -1;
    return Number.isNaN(figure) ? Infinity : figure;
  };
  const largest = new Map<string, T>();
  for (const row of rows) {
    const seen = largest.get(keyOf(row));
    if (seen === undefined || sizeOf(row) > sizeOf(seen)) largest.set(keyOf(row), row);
  }
  return [...largest.values()];
};
