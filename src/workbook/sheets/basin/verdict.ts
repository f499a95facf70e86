import type { SheetLayout } from "../../layout";

/** Whether the basin is large enough, with the figures behind it. */
export function verdict(s: SheetLayout): void {
  s.section("Is the basin large enough?");
  const water = s.job.pick({ US: "7.480519", SI: "1000" });
  s.result({
    name: "BasinNeed",
    label: "Need: drain-back, low water and reserve",
    source: "by definition",
    kind: "water",
    formula: "=DrainBack+LowWater+LossPerDay*ReserveDays",
    needs: ["DrainBack", "LowWater", "LossPerDay", "ReserveDays"],
  });
  s.result({
    name: "BasinFootprint",
    label: "Area at the full level",
    source: "by definition: a rectangle, wider by the slope of both walls",
    kind: "area",
    format: "#,##0.0",
    formula: "=(BasinLength+2*BasinSideSlope*BasinWaterDepth)*(BasinWidth+2*BasinSideSlope*BasinWaterDepth)",
    needs: ["BasinLength", "BasinWidth", "BasinWaterDepth"],
  });
  s.result({
    name: "DropVoids",
    label: "Room for water where the level sinks",
    source: "by definition: water over the space it leaves; never under 5%: common practice, no source",
    kind: "share",
    formula: `=MAX(0.05,MIN(1,MIN(DrainBack,BasinHold)/${water}/(BasinFootprint*LevelDrop)))`,
    needs: ["DrainBack", "BasinHold", "BasinFootprint", "LevelDrop"],
  });
  s.spill({
    name: "BasinVerdict",
    header: "function",
    rows: 6,
    needs: ["BasinHold", "DrainBack", "LowWater", "LossPerDay", "ReserveDays", "BasinFootprint", "DropVoids"],
    formula: "=RILL.BASINCHECK(BasinHold,DrainBack,LowWater,LossPerDay,ReserveDays,BasinFootprint,DropVoids,Units)",
    columns: [
      { kind: "text" },
      { kind: "number", format: "#,##0.00" },
      { kind: "text" },
      { kind: "text", wrap: false },
    ],
  });
  s.result({
    name: "NeedDepth",
    label: "Water depth at which the need would fit",
    kind: "length",
    strong: true,
    formula: "=RILL.BASINDEPTH(BasinNeed,BasinLength,BasinWidth,VoidFraction,BasinSideSlope,Units)",
    needs: ["BasinNeed", "VoidFraction"],
    note: "With this length, width and average room for water.",
  });
  s.notice(
    "A pump that runs dry overheats and fails; give it a dry-run cut-out or a float switch. Lead the overflow away from buildings and neighbors.",
  );
}
