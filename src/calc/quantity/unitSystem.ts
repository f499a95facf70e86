import { invalid } from "../problem";

/** The two systems of default units a worksheet can work in. */
export type UnitSystem = "US" | "SI";

/**
 * Reads the `units` argument: "US" (also blank) or "SI".
 *
 * @example readUnitSystem("US") => "US"; by definition
 */
export function readUnitSystem(text: unknown): UnitSystem {
  if (text === undefined || text === null || text === "" || text === 0) return "US";
  // An invocation object lands here when the host's cached signature is older than the code.
  if (typeof text === "object") return "US";
  const word = String(text).trim().toUpperCase();
  if (word === "US" || word === "SI") return word;
  throw invalid(`units must be "US" or "SI"; got "${String(text).slice(0, 40)}"`);
}
