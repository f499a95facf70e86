import { FACTS, type FactKey } from "../../../job/facts";
import type { SingleFact } from "../../../job/facts/fact";
import { ANSWERED } from "../../../job/facts/answered";
import { USUAL, type Usual } from "../../../job/facts/usual";
import { inSystem } from "../../../job/facts/units";
import type { Job, SheetLayout } from "../../layout";
import { cellAddress } from "../../layout/address";
import { COLUMN, takes } from "../../layout/factCells";
import { usedValue } from "../../layout/usedValue";
import { DATED } from "./formulas";
import { topOf } from "./tableCells";
import { draftedHere, typedHere } from "./typedHere";

/** When facts that most jobs do without are needed: a count of modules needs the size of one. */
const MODULES = 'COUNTIF(PartKinds,"modules")>0';
const NEEDED_ONCE: Readonly<Record<string, string>> = {
  ModuleLength: MODULES,
  ModuleWidth: MODULES,
  ModuleHeight: MODULES,
};

/** The row of a fact that has a cell to itself. */
export function single(s: SheetLayout, job: Job, key: FactKey, fact: SingleFact): void {
  const { row } = s;
  const { system } = job;
  const input = job.inputs.get(fact.name);
  if (!input) throw new Error(`no sheet asks for ${fact.name}`);
  const known = (USUAL as Partial<Record<FactKey, Usual>>)[key];
  const text = fact.type !== "number";
  const look = { format: input.format, align: text ? ("left" as const) : ("right" as const) };
  const plain = { ...look, wrap: false };
  s.put(row, COLUMN.label, { value: input.label, style: "label" });
  s.fitHeight(row, input.label, s.charactersAcross(1, 1));
  const typed = `${input.yours.sheet}!${cellAddress(input.yours.top, input.yours.left)}`;
  s.put(row, COLUMN.place, { style: "link", link: typed });
  topOf(s, row, input.yours);
  s.put(row, COLUMN.yours, { style: "result", look: plain });
  s.put(row, COLUMN.unit, { style: "unit" });
  s.put(row, COLUMN.used, {
    // What is used of a text stands here alone.
    ...(input.wide ? { formula: usedValue(fact, { typed, on: s.name, system }), name: fact.name } : {}),
    style: "result",
    look: { ...plain, bold: true },
  });
  typedHere(s, row, COLUMN.company, look, `What your company takes in every job: ${takes(fact, system)}.`);
  const assumed = known && inSystem<number | string>(known.value, system);
  const asked = ANSWERED[key];
  // Not from this sheet, where a run of facts is shown by one formula.
  const answer = asked && FACTS[asked].name;
  s.put(row, COLUMN.assumed, {
    ...(answer
      ? { formula: `=IF(${answer}="","${assumed ?? ""}",${answer})` }
      : assumed === undefined
        ? {}
        : { value: assumed }),
    style: "result",
    look: plain,
  });
  s.put(row, COLUMN.state, { style: "resultText" });
  for (const column of [COLUMN.low, COLUMN.likely, COLUMN.high]) s.put(row, column, { style: "result", look });
  s.put(row, COLUMN.reason, { style: "remark" });
  for (const line of [input.note, `assumed: ${known ? inSystem(known.reason, system) : ""}`])
    s.fitHeight(row, line, s.charactersAcross(COLUMN.reason, 1));
  typedHere(s, row, COLUMN.confirmed, { format: "yyyy-mm-dd", align: "right" }, "The day your company confirmed it.");

  if (fact.type === "number") {
    const [least, most] = inSystem(fact.range, system);
    s.put(row, COLUMN.least, { value: least });
    s.put(row, COLUMN.most, { value: most });
  }
  s.put(row, COLUMN.takes, { value: takesOf(fact, system) });
  if (input.note) s.put(row, COLUMN.note, { value: input.note });
  if (known) {
    s.put(row, COLUMN.because, { value: inSystem(known.reason, system) });
    if (!answer) s.put(row, COLUMN.shipped, { value: known.invented ? "invented" : "assumed" });
  }
  // An answer on Start is as good as one that is typed here.
  if (answer) s.put(row, COLUMN.shipped, { formula: `=IF(${answer}="","assumed","yours")` });
  s.put(row, COLUMN.sheet, { value: fact.sheet });
  s.put(row, COLUMN.key, { value: fact.name });
  draftedHere(s, row);
  const once = NEEDED_ONCE[fact.name];
  s.put(row, COLUMN.needed, once ? { formula: `=IF(${once},"yes","no")` } : { value: fact.optional ? "no" : "yes" });
  s.put(row, COLUMN.says, { value: fact.type === "choice" ? "one of its list" : takes(fact, system) });
  if (fact.type === "number" && DATED.has(fact.kind)) s.put(row, COLUMN.days, { value: "yes" });
  s.put(row, COLUMN.own, { value: "yes" });
  s.put(row, COLUMN.called, { value: `${fact.sheet}: ${input.label}` });
}

/** What the cell takes; of a choice its list, between bars, which the formulas look through. */
function takesOf(fact: SingleFact, system: "US" | "SI"): string {
  return fact.type === "choice"
    ? `|${inSystem<readonly string[]>(fact.choices, system).join("|")}|`
    : takes(fact, system);
}
