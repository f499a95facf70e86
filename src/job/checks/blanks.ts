import { FACTS, type FactKey, type Job } from "../facts";
import { isNeeded } from "../facts/complete";
import { checksOn, type Check } from "./check";

/** The inputs of a sheet that the job cannot do without and that are still blank, by the name of their cell. */
export function blanksOn(job: Job, sheet: string): string[] {
  return (Object.keys(FACTS) as FactKey[]).flatMap((key) => {
    const fact = FACTS[key];
    if (fact.sheet !== sheet) return [];
    if (fact.type !== "table") return isNeeded(key, job.basinParts) && isBlank(job[key]) ? [fact.name] : [];
    if (!("required" in fact)) return [];
    // A table the job needs begins in its first row, with its first number.
    const first = Object.entries(fact.columns).find(([, column]) => column.type === "number")?.[0] ?? "";
    const [row = {}] = job[key] as readonly Readonly<Record<string, unknown>>[];
    return isBlank(row[first]) ? [fact.name] : [];
  });
}

function isBlank(value: unknown): boolean {
  return value === undefined || value === "";
}

export function blankCheck(job: Job, sheet: string): Check {
  const blanks = blanksOn(job, sheet);
  return checksOn(sheet)({
    label: `Inputs still blank on ${sheet}`,
    value: () => blanks.length,
    limit: () => 0,
    ok: () => blanks.length === 0,
    cure: "Fill in what is marked and still blank.",
    place: blanks[0] ?? sheet,
    kind: "count",
  });
}
