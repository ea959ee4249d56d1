/**
 * What is sure to be there, as the catalogue was checked at start: every id in it leads to a row,
 * every level is on its scale. Says so to the compiler and does nothing else.
 */
export const sure = <T>(value: T | undefined): T => value as T;
