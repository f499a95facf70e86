import { BASIN_PARTS } from "../../../calc/tables/basinParts";
import type { SheetLayout } from "../../layout";

/** Rows for modules and wells; the pit itself is one more. */
export const PARTS = 4;
const SIDE = { min: { US: 0.3, SI: 0.1 }, max: { US: 200, SI: 60 } } as const;

/** The pit, and what stands in it. */
export function pit(s: SheetLayout): void {
  s.section("Pit");
  s.caution(
    "A pit wall can cave in and bury a person: Earth says from which depth it is sloped or shored. Keep spoil 2 ft (0.6 m) and machines farther back from the edge, and have " +
      "buried lines marked before digging. Cover or fence an open pit.",
  );
  const side = (name: string, label: string, demo: { US: number; SI: number }, message: string): void => {
    s.input({ name, label, kind: "length", demo, ...SIDE, message });
  };
  side("BasinLength", "Length of the bottom", { US: 9, SI: 2.9 }, "Inside length of the basin at its bottom.");
  side("BasinWidth", "Width of the bottom", { US: 6.5, SI: 2.1 }, "Inside width of the basin at its bottom.");
  s.input({
    name: "BasinWaterDepth",
    label: "Water depth, floor to overflow",
    kind: "length",
    demo: { US: 2.25, SI: 0.75 },
    min: { US: 0.5, SI: 0.15 },
    max: { US: 12, SI: 3.6 },
    message: "Depth of the water from the floor of the basin up to its overflow.",
  });
  s.input({
    name: "BasinSideSlope",
    label: "Walls, out per 1 up",
    kind: "number",
    format: "0.00",
    min: 0,
    max: 3,
    message: "How far a wall leans out for each 1 it goes up; 0 is upright.",
  });
  s.input({
    name: "RimBelowGrade",
    label: "Rim and overflow below finished grade",
    kind: "size",
    min: 0,
    max: { US: 48, SI: 1200 },
    message: "How far the basin's rim, over which it overflows, lies below the finished patio or lawn.",
    note: {
      US: "Common practice: 3 in, so that gravel hides the rim.",
      SI: "Common practice: 75 mm, so that gravel hides the rim.",
    },
  });
  s.input({
    name: "GravelVoids",
    label: "Room for water in the gravel",
    kind: "share",
    min: 0.05,
    max: 1,
    message: "Share of the gravel's volume that water can fill: its porosity. Washed gravel has 35 to 45%.",
    note: "Porosity, not void ratio: a void ratio of 0.67 is 40%. Measure yours: fill a bucket with stone, then with water.",
  });
  parts(s);
}

function parts(s: SheetLayout): void {
  s.section("What stands in the pit");
  s.note(
    "Depths count below the full water level. The last row is the pit itself; gravel fills what the others leave.",
  );
  const table = s.table({
    rows: PARTS,
    columns: [
      {
        key: "kind",
        title: "Kind",
        kind: "text",
        name: "PartKinds",
        input: {
          choices: BASIN_PARTS.filter(({ role }) => role !== "pit").map(({ name }) => name),
          message:
            "Void modules, an open pump well, or a round one. Choose from the list; leave blank where there is none.",
        },
      },
      {
        key: "length",
        title: "Length",
        kind: "length",
        name: "PartLengths",
        input: { ...SIDE, message: "Length of the block of modules or of the well; diameter of a round well." },
      },
      {
        key: "width",
        title: "Width",
        kind: "length",
        name: "PartWidths",
        input: { ...SIDE, message: "Width of the block or well; blank for a round well." },
      },
      {
        key: "depth",
        title: "Depth",
        kind: "length",
        name: "PartDepths",
        input: {
          min: { US: 0.1, SI: 0.03 },
          max: { US: 12, SI: 3.6 },
          message: "Height of the part below the full water level; at most the water depth of the pit.",
        },
      },
      {
        key: "voids",
        title: "Room for water",
        kind: "share",
        name: "PartRoom",
        input: { min: 0.05, max: 1, message: "Blank is 95% for modules and 100% for wells; ask the supplier." },
      },
      { key: "slope", title: "Walls, out per 1 up", kind: "number" },
    ],
    demo: {
      US: [
        ["modules", 6, 4.5, 1.5],
        ["round well", 2, "", 2.25],
      ],
      SI: [
        ["modules", 1.8, 1.2, 0.5],
        ["round well", 0.6, "", 0.75],
      ],
    },
  });
  s.put(s.row, 1, { value: "pit", style: "resultText" });
  ["BasinLength", "BasinWidth", "BasinWaterDepth", "GravelVoids", "BasinSideSlope"].forEach((name, index) => {
    const kind = name === "GravelVoids" ? "share" : name === "BasinSideSlope" ? "number" : "length";
    s.put(s.row, index + 2, { formula: `=IF(COUNT(${name})=0,"",${name})`, style: "result", kind });
  });
  s.define("BasinParts", table.body.top, 1, s.row, table.body.right);
  s.row++;
  s.result({
    name: "TubIsBasin",
    label: "Tubs as large as the pit",
    kind: "count",
    formula: '=IFERROR(COUNTIFS(PartKinds,"tub",PartLengths,">="&BasinLength,PartWidths,">="&BasinWidth),0)',
    note: "Such a tub is the basin: no liner lies below it. A smaller one stands in the lined pit, in stone.",
  });
  s.row++;
}
