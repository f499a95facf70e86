import type { Job, SheetLayout } from "../../layout";
import { cellAddress } from "../../layout/address";
import { head } from "../../layout/tableHead";
import { fillDown } from "../money/cells";
import { C, down, H, MOST_DROPS } from "./surfaceColumns";

/** The bed and its banks as the liner lies on them. */
export function linerStations(s: SheetLayout, job: Job, top: number): void {
  const perLength = job.per("size", "length");
  const titles = ["Station", "Dug bed", "Drop", "Width", "Bank", "Bank slope"];
  titles.forEach((title, index) =>
    head(s, top - 1, H.liner + index, { title, kind: index === 5 ? "factor" : "length" }),
  );
  const rows = MOST_DROPS + 1;
  for (let row = top + 1; row <= top + rows; row++) {
    for (const index of titles.keys()) s.put(row, H.liner + index, { style: "result", look: { format: "0.000" } });
  }
  const dug = (count: number): string => down(s, top + 1, C.dig, count).text;
  const fill = (index: number, formula: string, count = rows, source?: string): void => {
    const known = `(${dug(count)}="")+(COUNT(BedWidth,BankReach,BankHeight,BankSlope)<4)`;
    fillDown(s, down(s, top + 1, H.liner + index, count).cells, `IF(${known},"",${formula})`, {
      label: titles[index] ?? "",
      ...(source === undefined ? {} : { source }),
    });
  };
  const lips = down(s, top, H.lip).text;
  const drop = `${lips}-${dug(MOST_DROPS)}`;
  fill(0, down(s, top + 1, C.station, rows).text);
  fill(1, dug(rows));
  fill(2, `IF(${drop}>0,${drop},0)`, MOST_DROPS);
  const last = s.sheet.rows.get(top + rows)?.get(H.liner + 2);
  // The edge of the basin lies no lower than the bed before it.
  if (last) last.formula = `=IF(${cellAddress(top + rows, H.liner)}="","",0)`;
  fill(3, `BedWidth+2*BankReach/${perLength}`, rows, "by definition: stones of both banks stand on the liner");
  fill(4, "BankHeight+ShelfDepth");
  fill(5, "BankSlope");
  s.define("LinerStations", top + 1, H.liner, top + MOST_DROPS + 1, H.liner + 5);
}

/** The liner by station, beside the surface it lies on. */
export function linerRun(s: SheetLayout, headRow: number): void {
  s.row = headRow;
  s.spill({
    name: "LinerRun",
    header: "function",
    at: 9,
    rows: MOST_DROPS + 1,
    needs: ["INDEX(LinerStations,0,1)", "LinerOverlap"],
    formula: "=RILL.LINERRUN(LinerStations,LinerOverlap,0,Units)",
    columns: [
      { kind: "length", format: "#,##0.00" },
      { kind: "length", format: "#,##0.00" },
      { kind: "length", format: "#,##0.00" },
    ],
  });
}
