/** Order of two ids, for sorting: the same on every machine, whatever its language. */
export const compare = (a: string, b: string): number => (a < b ? -1 : Number(a > b));
