import { invalid, plain } from "../../calc/problem";
import { defaultUnit, isMeasure } from "../../calc/quantity/measures";
import { readQuantity } from "../../calc/quantity/readQuantity";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { CHARACTERS } from "../../job/draft/lips";
import { blankJob, FACTS, type FactKey, type Job } from "../../job/facts";
import type { CellFact, SingleFact, TableFact } from "../../job/facts/fact";
import { inSystem, toSi, unitOf } from "../../job/facts/units";
import { isBlank } from "../contract/raw";
import type { FactRow } from "./arguments";

type Said = FactKey | "character";

/** What people call the six answers, beside the names that cells have. */
const CALLED: Readonly<Record<string, Said>> = {
  fall: "fallTyped",
  run: "run",
  lip: "lips",
  "lip width": "lips",
  "top lip": "lips",
  water: "character",
  sound: "character",
  soil: "soil",
  ground: "soil",
  gate: "accessWidth",
  "way in": "accessWidth",
  groundwater: "groundwaterDepth",
};

const BY_NAME: ReadonlyMap<string, Said> = new Map([
  ...(Object.keys(FACTS) as FactKey[])
    .filter((key) => FACTS[key].type !== "table")
    .map((key) => [FACTS[key].name.toLowerCase(), key] as const),
  ...Object.entries(CALLED),
]);

const NOT_KNOWN = /^(?:don'?t know|do not know|unknown|not known|\?+)$/i;

/** A job of which only what the rows say is typed, and how the water should sound. */
export function jobOf(
  rows: readonly FactRow[],
  system: UnitSystem,
): { readonly typed: Job; readonly character: (typeof CHARACTERS)[number] | undefined } {
  const typed: Record<string, unknown> = { ...blankJob(system) };
  let character: (typeof CHARACTERS)[number] | undefined;
  for (const { at, name, value } of rows) {
    const key = BY_NAME.get(name.trim().replace(/[’]/g, "'").toLowerCase());
    if (key === undefined)
      throw invalid(`${at}: "${name.slice(0, 40)}" is no fact; fall, run, lip, water, soil and way in are`);
    // Hosts pass a blank cell as 0, and no answer is 0.
    if (isBlank(value) || value === 0) continue;
    if (typeof value !== "number" && typeof value !== "string")
      throw invalid(`${at}: the value must be a number or text`);
    if (typeof value === "string" && NOT_KNOWN.test(value.trim().replace(/[’]/g, "'"))) continue;
    if (key === "character") character = oneOf(CHARACTERS, value, at);
    else if (key === "lips") typed.lips = [{ width: valueOf(FACTS.lips.columns.width, value, at, system) }];
    else typed[key] = valueOf(FACTS[key] as SingleFact, value, at, system);
  }
  return { typed: typed as unknown as Job, character };
}

function valueOf(fact: CellFact, value: number | string, at: string, system: UnitSystem): number | string {
  if (fact.type === "text") return String(value).slice(0, 200);
  if (fact.type === "choice") return oneOf(inSystem<readonly string[]>(fact.choices, system), value, at);
  const { kind } = fact;
  const typed =
    typeof value === "number" ? value : isMeasure(kind) ? readQuantity(value, defaultUnit(kind, system), at) : NaN;
  if (Number.isNaN(typed)) throw invalid(`${at}: the value must be a number; got "${String(value).slice(0, 40)}"`);
  const [least, most] = inSystem(fact.range, system);
  const slack = 1e-9 * Math.max(Math.abs(least), Math.abs(most));
  if (!(typed >= least - slack && typed <= most + slack)) {
    const unit = unitOf(kind, system);
    throw invalid(`${at}: the value must be ${least} to ${most}${unit && ` ${unit}`}; got ${plain(typed)}`);
  }
  return toSi(kind, typed, system);
}

function oneOf<C extends string>(choices: readonly C[], value: number | string, at: string): C {
  const said = String(value).trim().toLowerCase();
  const found = choices.find((choice) => choice === said) ?? choices.find((choice) => choice.startsWith(said));
  if (found === undefined) throw invalid(`${at}: the value must be one of ${choices.join(", ")}`);
  return found;
}

/** Rows of one of the workbook's tables; a cell that does not hold what belongs there counts as blank. */
export function tableOf(
  table: TableFact,
  rows: readonly (readonly unknown[])[],
  system: UnitSystem,
): Record<string, unknown>[] {
  const columns = Object.entries(table.columns);
  return rows.flatMap((cells) => {
    const row = columns.flatMap(([key, { at, ...fact }]): [string, unknown][] => {
      const cell = cells[at - 1];
      if (fact.type !== "number") return typeof cell === "string" && cell.trim() !== "" ? [[key, cell]] : [];
      return typeof cell === "number" && Number.isFinite(cell) ? [[key, toSi(fact.kind, cell, system)]] : [];
    });
    return row.length > 0 ? [Object.fromEntries(row)] : [];
  });
}
