import type { SheetLayout } from "../../layout";

/** Three cuts of each of eight pieces, lengths to buy of each roll, and the ten totals. */
const ROWS = 38;

/** The plan itself, as the function gives it; the crew cuts by it. */
export function cutPlan(s: SheetLayout): void {
  s.section("Cut plan");
  s.note(
    "Along is measured from the free end of the roll, across from one edge; lengths bought of a roll lie end to end. " +
      "Length runs along the roll. Mark and check every cut with the tape before cutting.",
  );
  const { body } = s.spill({
    name: "CutPlan",
    header: "function",
    rows: ROWS,
    needs: ["PieceCount", "RollWidths"],
    formula: "=RILL.CUTPLAN(LinerPieces,LinerRolls,LinerTurn,SeamLap,SeamPrice,LinerKeptPlan,Currency,Units)",
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
  // The column of the rolls also holds the plan's totals, each with a format of its own.
  const first = `$A${body.top}`;
  const shown = (labels: readonly string[], format: string): void => {
    const area = { top: body.top, left: 2, bottom: body.bottom, right: 2 };
    const formula = `=OR(${labels.map((label) => `${first}="${label}"`).join(",")})`;
    s.sheet.conditionals.push({ area, formula, style: { format } });
  };
  shown(["Waste share"], "0.0%");
  shown(["Cost", "Cost of rolls", "Cost of seams", "Lower bound"], "#,##0.00");
  shown(["Area to buy", "Waste"], "#,##0.0");
}
