/** Days from Excel's day 0 to the first of January 1970. */
const DAYS_TO_1970 = 25569;
/** Days from 2000 to 2100: what a person who types 3/4 today gets. */
const [FIRST, LAST] = [36526, 73050];

/** The day a spreadsheet means by a number, as 2026-03-02, if the number is like one that it makes of `3-2`. */
export function dateOf(serial: number): string | undefined {
  if (!Number.isInteger(serial) || serial < FIRST || serial > LAST) return undefined;
  return new Date((serial - DAYS_TO_1970) * 86_400_000).toISOString().slice(0, 10);
}
