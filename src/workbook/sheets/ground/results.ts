import type { Ref, SheetLayout } from "../../layout";

/** What the shots come to: ground, cut and fill, topsoil, liner. */
export function results(s: SheetLayout): void {
  s.section("What it comes to");
  s.result({
    name: "GroundShots",
    label: "Shots on the line",
    kind: "count",
    formula:
      "=IF(COUNT(ShotBook)=0,0,IF(ISERROR(LevelRunHead),LevelRunHead," +
      "SUMPRODUCT(ISNUMBER(ShotStations)*ISNUMBER(ShotLevels)*(ISNUMBER(ShotOffsets)*(ShotOffsets<>0)=0))))",
  });
  s.result({
    name: "GroundFrom",
    label: "The ground is",
    kind: "text",
    formula:
      '=IF(GroundShots>=2,"as shot",IF(COUNT(BermGround)=0,"not known","assumed: straight from the level under the box on Earth to finished grade"))',
  });
  s.put(s.row, 1, { value: "The run of levels", style: "label" });
  s.put(s.row, 2, {
    formula: '=IFERROR(INDEX(LevelRun,MATCH("Backsights*",INDEX(LevelRun,0,5),0),5),"")',
    style: "resultText",
    across: s.lastColumn - 1,
  });
  s.row++;
  s.result({
    name: "GroundAtLip",
    label: "Its level under the top lip",
    kind: "length",
    format: "#,##0.000",
    formula: "=INDEX(CutFill,MATCH(0,INDEX(CutFill,0,1),0),2)",
    needs: ["INDEX(CutFill,0,1)"],
  });
  const total = (name: string, label: string, column: number, note: string): void => {
    s.result({
      name,
      label,
      kind: "earth",
      formula: `=MAX(INDEX(CutFill,0,${column}))`,
      needs: [`INDEX(CutFill,0,${column})`],
      strong: true,
      note,
    });
  };
  total("LineCut", "Cut along the line (bank)", 9, "Bed, banks and crest; pit and trench are on Earth.");
  total("LineFill", "Fill along the line (compacted)", 10, "Under stream and box; Earth weighs it against the spoil.");
  total("TopsoilVolume", "Topsoil stripped (bank)", 11, "Kept apart: neither fill nor spoil.");
  const rounded = (length: string): string => `ROUNDUP((${length})/CutRounding-0.000000001,0)*CutRounding`;
  s.result({
    name: "LinerRunLength",
    label: "Liner along the stream",
    source: "by definition: the bed followed, overlap at both ends and slack at each drop, rounded up",
    kind: "length",
    formula: `=${rounded('MAX(INDEX(LinerRun,0,2))+2*LinerOverlap+SlackPerDrop*COUNTIF(Drops,">0")')}`,
    needs: ["INDEX(LinerRun,0,2)", "LinerOverlap", "SlackPerDrop", "CutRounding"],
    note: "With sheet beyond both ends and loose sheet at each drop; a piece on Liner once there are shots.",
  });
  s.result({
    name: "LinerRunWidth",
    label: "Liner across, at its widest",
    source: "by definition: rounded up to whole cuts",
    kind: "length",
    formula: `=${rounded("MAX(INDEX(LinerRun,0,3))")}`,
    needs: ["INDEX(LinerRun,0,3)", "CutRounding"],
  });
}

/** Cut and fill station by station; it ends the sheet, for its length follows from the shots. */
export function cutFill(s: SheetLayout): Ref {
  s.section("Cut and fill by station");
  s.note(
    "Between shots the ground is straight, beyond the first and the last it is level. A step has two rows, above and below it. Depth: ground over surface, topsoil off; fill is negative.",
  );
  const length = { kind: "length", format: "#,##0.00" } as const;
  const { body } = s.spill({
    name: "CutFill",
    header: "function",
    headerLines: 3,
    rows: 90,
    open: true,
    formula:
      '=IF(OR(COUNT(INDEX(SurfaceStations,0,2))<2,BedWidth="",ShelfMargin="",AND(GroundShots<2,COUNT(BermGround,GradeLevel)<2)),"Inputs missing",RILL.CUTFILL(SurfaceStations,CutSlope,BermSlope,VolumeMethod,' +
      'IF(GroundShots>=2,IF(ShotPlaces="","",ShotPlaces),GroundAssumed),TopsoilDepth,BermEnds,Units))',
    columns: [
      length,
      length,
      length,
      length,
      { kind: "share", format: "0%" },
      { kind: "share", format: "0%" },
      { kind: "earth" },
      { kind: "earth" },
      { kind: "earth" },
      { kind: "earth" },
      { kind: "earth" },
    ],
  });
  return body;
}

/** Existing ground, the surface dug or filled to, and the finished bed, by station. */
export function profileChart(
  s: SheetLayout,
  rows: number,
  { cutFill, bed }: { readonly cutFill: Ref; readonly bed: Ref },
): void {
  const unit = s.job.pick({ US: "ft", SI: "m" });
  s.chart({
    title: "Profile along the line",
    description:
      "Levels over stations: the existing ground, the surface that is dug or filled to, and the finished bed with its drops.",
    xTitle: `Station, down the line from the top lip (${unit})`,
    yTitle: `Level (${unit})`,
    rows,
    series: [
      { title: "Finished bed", x: bed.column(1), y: bed.column(2) },
      { title: "Existing ground", x: cutFill.column(1), y: cutFill.column(2), dashed: true },
      { title: "Dug or filled to", x: cutFill.column(1), y: cutFill.column(3) },
    ],
  });
}
