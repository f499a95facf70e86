import { type SheetLayout } from "../../layout";
import { CHANGE_ROWS } from "./priceSettings";

/** What the client reads of each option that differs from A: the names of its changes, without their amounts. */
export function optionWords(s: SheetLayout): void {
  s.section("What differs, in the client's words");
  s.table({
    rows: CHANGE_ROWS,
    columns: (["B", "C"] as const).map((option) => ({
      key: option,
      title: `Option ${option}`,
      kind: "text" as const,
      name: `Differences${option}`,
      across: 2,
      whole: true as const,
      formula: `=IF(ISNUMBER(OptionChanges${option})*(OptionChanges${option}<>0),INDEX(OptionChanges,0,1)&"","")`,
    })),
  });
}
