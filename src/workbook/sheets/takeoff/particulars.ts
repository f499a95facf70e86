import { Ref, type Job, type SheetLayout } from "../../layout";
import { areaAddress } from "../../layout/address";
import { fillDown } from "../money/cells";

/**
 * What a purchase order says beside the name of an item, by its code: a supplier does not have the other sheets.
 *
 * @param counts where it stands how much is asked for of each product of a line
 */
export function particulars(s: SheetLayout, job: Job, counts: ReadonlyMap<string, Ref>): void {
  s.section("What suppliers must know of the lines above");
  const top = s.row;
  const formulas: (() => void)[] = [];
  for (const { code, which, down = 1 } of job.takeoffLines) {
    if (which === undefined) continue;
    s.put(s.row, 1, { value: code, style: "plain" });
    s.put(s.row, 2, { style: "plain" });
    const of = counts.get(code);
    const words = of ? which.replaceAll("[counts]", areaAddress(of)) : which;
    const area = new Ref(s.name, s.row, 2, s.row + down - 1, 2);
    s.row++;
    if (words === "") continue;
    formulas.push(() => {
      // One text in a row, though it is put together from columns.
      fillDown(s, area, words);
    });
  }
  for (const put of formulas) put();
  // A blank row ends the list, so that it is a list even where no line has anything to add.
  s.put(s.row++, 1, { style: "plain" });
  s.define("ParticularCodes", top, 1, s.row - 1, 1);
  s.define("ParticularTexts", top, 2, s.row - 1, 2);
}
