import type { SheetLayout } from "../../layout";

/** Pools, beds and pipes of the sheets Water and Pump, and the total. */
const ROWS = 6 + 4 + 5 + 1;

/** The water that runs back when the pump stops, part by part. */
export function drainBack(s: SheetLayout): void {
  s.section("Drain-back: what runs into the basin when the pump stops");
  s.input({
    name: "CheckValve",
    label: "A check valve keeps the pipe full",
    kind: "text",
    choices: ["no", "yes"],
    message: "Yes only where the route on Pump has a check valve; then the pipe does not drain back.",
    note: "Pipes that stay full freeze in winter.",
  });
  const parts = s.spill({
    name: "DrainParts",
    header: "function",
    rows: ROWS,
    needs: ["DesignFlow"],
    formula:
      '=IF(COUNT(PoolTable,BedTable,PipeSizes)=0,"",RILL.DRAINTABLE(DesignFlow,PoolTable,BedTable,PipeSizes,PipeLengths,' +
      "PipeTypes,CheckValve,LipShape,Units))",
    columns: [
      { kind: "text" },
      { kind: "water", format: "#,##0.0" },
      { kind: "share" },
      { kind: "size" },
      { kind: "speed", format: "0.00" },
      { kind: "text", wrap: false },
    ],
  });
  s.result({
    name: "DrainBack",
    label: "Drain-back",
    kind: "water",
    strong: true,
    formula: `=SUMIF(${parts.body.column(1)},"Total",${parts.body.column(2)})`,
    needs: [String(parts.body.column(2))],
    note: "Beds over rough stones hold up to 1.9 times as much, and splash wets more: keep a margin.",
  });
  s.caution(
    "What stays in pools and basin stands still: warm for days it breeds mosquitoes, and germs that spray carries into lungs. Run it daily, or drain it " +
      "(public health advice, from memory).",
  );
}
