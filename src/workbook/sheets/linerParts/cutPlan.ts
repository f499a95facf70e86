import type { SheetLayout } from "../../layout";

/** Three cuts of each of eight pieces, lengths to buy of each roll, and the eight totals. */
const ROWS = 36;

/** The plan itself, as the function gives it; the crew cuts by it. */
export function cutPlan(s: SheetLayout): void {
  s.section("Cut plan");
  s.note(
    "Along is measured from the free end of the roll, across from one edge; lengths bought of a roll lie end to end. " +
      "Length runs along the roll. Mark and check every cut with the tape before cutting.",
  );
  s.spill({
    name: "CutPlan",
    header: "function",
    rows: ROWS,
    needs: ["PieceLengths", "RollWidths"],
    formula: "=RILL.CUTPLAN(LinerPieces,LinerRolls,LinerTurn,SeamLap,Units)",
    columns: [
      { kind: "text" },
      { kind: "number" },
      { kind: "length" },
      { kind: "length" },
      { kind: "length" },
      { kind: "length" },
      { kind: "text" },
    ],
  });
}
