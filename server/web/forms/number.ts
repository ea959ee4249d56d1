const NUMBER = /^[+-]?(\d{1,12}([.,]\d{0,12})?|[.,]\d{1,12})$/;
/** "1,200" is twelve hundred to one reader and 1.2 to another: never guessed. */
const TWO_READINGS = /^[+-]?[1-9]\d{0,2},\d{3}$/;
/** Three decimals are finer than any scale in a print shop. */
const FINENESS = 1000;

/**
 * A typed number, with decimal point or decimal comma, with or without a
 * percent sign; rounded to three decimals. Undefined when it is no number, or
 * could be read in two ways.
 *
 * @example readNumber('2,5') // 2.5
 */
export function readNumber(typed: string): number | undefined {
  const value = readExactly(typed);
  return value === undefined ? undefined : roundNumber(value);
}

/** The same with all its decimals: a diffusivity is finer than any bench. */
export function readExactly(typed: string): number | undefined {
  const text = typed.replace('%', '').trim();
  return NUMBER.test(text) && !TWO_READINGS.test(text) ? Number(text.replace(',', '.')) : undefined;
}

/** The number to three decimals, never minus nought. */
export function roundNumber(value: number): number {
  return Math.round(value * FINENESS) / FINENESS + 0;
}
