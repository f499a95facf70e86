import type { Job, Ref, SheetLayout } from "../../layout";
import { cellAddress } from "../../layout/address";
import { rowOf } from "../../layout/conditions";
import { validationFor } from "../../layout/inputRule";
import { head } from "../../layout/tableHead";
import type { Kind } from "../../layout/formats";
import { fillDown } from "../money/cells";
import { linerRun, linerStations } from "./linerStations";
import { C, down, H, LEVEL, MOST_DROPS, POINTS, type Column } from "./surfaceColumns";

const WIDTH = { label: "Width", source: "by definition: room for a bank on both sides" } as const;

/**
 * The designed surface by station: the berm's crest, the bed below each drop, and the edge of the basin; dug deeper by what
 * lies on it. Right of it the liner's stations, the points of the finished bed, and the ground that is assumed without shots.
 */
export function surface(s: SheetLayout, job: Job): Ref {
  s.section("Surface to dig and fill to");
  s.note(
    "Finished bed from Water, less what is dug below it (Earth); the bed is level below each drop. A pool is deepest below its drop and rises to its lip.",
  );
  const top = s.row + 1;
  heads(s, s.row);
  const size = job.per("size", "length");
  const at = (row: number, column: number): string => cellAddress(row, column);
  const put = (row: number, column: number, formula: string, kind: Kind = "length", format = LEVEL): void => {
    s.put(row, column, {
      formula: `=${formula}`,
      style: kind === "text" ? "resultText" : "result",
      look: kind === "text" ? {} : { format },
      ...(column === C.width ? { origin: WIDTH } : {}),
    });
  };
  const width = "BedWidth+2*ShelfMargin";
  // The crest of the berm, behind the top lip.
  s.put(top, C.place, { value: "Back of the berm's crest", style: "resultText" });
  put(
    top,
    C.station,
    'IF(AND(N(BermLength)>0,COUNT(TopLipLevel,BoxHeight,BermWidth)=3),-BermLength,"")',
    "length",
    "#,##0.00",
  );
  put(top, C.dig, `IF(${at(top, C.station)}="","",TopLipLevel-BoxHeight/${size})`);
  put(top, C.width, `IF(${at(top, C.dig)}="","",BermWidth)`, "length", "#,##0.00");
  for (const column of [C.step, C.bed, C.deeper]) s.put(top, column, { style: "result" });
  for (const column of [H.ends, H.fallen]) s.put(top, column, { value: 0, style: "result", look: { format: LEVEL } });
  put(top, H.lip, 'IF(COUNT(TopLipLevel,ShelfDepth)<2,"",TopLipLevel-ShelfDepth)');
  put(top, H.edge, `IF(${at(top, C.dig)}="",${at(top, H.lip)},${at(top, C.dig)})`);
  for (let drop = 1; drop <= MOST_DROPS; drop++) {
    const row = top + drop;
    const tread = rowOf("Treads", drop);
    s.put(row, C.place, { style: "resultText" });
    put(
      row,
      C.station,
      `IF(AND(N(${tread})>0,COUNT(TopLipLevel,ShelfDepth)=2),${at(row - 1, H.ends)},"")`,
      "length",
      "#,##0.00",
    );
    for (const column of [C.bed, H.fallen, H.lip]) s.put(row, column, { style: "result", look: { format: LEVEL } });
    s.put(row, C.deeper, { style: "input", look: { format: "#,##0.00", align: "right" } });
    const bed = at(row, C.bed);
    put(row, C.dig, `IF(${bed}="","",${bed}-ShelfDepth-N(${at(row, C.deeper)}))`);
    s.put(row, C.width, { style: "result", look: { format: "#,##0.00" } });
    s.put(row, C.step, { style: "result", look: { format: LEVEL } });
    put(row, H.ends, `${at(row - 1, H.ends)}+N(${tread})`);
  }
  const bottom = top + MOST_DROPS + 1;
  const dug = down(s, top + 1, C.dig).text;
  const step = down(s, top + 1, C.step).cells;
  const places = down(s, top + 1, C.place).cells;
  const stations = down(s, top + 1, C.station).text;
  const [bed, fallen, lip] = [C.bed, H.fallen, H.lip].map((column) => down(s, top + 1, column)) as [
    Column,
    Column,
    Column,
  ];
  fillDown(s, places, `IF(${bed.text}="","","Bed below drop "&SEQUENCE(${MOST_DROPS}))`);
  fillDown(s, fallen.cells, 'SUMIF(DropNumbers,"<="&DropNumbers,Drops)');
  fillDown(s, bed.cells, `IF(${stations}="","",TopLipLevel-${fallen.text})`);
  // What lies below no bed of its own, a drop without a tread, changes nothing yet.
  const passed = `MAXIFS(${fallen.text},DropNumbers,"<="&DropNumbers,${stations},">=0")`;
  fillDown(s, lip.cells, `IF((COUNT(TopLipLevel,ShelfDepth)<2)*DropNumbers,"",TopLipLevel-ShelfDepth-${passed})`);
  // The first bed lies below the berm's crest, each other one below the lip before it.
  const above = `IF(${stations}=0,${at(top, H.edge)},${down(s, top, H.lip).text})`;
  fillDown(s, step, `IF(${dug}="","",${above}-${dug})`);
  s.put(bottom, C.place, { value: "Edge of the basin", style: "resultText" });
  put(
    bottom,
    C.station,
    `IF(AND(${at(bottom - 1, H.ends)}>0,COUNT(${at(bottom - 1, H.lip)})=1),${at(bottom - 1, H.ends)},"")`,
    "length",
    "#,##0.00",
  );
  put(bottom, C.dig, `IF(${at(bottom, C.station)}="","",${at(bottom - 1, H.lip)})`);
  s.put(bottom, C.width, { style: "result", look: { format: "#,##0.00" } });
  const below = MOST_DROPS + 1;
  const wide = down(s, top + 1, C.width, below).cells;
  fillDown(s, wide, `IF(${down(s, top + 1, C.dig, below).text}="","",${width})`, WIDTH);
  for (const column of [C.step, C.deeper]) s.put(bottom, column, { style: "result" });
  put(bottom, C.bed, `IF(COUNT(${at(bottom, C.dig)},ShelfDepth)<2,"",${at(bottom, C.dig)}+ShelfDepth)`);
  s.define("SurfaceStations", top, C.station, bottom, C.step);
  s.define("SurfacePlaces", top, C.place, bottom, C.place);
  s.define("PoolDepths", top + 1, C.deeper, bottom - 1, C.deeper);
  s.sheet.validations.push(
    validationFor(
      s,
      { top: top + 1, left: C.deeper, bottom: bottom - 1, right: C.deeper },
      {
        label: "Pool deeper by",
        kind: "length",
        min: 0,
        max: { US: 6, SI: 2 },
        message: "How much deeper the pool below this drop is dug than the bed; blank where there is none.",
      },
    ),
  );
  linerStations(s, job, top);
  assumedGround(s, bottom);
  const points = bedPoints(s, top, bottom);
  linerRun(s, top - 1);
  s.row = bottom + 1;
  return points;
}

