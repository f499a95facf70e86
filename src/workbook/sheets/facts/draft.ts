import { FACTS } from "../../../job/facts";
import type { Ref, SheetLayout } from "../../layout";
import { COLUMN, FIRST_FACT } from "../../layout/factCells";

/** What the draft takes each open fact for, with low, high and reason, in one call; blank where Start has none either. */
export function draftSpill(s: SheetLayout): Ref {
  const { row } = s;
  s.row = FIRST_FACT - 1;
  const plain = { kind: "text", wrap: false } as const;
  const { body } = s.spill({
    at: COLUMN.draft,
    header: "function",
    rows: Object.keys(FACTS).length,
    headerLines: 1,
    formula: `=IF(DraftWanted="yes",IFERROR(RILL.DRAFT(FactKeys,FactsSaid,RateTable,PumpTable,Units),""),"")`,
    columns: [plain, plain, plain, plain, plain, plain],
  });
  s.row = row;
  return body;
}
