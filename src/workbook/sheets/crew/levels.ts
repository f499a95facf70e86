import type { SheetLayout } from "../../layout";
import { hideBlankRows } from "../../layout/conditions";
import { head } from "../../layout/tableHead";
import { heading } from "./heading";

/** The pit, the basin, the berm, twelve lips and three points of the user's own. */
export const LEVEL_ROWS = 21;

/** The points to set out, in as many rows as there are, with a column to write the reading in. */
export function levels(s: SheetLayout, top: number): void {
  const columns = [
    { title: "Point", kind: "text" },
    { title: "Level", kind: "length", format: "0.00" },
    { title: "Rod", kind: "length", format: "0.00" },
    { title: "On the tape", kind: "text" },
    { title: "From the string", kind: "text" },
  ] as const;
  const last = columns.length + 1;
  heading(s, top, 1, last, "Levels");
  s.row = top + 1;
  head(s, s.row, last, { title: "Read", kind: "text" });
  for (let row = 1; row <= LEVEL_ROWS; row++) {
    s.put(s.row + row, last, { style: "resultText", look: { lines: { bottom: "hair", left: "hair", right: "hair" } } });
  }
  hideBlankRows(s, { top: s.row + 1, left: 1, bottom: s.row + LEVEL_ROWS, right: last }, (column) => column === last);
  s.spill({
    // A blank level stays blank; passed on as it is it would read 0.
    formula: `=FILTER(IF(SetoutShort="","",SetoutShort),INDEX(SetoutShort,0,1)<>"","")`,
    rows: LEVEL_ROWS,
    header: "ours",
    columns,
    needs: ["INDEX(SetoutShort,0,2)"],
  });
}
