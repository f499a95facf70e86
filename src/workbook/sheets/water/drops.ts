import type { SheetLayout } from "../../layout";

/** Rows of drops and treads; other sheets read them by the names Drops and Treads. */
export const DROPS = 12;

/** Lays out drops and treads; gives the column of their numbers, as formula text. */
export function drops(s: SheetLayout): string {
  s.section("Drops and treads");
  s.result({
    name: "Fall",
    label: "Fall, down to finished grade",
    kind: "length",
    formula: `=IF(FallFrom="rim of the basin",FallTyped-RimBelowGrade/${s.job.per("size", "length")},FallTyped)`,
    needs: ["FallTyped", "RimBelowGrade"],
    note: "As measured; from the rim less what the rim lies below grade.",
  });
  s.result({
    name: "TopLipLevel",
    label: "Level of the top lip",
    kind: "length",
    formula: "=GradeLevel+Fall",
    needs: ["GradeLevel", "Fall"],
    note: "Finished grade at the basin plus the fall.",
  });
  s.note(
    "Equal shares of the fall and the run are shown in italics. Type over them for a natural look; they must still add up.",
  );
  const equal = (total: string): string =>
    `=IF(MIN(COUNT(DropCount),COUNT(${total}))=0,"",IF([no]<=DropCount,${total}/DropCount,""))`;
  const table = s.table({
    rows: DROPS,
    columns: [
      {
        key: "no",
        title: "Drop, from the top",
        kind: "count",
        name: "DropNumbers",
        fixed: Array.from({ length: DROPS }, (_, i) => i + 1),
      },
      {
        key: "drop",
        title: "Drop",
        source: "by definition: equal shares of the fall",
        kind: "length",
        name: "Drops",
        formula: equal("Fall"),
        input: { min: 0, max: { US: 20, SI: 6 }, message: "Height of this drop; blank where there is none." },
      },
      {
        key: "tread",
        title: "Tread below it",
        source: "by definition: equal shares of the run",
        kind: "length",
        name: "Treads",
        formula: equal("Run"),
        input: { min: 0, max: { US: 300, SI: 100 }, message: "Length of bed or pool below this drop, measured level." },
      },
      {
        key: "lip",
        title: "Level of its lip",
        kind: "length",
        whole: true,
        formula: '=IF(ISNUMBER([drop])*COUNT(TopLipLevel)=0,"",TopLipLevel-SUMIF([no],"<"&[no],[drop]))',
      },
    ],
    totals: { label: "Total", keys: ["drop", "tread"], names: { drop: "DropTotal", tread: "TreadTotal" } },
  });
  return String(table.column("no"));
}
