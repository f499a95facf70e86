import { densityNames } from "../../../calc/stone/density";
import type { SheetLayout } from "../../layout";

/** Gravel by area and depth, and the stone around modules by volume. */
export function gravel(s: SheetLayout): void {
  s.section("Gravel");
  const depth = (name: string, label: string): void => {
    s.input({
      name,
      label,
      kind: "size",
      min: 0,
      max: { US: 48, SI: 1200 },
      message: "Depth of the layer.",
    });
  };
  depth("BedGravelDepth", "Depth of gravel in the bed");
  s.result({
    name: "BedGravelArea",
    label: "Bed to cover",
    source: "by definition: width × length",
    formula: "=BedWidth*Run",
    kind: "area",
    needs: ["BedWidth", "Run"],
  });
  s.result({
    name: "BedGravelTons",
    label: "Gravel in the bed, with waste",
    formula: "=RILL.GRAVELTONS(BedGravelArea,BedGravelDepth,GravelUsed,StoneWaste,Units)",
    kind: "load",
    needs: ["BedGravelArea", "BedGravelDepth"],
  });
  depth("CoverDepth", "Depth of gravel over the basin");
  s.result({
    name: "CoverTons",
    label: "Gravel over basin, with waste",
    // Sloped walls make the basin wider at the top than at its bottom.
    formula: "=RILL.GRAVELTONS(BasinFootprint,CoverDepth,GravelUsed,StoneWaste,Units)",
    kind: "load",
    needs: ["BasinFootprint", "CoverDepth"],
    note: "Over the area at the full level, on Basin.",
  });
  s.result({
    name: "GravelTons",
    label: "Gravel, with waste",
    formula: "=BedGravelTons+CoverTons",
    kind: "load",
    needs: ["BedGravelTons", "CoverTons"],
    strong: true,
  });
  s.input({
    name: "BasinStoneKind",
    label: "Stone around the void modules",
    kind: "text",
    choices: densityNames("stone"),
    message: "The stone that fills the basin around modules and pump well; choose from the list.",
  });
  s.result({
    name: "BasinStoneVolume",
    label: "Space around modules and wells",
    formula: '=INDEX(BasinContents,MATCH("Gravel",INDEX(BasinContents,0,1),0),2)',
    kind: "earth",
    needs: ["BasinContents"],
  });
  s.result({
    name: "BasinStoneTons",
    label: "Stone around them, with waste",
    formula: "=RILL.STONETONS(BasinStoneVolume,BasinStoneKind,StoneWaste,Units)",
    kind: "load",
    needs: ["BasinStoneVolume"],
    strong: true,
  });
}
