import type { Job, SheetLayout } from "../../layout";

/** The full level, and how far it sinks when the pump fills the stream; lift counts from there. */
export function levels(s: SheetLayout, job: Job): void {
  s.section("Levels");
  const perLength = job.per("size", "length");
  s.result({
    name: "FullLevel",
    label: "Full level (overflow)",
    kind: "length",
    formula: `=GradeLevel-RimBelowGrade/${perLength}`,
    needs: ["GradeLevel", "RimBelowGrade"],
    note: "Finished grade less the depth of the rim.",
  });
  s.result({
    name: "FloorLevel",
    label: "Floor of the basin",
    kind: "length",
    formula: "=FullLevel-BasinWaterDepth",
    needs: ["FullLevel", "BasinWaterDepth"],
  });
  s.result({
    name: "LowerLayer",
    label: "Height of the tallest module",
    kind: "length",
    formula: '=MIN(BasinWaterDepth,MAXIFS(PartDepths,PartKinds,"modules"))',
    needs: ["BasinWaterDepth"],
  });
  s.result({
    name: "LevelDrop",
    label: "Level drop on starting",
    source: "by definition: water over the area of the layer that it leaves",
    kind: "length",
    formula:
      "=(BasinWaterDepth-LowerLayer)*MIN(DrainBack,BasinHold,TopLayerWater)/MAX(TopLayerWater,0.000001)+" +
      "LowerLayer*MAX(0,MIN(DrainBack,BasinHold)-TopLayerWater)/MAX(BasinHold-TopLayerWater,0.000001)",
    needs: ["DrainBack", "BasinHold", "TopLayerWater", "LowerLayer"],
    note: "Drain-back taken first from the layer above the modules, then from theirs.",
  });
  s.result({
    name: "RunningLevel",
    label: "Running level",
    kind: "length",
    strong: true,
    formula: "=FullLevel-LevelDrop",
    needs: ["FullLevel", "LevelDrop"],
    note: "Pump counts its lift from here. Never top up above this mark while the pump runs.",
  });
  s.input({
    name: "LowWaterDepth",
    label: "Water the pump needs above the floor",
    kind: "length",
    min: 0,
    max: { US: 8, SI: 2.4 },
    message: "Depth of water above the basin's floor below which the pump sucks air; see its maker's sheet.",
  });
  s.result({
    name: "LowWater",
    label: "Water below that level",
    source: "by definition: depth times the area of each layer",
    kind: "water",
    formula:
      "=(BasinHold-TopLayerWater)*MIN(LowWaterDepth,BasinWaterDepth,LowerLayer)/MAX(LowerLayer,0.000001)+" +
      "TopLayerWater*MAX(0,MIN(LowWaterDepth,BasinWaterDepth)-LowerLayer)/MAX(BasinWaterDepth-LowerLayer,0.000001)",
    needs: ["BasinHold", "TopLayerWater", "LowerLayer", "LowWaterDepth"],
    note: "It stays in the basin and is of no use to the stream.",
  });
}
