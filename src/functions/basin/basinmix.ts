import { basinMix, findBasinPart } from "../../calc/basin/mix";
import { BASIN_PARTS, type BasinPartKind } from "../../calc/tables/basinParts";
import type { Argument } from "../contract/argument";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { tableResult, type TableCell } from "../contract/result";
import { quantity, share, text } from "../contract/scalars";
import { table } from "../contract/tables";
import { BASIN_DEPTH, BASIN_SIDE, basinSlope, VOID_LIMITS } from "./arguments";

const kindText = text("Kind of part", { longest: 40 });
const kindNames = BASIN_PARTS.map(({ name }) => name);

/** A kind of part by its name. */
const kind: Argument<BasinPartKind> = {
  ...kindText,
  choices: kindNames,
  rule: () => `one of: ${kindNames.join(", ")}`,
  read: (raw, label, system) => findBasinPart(kindText.read(raw, label, system), label),
};

export const BASINMIX = declare({
  name: "BASINMIX",
  topic: "basin",
  summary: "Gives the water, gravel and mean void fraction of a basin made of modules and wells in a gravel pit.",
  formula:
    "gravel = pit - modules - wells; water = Σ volume × void fraction; pit with sloped walls as in BASINHOLD; " +
    "above the modules: what lies higher than the tallest module",
  source:
    "Geometry (prismoidal formula, cylinder); void fractions: gravel 0.40, modules 0.95 of stormwater manuals (from memory)",
  limits:
    `Depths count below the full water level only. Give the pit as one row; its void fraction is that of the gravel. ${VOID_LIMITS} ` +
    "Ask the supplier for the modules' own figure.",
  args: {
    parts: table(
      "Parts: kind, length, width, depth, void fraction, side slope",
      {
        kind,
        length: quantity("length", "Length; diameter of a round well", BASIN_SIDE),
        width: optional(quantity("length", "Width", BASIN_SIDE), "as the length"),
        depth: quantity("length", "Depth below the full water level", BASIN_DEPTH),
        void_fraction: optional(
          share("Room for water per volume", { above: 0, max: 1 }),
          "0.4 pit, 0.95 modules, 1 well",
        ),
        side_slope: basinSlope,
      },
      { mostRows: 100 },
    ),
  },
  result: tableResult("the parts of the basin", [
    { title: "Part" },
    { title: "Volume", measure: "earth" },
    { title: "Void fraction" },
    { title: "Water", measure: "water" },
  ]),
  examples: [
    {
      args: [
        [
          ["pit", 10, 8, 3, 0.4],
          ["modules", 6, 6, 2.5, 0.95],
        ],
      ],
      gives: [
        { at: [1, 0], is: "Modules" },
        { at: [1, 3], is: 639.584 },
        { at: [2, 0], is: "Gravel" },
        { at: [2, 1], is: 5.55556 },
        { at: [3, 0], is: "Basin" },
        { at: [3, 3], is: 1088.416 },
        { at: [4, 0], is: "Above the modules" },
        { at: [4, 3], is: 119.688 },
      ],
      within: 1e-5,
      from:
        "by hand: modules 90 ft³ × 0.95 = 85.5 ft³ = 639.584 gal; gravel 240 - 90 = 150 ft³ = 5.55556 yd³, × 0.4 = 60 ft³; " +
        "145.5 ft³ × 7.480519 = 1,088.416 gal; above: 80 ft² × 0.5 ft × 0.4 × 7.480519 = 119.688 gal",
    },
  ],
  compute({ parts }) {
    const shares = basinMix(
      parts.map(({ kind, length, width, depth, void_fraction, side_slope, row }) => ({
        kind,
        length,
        width,
        depth,
        voidFraction: void_fraction,
        sideSlope: side_slope,
        label: `parts row ${row}`,
      })),
    );
    return shares.map(({ name, volume, voidFraction, water }): TableCell[] => [
      name,
      volume,
      voidFraction ?? "",
      water,
    ]);
  },
});
