import { invalid, plain } from "../../calc/problem";
import { defaultUnit, isMeasure } from "../../calc/quantity/measures";
import { readQuantity } from "../../calc/quantity/readQuantity";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { blankJob, FACTS, type FactKey, type Job } from "../../job/facts";
import type { CellFact, Fact, TableFact } from "../../job/facts/fact";
import { BETWEEN, HANDED_OVER, rowsOfText } from "../../job/facts/rowsText";
import { inSystem, toSi, unitOf } from "../../job/facts/units";
import { isBlank } from "../contract/raw";
import type { FactRow } from "./arguments";

/** What people call the six answers, beside the names that cells have. */
const CALLED: Readonly<Record<string, FactKey>> = {
  fall: "fallTyped",
  run: "run",
  lip: "lips",
  "lip width": "lips",
  "top lip": "lips",
  water: "waterCharacter",
  sound: "waterCharacter",
  soil: "soil",
  ground: "soil",
  gate: "accessWidth",
  "way in": "accessWidth",
  groundwater: "groundwaterDepth",
};

const BY_NAME: ReadonlyMap<string, FactKey> = new Map([
  ...(Object.keys(FACTS) as FactKey[]).map((key) => [FACTS[key].name.toLowerCase(), key] as const),
  ...Object.entries(CALLED),
]);

const NOT_KNOWN = /^(?:don'?t know|do not know|unknown|not known|\?+)$/i;

/** A job of which only what the rows say is typed. */
export function jobOf(rows: readonly FactRow[], system: UnitSystem): Job {
  const typed: Record<string, unknown> = { ...blankJob(system) };
  for (const { at: row, name, value } of rows) {
    const at = `${row} (${name.slice(0, 40)})`;
    const key = BY_NAME.get(name.trim().replace(/[’]/g, "'").toLowerCase());
    if (key === undefined)
      throw invalid(`${row}: "${name.slice(0, 40)}" is no fact; fall, run, lip, water, soil and way in are`);
    if (isBlank(value)) continue;
    if (typeof value !== "number" && typeof value !== "string")
      throw invalid(`${at}: the value must be a number or text`);
    if (typeof value === "string" && NOT_KNOWN.test(value.trim().replace(/[’]/g, "'"))) continue;
    const fact: Fact = FACTS[key];
    if (key === "lips" && name.trim() !== FACTS.lips.name)
      typed.lips = [{ width: valueOf(FACTS.lips.columns.width, value, at, system) }];
    else if (fact.type !== "table") typed[key] = valueOf(fact, value, at, system);
    // Of the other tables the sheet of facts says only how many rows they have.
    else if (HANDED_OVER.has(key) && String(value).includes(BETWEEN))
      typed[key] = rowsOfText(key, String(value), system);
  }
  return typed as unknown as Job;
}

function valueOf(fact: CellFact, value: number | string, at: string, system: UnitSystem): number | string {
  if (fact.type === "text") return String(value).slice(0, 200);
  if (fact.type === "choice") return oneOf(inSystem<readonly string[]>(fact.choices, system), value, at);
  const { kind } = fact;
  const typed =
    typeof value === "number"
      ? value
      : isMeasure(kind)
        ? readQuantity(value, defaultUnit(kind, system), at)
        : Number(value.replace(",", "."));
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
  const found =
    choices.find((choice) => choice.toLowerCase() === said) ??
    choices.find((choice) => choice.toLowerCase().startsWith(said));
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
