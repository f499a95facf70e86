import { FACTS } from "../../../job/facts";
import type { TableFact } from "../../../job/facts/fact";
import { OPTION_TABLES } from "../../../job/options/changed";
import { unitOf } from "../../../job/facts/units";
import type { UnitSystem } from "../../../calc/quantity/unitSystem";
import type { SheetLayout } from "../../layout";
import { fillDown } from "../money/cells";
import { CHANGE_ROWS, FACT_ROWS } from "./priceSettings";

const LETTERS = ["B", "C"] as const;

/** What the client reads of each option that differs from A: the names of its changes, without their amounts, and its facts. */
export function optionWords(s: SheetLayout): void {
  const found = s.job.hasFacts ? foundFacts(s) : undefined;
  s.section("What differs, in the client's words");
  const table = s.table({
    rows: CHANGE_ROWS + FACT_ROWS,
    columns: LETTERS.map((option) => ({
      key: option,
      title: `Option ${option}`,
      kind: "text" as const,
      name: `Differences${option}`,
      across: 2,
      whole: CHANGE_ROWS,
      formula: `=IF(ISNUMBER(OptionChanges${option})*(OptionChanges${option}<>0),INDEX(OptionChanges,0,1)&"","")`,
    })),
  });
  for (const option of LETTERS) {
    const facts = table.cell(option, CHANGE_ROWS + 1).down(FACT_ROWS);
    fillDown(s, facts, factWords(`OptionFacts${option}`, `OptionValues${option}`, found?.[option]));
  }
}

/** "LipTable 1 width" as "Lip 1 width". */
function plainName(names: string): string {
  return `SUBSTITUTE(${names},"Table "," ")`;
}

/** "Bed width: 30 in"; of a table the row and the column: "Lip 1 width: 30 in". */
function factWords(names: string, values: string, found: Found | undefined): string {
  const plain = plainName(names);
  const called = found ? `IF(${found.row}>0,INDEX(FactNames,IF(${found.row}>0,${found.row},1)),${plain})` : plain;
  const unit = found ? `&IF(ISNUMBER(${values})*(${found.unit}<>"")," "&${found.unit},"")` : "";
  return `=IF((${names}="")+(${values}="")>0,"",${called}&": "&${values}${unit})`;
}

/** Columns beside what an option changes: the row of a fact among all, 0 of none; and the unit, "" where there is none. */
interface Found {
  readonly row: string;
  readonly unit: string;
}

/** What each option changes, found among the facts, where words stand for a name too, or among the columns of tables. */
function foundFacts(s: SheetLayout): Readonly<Record<(typeof LETTERS)[number], Found>> {
  s.section("Units of what an option changes");
  const columns = columnUnits(s.job.system);
  const { row } = s;
  const known = s.table({
    rows: columns.length,
    columns: [
      { key: "column", title: "Column of a table", kind: "text", fixed: columns.map(([column]) => column) },
      { key: "unit", title: "Unit", kind: "text", fixed: columns.map(([, unit]) => unit) },
    ],
  });
  const next = s.row;
  const found = LETTERS.map((option, index) => {
    const names = `OptionFacts${option}`;
    const plain = plainName(names);
    s.row = row;
    const table = s.table({
      at: 4 + 3 * index,
      rows: FACT_ROWS,
      columns: [
        {
          key: "row",
          title: `${option}: row`,
          kind: "count",
          whole: true,
          formula: `=IFERROR(MATCH(SUBSTITUTE(${names}," ",""),FactKeys,0),0)`,
        },
        {
          // Without the row between table and column.
          key: "column",
          title: `${option}: part`,
          kind: "text",
          whole: true,
          formula: `=IFERROR(LEFT(${plain},FIND(" ",${plain}))&MID(${plain},FIND(" ",${plain},FIND(" ",${plain})+1)+1,20),"")`,
        },
        {
          key: "unit",
          title: `${option}: unit`,
          kind: "text",
          whole: true,
          formula:
            `=IF([row]>0,INDEX(FactUnits,IF([row]>0,[row],1))&"",` +
            `IFERROR(INDEX(${known.column("unit")},MATCH([column],${known.column("column")},0)),""))`,
        },
      ],
    });
    return [option, { row: String(table.column("row")), unit: String(table.column("unit")) }] as const;
  });
  s.row = next;
  return Object.fromEntries(found) as Record<(typeof LETTERS)[number], Found>;
}

/** Columns of the tables that an option may change, as "Lip width", and their units. */
function columnUnits(system: UnitSystem): (readonly [column: string, unit: string])[] {
  return [...OPTION_TABLES].flatMap((key) => {
    const { name, columns } = FACTS[key] as TableFact;
    return Object.entries(columns).flatMap(([column, fact]) => {
      const unit = fact.type === "number" ? unitOf(fact.kind, system) : "";
      return unit === "" ? [] : [[`${name.replace(/Table$/, "")} ${column}`, unit] as const];
    });
  });
}
