import type { SheetLayout } from "../../layout";
import { Ref } from "../../layout/address";
import { fillDown } from "../money/cells";
import { CHANGE_ROWS, FACT_ROWS } from "./priceSettings";

/** What the client reads of each option that differs from A: the names of its changes, without their amounts, and its facts. */
export function optionWords(s: SheetLayout): void {
  s.section("What differs, in the client's words");
  const table = s.table({
    rows: CHANGE_ROWS + FACT_ROWS,
    columns: (["B", "C"] as const).map((option) => ({
      key: option,
      title: `Option ${option}`,
      kind: "text" as const,
      name: `Differences${option}`,
      across: 2,
      whole: CHANGE_ROWS,
      formula: `=IF(ISNUMBER(OptionChanges${option})*(OptionChanges${option}<>0),INDEX(OptionChanges,0,1)&"","")`,
    })),
  });
  for (const option of ["B", "C"] as const) {
    const { top, left } = table.cell(option, CHANGE_ROWS + 1);
    const facts = new Ref(s.name, top, left, top + FACT_ROWS - 1, left);
    fillDown(s, facts, factWords(s.job.hasFacts, `OptionFacts${option}`, `OptionValues${option}`));
  }
}

/** "Bed width: 30 in"; of a table the row and the column: "Lip 1 width: 30". */
function factWords(hasFacts: boolean, names: string, values: string): string {
  const plain = `SUBSTITUTE(${names},"Table "," ")`;
  const place = `MATCH(${names},FactKeys,0)`;
  const called = hasFacts ? `IFERROR(INDEX(FactNames,${place}),${plain})` : plain;
  const unit = hasFacts ? `&IF(ISNUMBER(${values}),IFERROR(" "&INDEX(FactUnits,${place}),""),"")` : "";
  return `=IF((${names}="")+(${values}="")>0,"",${called}&": "&${values}${unit})`;
}
