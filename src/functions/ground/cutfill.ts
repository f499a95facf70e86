import { cutFill, VOLUME_METHODS } from "../../calc/survey/cutFill";
import { SECTION_RANGE } from "../../calc/survey/section";
import { LEVEL_RANGE } from "../../calc/level/setOut";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { tableResult, type TableCell } from "../contract/result";
import { choice, number, quantity, share } from "../contract/scalars";
import { table } from "../contract/tables";
import { DIGGING_CAUTION } from "./arguments";

const rise = (side: string) =>
  optional(share(`Rise of the ground to the ${side}, negative where it falls`, SECTION_RANGE.crossRise), "0, level", 0);

export const CUTFILL = declare({
  name: "CUTFILL",
  topic: "ground",
  summary: "Gives cut and fill station by station between the ground as it is and the surface wanted.",
  formula:
    "Section: flat formation, sides up or down to the ground; V = L (A1 + A2)/2, or prismoidal L (A1 + 4 Am + A2)/6 with Am of averaged dimensions; " +
    "the change from cut to fill is interpolated",
  source: "Average end area and prismoidal formula, any surveying text; exact examples in the tests",
  limits:
    "Cut is bank volume, fill compacted volume (see SOILBALANCE). Average end area is high where a section tapers to nothing, by up to half; " +
    "the prismoidal formula is exact for straight edges. The surface wanted is the one dug or filled to: take liner, fabric and stone off it first.",
  caution: DIGGING_CAUTION,
  args: {
    stations: table("Stations along the line", {
      station: quantity("length", "Distance along the line", SECTION_RANGE.station),
      ground: quantity("length", "Level of the ground", LEVEL_RANGE.level),
      design: quantity("length", "Level to dig or fill to", LEVEL_RANGE.level),
      width: quantity("length", "Width of the formation", SECTION_RANGE.width),
      rise_left: rise("left"),
      rise_right: rise("right"),
    }),
    cut_slope: optional(number("Sides in cut, run per 1 of height", SECTION_RANGE.slope), "1", 1),
    fill_slope: optional(number("Sides in fill, run per 1 of height", SECTION_RANGE.slope), "2", 2),
    method: optional(choice("How the volume is worked out", VOLUME_METHODS), "prismoidal", "prismoidal"),
  },
  result: tableResult("the cut and fill", [
    { title: "Station", measure: "length" },
    { title: "Cut or fill depth", measure: "length" },
    { title: "Cut area", measure: "area" },
    { title: "Fill area", measure: "area" },
    { title: "Cut", measure: "earth" },
    { title: "Fill", measure: "earth" },
    { title: "Cut so far", measure: "earth" },
    { title: "Fill so far", measure: "earth" },
  ]),
  examples: [
    {
      args: [
        [
          [0, 101, 100, 10, "", ""],
          [200, 101.6, 100, 10, "", ""],
        ],
        2,
        2,
        "prismoidal",
        "SI",
      ],
      gives: [
        { at: [2, 4], is: 3288 },
        { at: [2, 5], is: 0 },
      ],
      within: 1e-12,
      from: "a course sheet on earthwork, design problem 1: {B(d1 + d2)/2 + s(d1² + d2² + d1 d2)/3} L = {13 + 2 × 5.16/3} × 200",
    },
    {
      args: [
        [
          [0, 102, 100, 9, "", ""],
          [27, 98, 100, 9, "", ""],
        ],
        0,
        0,
      ],
      gives: [
        { at: [2, 4], is: 4.5 },
        { at: [2, 5], is: 4.5 },
      ],
      within: 1e-12,
      from: "by hand: two triangles 13.5 ft long, 2 ft high, 9 ft wide: 121.5 ft³ each; / 27 = 4.5 yd³",
    },
  ],
  compute: ({ stations, cut_slope, fill_slope, method }) =>
    cutFill(
      stations.map((at) => ({ ...at, riseLeft: at.rise_left, riseRight: at.rise_right })),
      { cut: cut_slope, fill: fill_slope },
      method,
    ).map(({ station, depth, area, volume, soFar }): TableCell[] => [
      station,
      depth,
      area.cut,
      area.fill,
      volume.cut,
      volume.fill,
      soFar.cut,
      soFar.fill,
    ]),
});
