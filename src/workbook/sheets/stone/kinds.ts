import type { SheetLayout } from "../../layout";

/** Rock and gravel: the job's kinds, or the quarry's own figures, and the waste added to all stone. */
export function kinds(s: SheetLayout): void {
  s.section("What the stone weighs");
  s.input({
    name: "RockFigure",
    label: "Your quarry's figure for the rock",
    kind: "text",
    message: {
      US: 'A figure with its unit, such as "165 lb/ft3"; blank uses the table below.',
      SI: 'A figure with its unit, such as "2.65 t/m3"; blank uses the table below.',
    },
    optional: true,
  });
  s.result({ name: "RockUsed", label: "Rock used", formula: `=IF(RockFigure="",RockKind,RockFigure)`, kind: "text" });
  s.input({
    name: "GravelFigure",
    label: "Your quarry's figure for the gravel",
    kind: "text",
    message: {
      US: 'A figure with its unit, such as "1.35 ton/yd3"; blank uses the table below.',
      SI: 'A figure with its unit, such as "1.45 t/m3"; blank uses the table below.',
    },
    optional: true,
  });
  s.result({
    name: "GravelUsed",
    label: "Gravel used",
    formula: `=IF(GravelFigure="",GravelKind,GravelFigure)`,
    kind: "text",
  });
  s.input({
    name: "StoneWaste",
    label: "Added for waste",
    kind: "share",
    min: 0,
    max: 0.5,
    message: "Share added to all stone for breakage, spill and settling.",
    note: "Counted here, once; Takeoff adds no more to stone.",
  });
}
