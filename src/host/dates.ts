const DAY_MS = 86_400_000;
/** 30 December 1899: day 0 of the 1900 date system, as far as it counts right (from 1 March 1900 on). */
const EPOCH = Date.UTC(1899, 11, 30);

/** "2026-04-14" for the serial number of that day; "" for anything that is no day. */
export function isoDay(serial: unknown): string {
  if (typeof serial !== "number" || !(serial >= 61) || serial > 2_958_465) return "";
  return new Date(EPOCH + Math.floor(serial) * DAY_MS).toISOString().slice(0, 10);
}

/** The serial number of a day written "2026-04-14"; "" for anything else. */
export function daySerial(iso: string): number | "" {
  const milliseconds = /^\d{4}-\d{2}-\d{2}$/.test(iso) ? Date.parse(`${iso}T00:00:00Z`) : NaN;
  return Number.isNaN(milliseconds) ? "" : (milliseconds - EPOCH) / DAY_MS;
}

/** The serial number of the day that a moment falls on where the user is. */
export function dayOf(moment: Date): number {
  return (Date.UTC(moment.getFullYear(), moment.getMonth(), moment.getDate()) - EPOCH) / DAY_MS;
}