function heads(s: SheetLayout, row: number): void {
  const titles: readonly (readonly [number, string, Kind])[] = [
    [C.place, "Place", "text"],
    [C.station, "Station", "length"],
    [C.dig, "Dig or fill to", "length"],
    [C.width, "Width", "length"],
    [C.step, "Step down to it", "length"],
    [C.bed, "Finished bed", "length"],
    [C.deeper, "Pool deeper by", "length"],
    [H.ends, "Ends at", "length"],
    [H.fallen, "Fallen", "length"],
    [H.edge, "Surface above", "length"],
    [H.lip, "Lip above", "length"],
  ];
  for (const [column, title, kind] of titles) head(s, row, column, { title, kind });
}

/** Straight from the level under the box down to finished grade, while there are no shots. */
function assumedGround(s: SheetLayout, bottom: number): void {
  const top = bottom + 2;
  ["At", "Offset", "Level"].forEach((title, index) => head(s, top - 1, POINTS + index, { title, kind: "length" }));
  const rows = [
    [0, 0, '=IF(COUNT(BermGround)=0,"",BermGround)'],
    [`=${cellAddress(bottom - 1, H.ends)}`, 0, '=IF(COUNT(GradeLevel)=0,"",GradeLevel)'],
  ];
  rows.forEach((row, down) =>
    row.forEach((given, index) =>
      s.put(top + down, POINTS + index, {
        ...(typeof given === "number" ? { value: given } : { formula: given }),
        style: "result",
        look: { format: LEVEL },
      }),
    ),
  );
  s.define("GroundAssumed", top, POINTS, top + 1, POINTS + 2);
}

/** Two points for each drop of the finished bed; without more drops the last repeats itself. */
function bedPoints(s: SheetLayout, top: number, bottom: number): Ref {
  const first = bottom + 6;
  ["Bed, station", "Bed, level"].forEach((title, index) =>
    head(s, first - 1, POINTS + index, { title, kind: "length" }),
  );
  head(s, first - 1, POINTS + 2, { title: "Point", kind: "count" });
  const points = 2 * MOST_DROPS + 1;
  const numbers = down(s, first, POINTS + 2, points);
  for (let point = 0; point < points; point++) {
    for (const column of [POINTS, POINTS + 1])
      s.put(first + point, column, { style: "result", look: { format: LEVEL } });
    s.put(first + point, POINTS + 2, { value: point, style: "result" });
  }
  const rows = MOST_DROPS + 1;
  const along = `INDEX(${down(s, top, H.ends, rows).text},INT(${numbers.text}/2)+1)`;
  const fallen = `INDEX(${down(s, top, H.fallen, rows).text},INT((${numbers.text}+1)/2)+1)`;
  fillDown(s, down(s, first, POINTS, points).cells, along);
  fillDown(
    s,
    down(s, first, POINTS + 1, points).cells,
    `IF((COUNT(TopLipLevel)=0)*(${numbers.text}>=0),0,TopLipLevel-${fallen})`,
  );
  return s.define("BedPoints", first, POINTS, first + points - 1, POINTS + 1);
}
