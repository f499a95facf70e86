/** Days from Excel's day 0 to the first of January 1970. */
const DAYS_TO_1970 = 25569;
/** Days from 2000 to 2100: what a person who types 3/4 today gets. */
const [FIRST, LAST] = [36526, 73050];

/**
 * The day a spreadsheet means by a number, as 2026-03-02, if the number is like one that it makes of `3-2`.
 *
 * @example dateOf(46_023) => "2026-01-01"; 25,569 days to 1970 and 20,454 from there
 */
export function dateOf(serial: number): string | undefined {
  if (!Number.isInteger(serial) || serial < FIRST || serial > LAST) return undefined;
  return new Date((serial - DAYS_TO_1970) * 86_400_000).toISOString().slice(0, 10);
}

/**
 * The number a spreadsheet keeps for a day written 2026-03-02; undefined where that is no day.
 *
 * @example serialOf("2026-01-01") => 46_023; 25,569 days to 1970 and 20,454 from there
 */
export function serialOf(day: string): number | undefined {
  const time = /^\d{4}-\d{2}-\d{2}$/.test(day) ? Date.parse(`${day}T00:00:00Z`) : NaN;
  return Number.isNaN(time) ? undefined : time / 86_400_000 + DAYS_TO_1970;
}
