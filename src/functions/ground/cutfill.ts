import { CUT_FILL_RANGE, cutFill, END_KINDS, VOLUME_METHODS } from "../../calc/ground/cutFill";
import { groundLine, SHOT_RANGE, type Shot } from "../../calc/ground/groundLine";
import { overGround } from "../../calc/ground/overGround";
import { SECTION_RANGE } from "../../calc/ground/section";
import { LEVEL_RANGE } from "../../calc/levels/setOut";
import { invalid } from "../../calc/problem";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { tableResult, type TableCell } from "../contract/result";
import { choice, number, quantity, share } from "../contract/scalars";
import { table } from "../contract/tables";
import { DIGGING_CAUTION } from "../earth/arguments";

const rise = (side: string) =>
  optional(share(`Rise of the ground to the ${side}, negative where it falls`, SECTION_RANGE.crossRise), "0, level", 0);
const level = (about: string) => quantity("length", about, LEVEL_RANGE.level);
const station = (about: string) => quantity("length", about, SECTION_RANGE.station);

export const CUTFILL = declare({
  name: "CUTFILL",
  topic: "ground",
  summary: "Gives cut and fill station by station between the ground as it is and the surface wanted.",
  formula:
    "Section: flat formation, sides up or down to the ground; V = L (A1 + A2)/2, or prismoidal L (A1 + 4 Am + A2)/6 with Am of averaged dimensions; " +
    "the change from cut to fill is interpolated; a sloped end adds z h² w/2 + z² h³/3",
  source: "Average end area and prismoidal formula, any surveying text; exact examples in the tests",
  limits:
    "Cut is bank volume, fill compacted volume (see SOILBALANCE). Average end area is high where a section tapers to nothing, by up to half; " +
    "the prismoidal formula is exact for straight edges. Between shots the ground is straight, beyond the first and the last level. " +
    "The surface wanted is the one dug or filled to: take liner, fabric and stone off it first.",
  caution: DIGGING_CAUTION,
  args: {
    stations: table("Stations along the line", {
      station: station("Distance along the line"),
      design: level("Level to dig or fill to"),
      width: quantity("length", "Width of the formation", SECTION_RANGE.width),
      step: optional(
        quantity("length", "How much higher the surface before this station ends", CUT_FILL_RANGE.step),
        "0, no step",
        0,
      ),
      ground: optional(level("Level of the ground"), "that of the shots"),
      rise_left: rise("left"),
      rise_right: rise("right"),
    }),
    cut_slope: optional(number("Sides in cut, run per 1 of height", SECTION_RANGE.slope), "1", 1),
    fill_slope: optional(number("Sides in fill, run per 1 of height", SECTION_RANGE.slope), "2", 2),
    method: optional(choice("How the volume is worked out", VOLUME_METHODS), "prismoidal", "prismoidal"),
    shots: optional(
      table(
        "Shots on the ground, in place of its levels at the stations",
        {
          station: optional(station("Distance along the line"), "the row is passed over"),
          offset: optional(
            quantity("length", "Distance to the right of the line, negative to the left", SHOT_RANGE.offset),
            "0, on the line",
            0,
          ),
          level: optional(level("Level of the ground there"), "the row is passed over"),
        },
        { zerosCount: true },
      ),
      "the ground of the stations",
    ),
    topsoil: optional(quantity("size", "Topsoil stripped first", CUT_FILL_RANGE.topsoil), "0", 0),
    first_end: optional(choice("How the earth ends before the first station", END_KINDS), "square", "square"),
  },
  result: tableResult("the cut and fill", [
    { title: "Station", measure: "length" },
    { title: "Ground", measure: "length" },
    { title: "Dig or fill to", measure: "length" },
    { title: "Cut or fill depth", measure: "length" },
    { title: "Rise left" },
    { title: "Rise right" },
    { title: "Cut", measure: "earth" },
    { title: "Fill", measure: "earth" },
    { title: "Cut so far", measure: "earth" },
    { title: "Fill so far", measure: "earth" },
    { title: "Topsoil so far", measure: "earth" },
  ]),
  examples: [
    {
      args: [
        [
          [0, 100, 10, "", 101],
          [200, 100, 10, "", 101.6],
        ],
        2,
        2,
        "prismoidal",
        "",
        "",
        "",
        "SI",
      ],
      gives: [
        { at: [2, 6], is: 3288 },
        { at: [2, 7], is: 0 },
      ],
      within: 1e-12,
      from: "a course sheet on earthwork, design problem 1: {B(d1 + d2)/2 + s(d1² + d2² + d1 d2)/3} L = {13 + 2 × 5.16/3} × 200",
    },
    {
      args: [
        [
          [0, 100, 9, "", 102],
          [27, 100, 9, "", 98],
        ],
        0,
        0,
      ],
      gives: [
        { at: [2, 6], is: 4.5 },
        { at: [2, 7], is: 4.5 },
      ],
      within: 1e-12,
      from: "by hand: two triangles 13.5 ft long, 2 ft high, 9 ft wide: 121.5 ft³ each; / 27 = 4.5 yd³",
    },
    {
      args: [
        [
          [0, 103, 3, 0.5],
          [27, 100, 3, ""],
        ],
        0,
        0,
        "",
        [
          [0, 0, 100],
          [27, 0, 100],
        ],
      ],
      gives: [
        { at: [1, 3], is: -3.5 },
        { at: [2, 3], is: -3 },
        { at: [3, 9], is: 4.5 },
      ],
      within: 1e-12,
      from: "by hand: flat ground, a step of 0.5 ft at the top; below it 3 ft of fill run out over 27 ft: 3 × 3/2 × 27 = 121.5 ft³; / 27 = 4.5 yd³",
    },
  ],
  compute({ stations, cut_slope, fill_slope, method, shots, topsoil, first_end }) {
    const surface = shots
      ? overGround(stations, groundLine(placed(shots)))
      : stations.map((at) => ({
          ...at,
          ground: groundOf(at),
          riseLeft: at.rise_left,
          riseRight: at.rise_right,
        }));
    return cutFill(surface, { cut: cut_slope, fill: fill_slope }, method, { topsoil, firstEnd: first_end }).map(
      ({ station, ground, design, depth, riseLeft, riseRight, volume, soFar, topsoilSoFar }): TableCell[] => [
        station,
        ground,
        design,
        depth,
        riseLeft,
        riseRight,
        volume.cut,
        volume.fill,
        soFar.cut,
        soFar.fill,
        topsoilSoFar,
      ],
    );
  },
});

/** Shots that say where they lie and how high; the others of a level book are turning points and bench marks. */
function placed(shots: readonly { station: number | undefined; offset: number; level: number | undefined }[]): Shot[] {
  return shots.flatMap(({ station, offset, level }) =>
    station === undefined || level === undefined ? [] : [{ station, offset, level }],
  );
}

function groundOf({ row, ground }: { readonly row: number; readonly ground: number | undefined }): number {
  if (ground === undefined) throw invalid(`stations row ${row}: ground is needed where no shots are given`);
  return ground;
}
