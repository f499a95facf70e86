import { fromInside } from "../../../calc/quantity/measures";
import type { DensityRow } from "../../../calc/tables/densities";
import { ROCKS } from "../../../calc/tables/rocks";
import { STONES } from "../../../calc/tables/stones";
import type { Job, SheetLayout } from "../../layout";

/** The tables of densities, with their sources. */
export function densities(s: SheetLayout, job: Job): void {
  s.section("Densities");
  s.note("Usual figures are taken unless you give your own above. A quarry's weigh ticket is better than any table.");
  const table = (title: string, rows: readonly DensityRow[]): void => {
    const column = (key: "low" | "usual" | "high", heading: string) => ({
      key,
      title: heading,
      kind: "density" as const,
      fixed: rows.map((row) => fromInside("density", row[key], job.system)),
    });
    s.table({
      rows: rows.length,
      columns: [
        { key: "name", title, kind: "text", fixed: rows.map((row) => row.name) },
        column("low", "Low"),
        column("usual", "Usual"),
        column("high", "High"),
        { key: "source", title: "Source", kind: "text", fixed: rows.map((row) => row.source), across: 4 },
      ],
    });
    s.skip();
  };
  table("Loose stone, dry", STONES);
  table("Solid rock", ROCKS);
}
