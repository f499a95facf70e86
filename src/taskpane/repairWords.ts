import type { Repairs } from "../host/port";

/** Cells of sheets with a password that are named; more would not be read. */
const MOST_NAMED = 5;

/** What a repair found and did, in sentences. */
export function repairWords({ found, repaired, left, stopped }: Repairs): string {
  const rest = left.length > MOST_NAMED ? `, and ${left.length - MOST_NAMED} more` : "";
  return [
    stopped ? "Stopped before every sheet was looked through." : "",
    found > 0
      ? `${repaired} of ${found} formulas were entered again.`
      : stopped
        ? "Nothing was changed."
        : "Every formula is bound to its function; nothing was changed.",
    left.length > 0 ? `Not on sheets with a password: ${left.slice(0, MOST_NAMED).join(", ")}${rest}.` : "",
  ]
    .filter(Boolean)
    .join(" ");
}
