import { COST_KINDS, TAX_BASES } from "../calc/money/costKinds";
import { Problem } from "../calc/problem";
import type { Job } from "./facts";
import type { Both } from "./facts/units";
import type { Labor } from "./labor";
import { isKnown } from "./derived";
import type { Takeoff } from "./takeoff";
import { OWN_PART, partOf, TAKEOFF_PARTS } from "./takeoff/parts";

/** What a price needs besides the lines of the takeoff, in the order it is named. */
export const PRICE_PARTS = {
  labor: { US: "labor", SI: "labour" },
  machines: "machines",
  markups: "markups",
  overhead: "overhead",
  contingency: "contingency",
  tax: "tax",
  rounding: "rounding",
  option: "the option quoted",
  changes: "changes of the options",
} as const satisfies Readonly<Record<string, Both<string>>>;
export type PricePart = keyof typeof PRICE_PARTS;

/** Parts that are named where a price is not complete; the rest is counted. */
export const NAMED_PARTS = 3;

/** Whether there is a price to show, and what keeps it back. */
export interface Standing {
  /** Parts without quantity or price, the most needed first. */
  readonly missing: readonly string[];
  /** Something the price is calculated from cannot be worked out. */
  readonly wrong: boolean;
  /** What stands in place of the price; "" where the price is complete. */
  readonly words: string;
}

interface Calculated {
  readonly takeoff: Takeoff;
  readonly labor: Labor;
  /** Everything the two follow from. */
  readonly design: readonly unknown[];
}

export function standingOf(job: Job, { takeoff, labor, design }: Calculated): Standing {
  const ofPrice = missingOf(job, labor);
  const lacking = partsLacking(takeoff);
  const missing = [
    ...TAKEOFF_PARTS.filter((part) => lacking.has(part)),
    ...(Object.keys(PRICE_PARTS) as PricePart[]).flatMap((part) => {
      const name: Both<string> = PRICE_PARTS[part];
      return ofPrice[part] ? [typeof name === "string" ? name : name[job.system]] : [];
    }),
  ];
  const wrong = [...design, takeoff, labor].some((topic) => hasProblem(topic));
  return { missing, wrong, words: wrong ? "wrong" : wordsOf(missing) };
}

function wordsOf(missing: readonly string[]): string {
  if (missing.length === 0) return "";
  const more = missing.length - NAMED_PARTS;
  return `not complete: ${missing.slice(0, NAMED_PARTS).join(", ")}${more > 0 ? ` and ${more} more` : ""}`;
}

/** Parts of the takeoff with a line that wants something. */
function partsLacking({ designLines, ownLines }: Takeoff): ReadonlySet<string> {
  const wants = ({ look }: Takeoff["lines"][number]): boolean => look.startsWith("no ");
  const lacking = new Set<string>(designLines.filter(wants).map(({ code = "" }) => partOf(code)));
  lacking.delete(OWN_PART);
  return ownLines.some(wants) ? lacking.add(OWN_PART) : lacking;
}

/** Kinds of cost, overhead and contingency. */
const MARKUPS = COST_KINDS.length + 2;

function missingOf(job: Job, labor: Labor): Readonly<Record<PricePart, boolean>> {
  const unknown = (value: unknown): boolean => value === undefined;
  const [untaxed] = TAX_BASES;
  const overhead =
    job.overheadBy === "crew hours"
      ? unknown(job.overheadPerHour) || !isKnown(labor.hours)
      : unknown(job.overheadBy) || unknown(job.overheadShare);
  return {
    labor: labor.tasks.some(({ complete }) => !complete) || unknown(job.difficulty) || !isKnown(labor.laborRate),
    machines: isKnown(labor.machineHours) && labor.machineHours > 0 && !isKnown(labor.machineRate),
    markups: Array.from({ length: MARKUPS }).some((_, row) => unknown(job.markups[row]?.markup)),
    overhead,
    contingency: unknown(job.contingencyShare),
    tax: unknown(job.taxBase) || (job.taxBase !== untaxed && unknown(job.taxRate)),
    rounding: unknown(job.roundTo),
    option: !optionInUse(job),
    changes: job.optionChanges.some(
      // A kind of cost alone, left standing in a row that was cleared, changes nothing.
      ({ what, kind, B, C }) =>
        [what, B, C].some((value) => !unknown(value)) && (unknown(kind) || (unknown(B) && unknown(C))),
    ),
  };
}

/** Whether an option is chosen that is laid out: A always is, the others once they have a name. */
export function optionInUse(job: Job): boolean {
  return job.chosenOption !== undefined && isNamed(job, job.chosenOption);
}

/** A has a name of its own; the others stand once they were given one. */
export function isNamed({ options }: Job, option: "A" | "B" | "C"): boolean {
  return option === "A" || options[option === "B" ? 1 : 2]?.name !== undefined;
}

/** How deeply the results of a topic are nested. */
const DEEPEST = 4;

function hasProblem(value: unknown, depth = 0): boolean {
  if (typeof value !== "object" || value === null) return false;
  if (value instanceof Problem) return true;
  if (depth > DEEPEST) return false;
  // A job has a thousand results: no list of them is made to look through.
  for (const key in value) {
    const part = (value as Readonly<Record<string, unknown>>)[key];
    if (typeof part === "object" && hasProblem(part, depth + 1)) return true;
  }
  return false;
}
