import { FACTS, type FactKey } from "../../../job/facts";
import type { Job, SheetLayout } from "../../layout";
import type { LaidInput } from "../../layout/job";
import { areaAddress, Ref } from "../../layout/address";
import { COLUMN, factRow } from "../../layout/factCells";
import { fillDown } from "../money/cells";
import { usedOfTables } from "./formulas";

/** Facts below each other that one formula shows. */
interface Run {
  readonly top: number;
  readonly bottom: number;
  /** The area that it shows them from; none of tables, of which it tells what is used by their rows. */
  readonly from?: Ref;
}

/**
 * What was typed, its unit and what is used, as they stand on the facts' own sheets; of a text, which takes the room of the
 * other two, what was typed alone. Nothing that is used may read these cells: each of them waits for all of its run.
 */
export function showFacts(s: SheetLayout, job: Job): void {
  for (const { top, bottom, from } of runs(job)) {
    const at = from ? COLUMN.yours : COLUMN.used;
    const area = new Ref(s.name, top, at, bottom, from ? at + from.right - from.left : at);
    const cells = from && `${from.sheet}!${areaAddress(from)}`;
    fillDown(s, area, cells ? `IF(${cells}="","",${cells})` : usedOfTables(top, bottom));
  }
}

function runs(job: Job): Run[] {
  const found: Run[] = [];
  for (const key of Object.keys(FACTS) as FactKey[]) {
    const { name } = FACTS[key];
    const [row, input, above] = [factRow(name), job.inputs.get(name), found.at(-1)];
    const from = input && shownFrom(input);
    if (above && goesOn(above.from, from))
      found[found.length - 1] = {
        ...above,
        bottom: row,
        ...(from && above.from
          ? { from: new Ref(from.sheet, above.from.top, from.left, from.bottom, from.right) }
          : {}),
      };
    else found.push({ top: row, bottom: row, ...(from ? { from } : {}) });
  }
  return found;
}

/** From the typed cell to the used one; the typed one alone where it takes the room of both. */
function shownFrom({ yours, wide }: LaidInput): Ref {
  const { sheet, top, left } = yours;
  return new Ref(sheet, top, left, top, wide ? left : left + COLUMN.used - COLUMN.yours);
}

/** Whether the cells of a fact go on where a run ends; tables go on with tables. */
function goesOn(run: Ref | undefined, from: Ref | undefined): boolean {
  if (!run || !from) return run === from;
  return run.sheet === from.sheet && run.bottom === from.top - 1 && run.right === from.right;
}
