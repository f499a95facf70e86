import { USUAL_LINER_WEIGHT } from "../../../calc/tables/sheets";
import { fromInside } from "../../../calc/quantity/measures";
import { CARRYING_CAUTION } from "../../../functions/liner/arguments";
import type { SheetLayout } from "../../layout";

/** The usual liner's weight and the thickness it stands for: 45 mil. */
const USUAL_THICKNESS = { US: 45, SI: 45 * 0.0254 } as const;

/** What the crew carries. */
export function carrying(s: SheetLayout): void {
  const { system } = s.job;
  s.section("To carry");
  s.caution(CARRYING_CAUTION);
  // kg/m² as lb/ft² or kg/m²: a weight over an area.
  const perArea = fromInside("weight", USUAL_LINER_WEIGHT, system) / fromInside("area", 1, system);
  const perThickness = perArea / USUAL_THICKNESS[system];
  s.result({
    name: "LinerWeight",
    label: "Liner weighs",
    source: {
      US: "EPDM of 45 mil, 0.29 lb/ft², in proportion (from memory)",
      SI: "EPDM of 1.14 mm, 1.42 kg/m², in proportion (from memory)",
    },
    kind: "number",
    unit: { US: "lb/ft²", SI: "kg/m²" },
    format: "0.00",
    formula: `=LinerThickness*${Number(perThickness.toPrecision(6))}`,
    needs: ["LinerThickness"],
    note: {
      US: "EPDM, 0.29 lb/ft² at 45 mil (from memory); other liners differ.",
      SI: "EPDM, 1.42 kg/m² at 1.14 mm (from memory); other liners differ.",
    },
  });
  s.result({
    name: "HeaviestPiece",
    label: "Heaviest piece",
    kind: "weight",
    formula: "=MAX(PieceWeights)",
    needs: ["PieceWeights", "PieceCount"],
  });
  s.result({
    name: "LinerCarriers",
    label: "People to carry it",
    source: "by definition: weight over what one person lifts",
    kind: "count",
    formula: "=ROUNDUP(ROUND(HeaviestPiece/HandLimit,6),0)",
    needs: ["HeaviestPiece", "HandLimit"],
    note: "By the weight one person lifts, on Stone.",
  });
}
