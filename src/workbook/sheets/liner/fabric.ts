import type { Job, SheetLayout } from "../../layout";

/** Fabric under and over the liner, in lapped strips. */
export function fabric(s: SheetLayout, job: Job): void {
  s.section("Fabric");
  s.note("Fabric goes in before the liner. Strips run along or across, whichever takes less off the roll.");
  const layers = (name: string, label: string, message: string): void => {
    s.input({ name, label, kind: "count", min: 0, max: 5, message });
  };
  layers("FabricUnder", "Layers under the liner", "Layers of fabric between ground and liner.");
  layers("FabricOver", "Layers over the liner", "Layers of fabric between liner and stone.");
  s.input({
    name: "FabricRollWidth",
    label: "Width of the fabric roll",
    kind: "length",
    min: { US: 1, SI: 0.3 },
    max: { US: 30, SI: 10 },
    message: "Width of the fabric roll as sold.",
  });
  s.input({
    name: "FabricLap",
    label: "Lap between strips",
    kind: "length",
    min: 0,
    max: { US: 3, SI: 1 },
    message: "How far strips of fabric lap each other.",
    note: { US: "Common practice: 6 to 12 in.", SI: "Common practice: 150 to 300 mm." },
  });
  s.input({
    name: "FabricMass",
    label: "Weight of the fabric",
    kind: "number",
    unit: { US: "oz/yd²", SI: "g/m²" },
    min: { US: 2, SI: 70 },
    max: { US: 32, SI: 1100 },
    message: "Weight of the fabric per area, as sold.",
  });
  const columns = [
    { kind: "text" },
    { kind: "count" },
    { kind: "length" },
    { kind: "length" },
    { kind: "area" },
  ] as const;
  const strips = (name: string, label: string, row: number): void => {
    s.put(s.row + 1, 1, { value: label, style: "label" });
    s.spill({
      name,
      header: "function",
      rows: 1,
      at: 2,
      columns,
      formula: `=IF(FabricUnder+FabricOver=0,"",RILL.FABRICCUT(INDEX(PieceLengths,${row}),INDEX(PieceWidths,${row}),FabricRollWidth,FabricLap,FabricUnder+FabricOver,Units))`,
      needs: [`INDEX(PieceLengths,${row})`, `INDEX(PieceWidths,${row})`],
    });
  };
  strips("StreamFabric", "Stream, all layers", 1);
  strips("BasinFabric", "Basin, all layers", 2);
  s.result({
    name: "SkirtFabric",
    label: "Other pieces, all layers",
    source: "by definition, a tenth more for laps: common practice, no source",
    kind: "area",
    formula: "=1.1*(FabricUnder+FabricOver)*SUMPRODUCT(SkirtLengths,SkirtWidths,SkirtCounts)",
    needs: ["PieceCount"],
    note: "Area, a tenth more for laps (rule of thumb).",
  });
  s.result({
    name: "FabricBuyArea",
    label: "Fabric to buy, area",
    kind: "area",
    formula: "=SUM(INDEX(StreamFabric,1,5),INDEX(BasinFabric,1,5),SkirtFabric)",
    needs: ["PieceCount"],
    strong: true,
  });
  s.result({
    name: "FabricBuyLength",
    label: "Fabric to buy, length off the roll",
    source: "by definition: area over width",
    kind: "length",
    formula: "=FabricBuyArea/FabricRollWidth",
    needs: ["FabricBuyArea", "FabricRollWidth"],
  });
  const perArea = job.pick({ US: "FabricMass/144", SI: "FabricMass/1000" });
  s.result({
    name: "FabricWeight",
    label: "Weight of the fabric",
    source: "by definition: area × weight per area",
    kind: "weight",
    formula: `=FabricBuyArea*${perArea}`,
    needs: ["FabricBuyArea", "FabricMass"],
  });
}
