import { shippedLabor } from "../../../book/shipped/people";
import { FACTS } from "../../../job/facts";
import type { Job, SheetLayout } from "../../layout";
import { sizeHoursCells, sizeHoursColumns } from "../../sizeHours";
import { RISER_ROWS, ROUTE_ROWS } from "../pump/route";
import { numbered } from "../water/parts";

/** A step without a number, and a size beyond the last step, have no hours: 1/(1/x) lets no blank pass for 0. */
const timesAt = (size: string, steps: string, times: string): string =>
  `IFERROR(1/(1/INDEX(${times},MATCH(MINIFS(${steps},${steps},">="&${size}),${steps},0))),"")`;

/** What larger pipe and heavier lip stones take, as the company's own steps say; it is read above, at their tasks. */
export function hoursBySize(s: SheetLayout, job: Job): void {
  s.section("Hours by size");
  s.note(
    "The rates above are for a usual size, which counts 1 here. A pipe and a lip stone take the row of the next size up; " +
      "what is larger than the last row has no hours, and no other size stands in for it.",
  );
  s.table({
    name: "SizeHours",
    rows: FACTS.sizeHours.rows,
    columns: sizeHoursColumns(job.system),
    usual: shippedLabor(job.system).sizes.map((size) => sizeHoursCells(size, job.system)),
  });
  s.skip();
  const pipes = s.table({
    rows: ROUTE_ROWS + RISER_ROWS,
    columns: [
      { key: "pipe", title: "Pipe", kind: "text", fixed: [...numbered("Pipe", ROUTE_ROWS), "Risers"] },
      { key: "size", title: "Size", kind: "size", formula: '=IF(INDEX(PipeSizes,[#])="","",INDEX(PipeSizes,[#]))' },
      { key: "length", title: "Length", kind: "length", formula: "=N(INDEX(PipeLengths,[#]))" },
      {
        key: "times",
        title: "Times",
        kind: "factor",
        format: "0.00",
        formula: `=IF([size]="","",${timesAt("[size]", "SizePipes", "SizePipeTimes")})`,
      },
      {
        key: "product",
        title: "Length × times",
        kind: "number",
        formula: '=IF([length]=0,0,IF([times]="","",[length]*[times]))',
      },
    ],
  });
  const [length, product] = [pipes.column("length"), pipes.column("product")];
  s.result({
    name: "PipeSizeTimes",
    label: "All pipe, by its length",
    kind: "factor",
    format: "0.000",
    formula: `=IF(COUNT(${product})<${ROUTE_ROWS + RISER_ROWS},"",IF(SUM(${length})=0,1,SUM(${product})/SUM(${length})))`,
  });
  s.result({
    name: "LipSizeTimes",
    label: "One lip stone, by its likely weight",
    kind: "factor",
    format: "0.00",
    // An error of its own is handed on.
    formula: `=IF(N(LipStoneCount)=0,1,IF(ISNUMBER(LipStoneWeight),${timesAt("LipStoneWeight", "SizeStones", "SizeStoneTimes")},LipStoneWeight))`,
  });
}
