import { invalid } from "../../calc/problem";

/** The text of an error cell (#N/A, #VALUE! …), whatever shape the host gives it; else undefined. */
export function errorTextOf(raw: unknown): string | undefined {
  if (typeof raw !== "object" || raw === null || Array.isArray(raw)) return undefined;
  const { code, error } = raw as { code?: unknown; error?: unknown };
  if (typeof code === "string" && code.startsWith("#")) return code;
  return typeof error === "string" && error.startsWith("#") ? error : undefined;
}

/** Refuses an error cell by name, so that the user fixes the cell that caused it. */
export function refuseErrorCell(raw: unknown, label: string): void {
  const text = errorTextOf(raw);
  if (text !== undefined) throw invalid(`${label} holds the error ${text}; fix that cell first`);
}

/**
 * Whether an argument was left out. Hosts pass a blank as undefined, null or "";
 * a host with an older signature passes its invocation object in place of a newer optional argument.
 */
export function isBlank(raw: unknown): boolean {
  if (raw === undefined || raw === null) return true;
  if (typeof raw === "string") return raw.trim() === "";
  return typeof raw === "object" && !Array.isArray(raw) && errorTextOf(raw) === undefined;
}

/** A single cell passed as a range arrives as [[x]]; take the x. */
export function single(raw: unknown, label: string): unknown {
  if (!Array.isArray(raw)) return raw;
  const rows = raw as unknown[];
  const first: unknown = rows[0];
  if (rows.length === 1 && Array.isArray(first) && first.length === 1) return first[0] as unknown;
  if (rows.length === 0) return undefined;
  throw invalid(`${label} must be one cell, not a range`);
}

/** What was found, for a sentence. */
export function shown(raw: unknown): string {
  if (typeof raw === "string") return `"${raw.slice(0, 40)}"`;
  if (typeof raw === "boolean") return raw ? "TRUE" : "FALSE";
  // As typed, without the noise of binary arithmetic.
  if (typeof raw === "number") return String(Number(raw.toPrecision(12)));
  return String(raw).slice(0, 40);
}
