import type { Job, SheetLayout } from "../../layout";

/** What a purchase order says beside the name of an item, by its code: a supplier does not have the other sheets. */
export function particulars(s: SheetLayout, job: Job): void {
  s.section("What suppliers must know of the lines above");
  const top = s.row;
  for (const { code, which } of job.takeoffLines) {
    if (which === undefined) continue;
    s.put(s.row, 1, { value: code, style: "plain" });
    s.put(s.row, 2, { formula: which, style: "plain" });
    s.row++;
  }
  // A blank row ends the list, so that it is a list even where no line has anything to add.
  s.put(s.row++, 1, { style: "plain" });
  s.define("ParticularCodes", top, 1, s.row - 1, 1);
  s.define("ParticularTexts", top, 2, s.row - 1, 2);
}
