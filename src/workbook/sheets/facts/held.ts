import { FACTS, type FactKey } from "../../../job/facts";
import { isOfWork } from "../../../job/options/changed";
import { Ref, type SheetLayout } from "../../layout";
import { areaAddress } from "../../layout/address";
import { COLUMN, factRow } from "../../layout/factCells";
import { fillDown } from "../money/cells";
import { handed } from "./formulas";

/**
 * What the work is calculated from, for OPTION; an error travels. Facts with a row to themselves alone, in runs: the used value of
 * a table waits for what the workbook works out in it, and its typed rows stand here as one text.
 */
export function heldFacts(s: SheetLayout): void {
  const rows = (Object.keys(FACTS) as FactKey[]).flatMap((key) => {
    const fact = FACTS[key];
    return fact.type === "table" || !isOfWork(fact) ? [] : [factRow(fact.name)];
  });
  const tops = rows.filter((row) => !rows.includes(row - 1));
  for (const top of tops) {
    let bottom = top;
    while (rows.includes(bottom + 1)) bottom++;
    for (let row = top; row <= bottom; row++) s.put(row, COLUMN.held, {});
    const used = areaAddress({ top, left: COLUMN.used, bottom, right: COLUMN.used });
    const area = new Ref(s.name, top, COLUMN.held, bottom, COLUMN.held);
    fillDown(s, area, `=${handed(used)}`);
  }
}
