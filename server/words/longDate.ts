const LONG = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long', timeZone: 'UTC' });

/**
 * An ISO date with its month in words, so that nobody reads it the other way round.
 *
 * @example longDate('2026-03-04') // '4 March 2026'
 */
export function longDate(iso: string): string {
  return LONG.format(new Date(iso));
}
