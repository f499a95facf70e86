import { pitVolume } from "../../calc/earth/earthworks";
import { declare } from "../contract/declaration";
import { quantityResult } from "../contract/result";
import { quantity } from "../contract/scalars";
import { DEPTH, DIGGING_CAUTION, pitSlope, SIDE } from "./arguments";

export const PITVOLUME = declare({
  name: "PITVOLUME",
  topic: "earth",
  summary: "Gives the bank volume of a pit with a rectangular bottom and sloped or upright sides, exactly.",
  formula: "V = L W d + z d² (L + W) + 4/3 z² d³; L, W of the bottom, z = run per 1 of depth",
  source: "Prismoidal formula, exact for this solid; any surveying text",
  limits:
    "Bank volume, as it lies in the ground: trucks carry more (see SOILBALANCE). A pipe trench is a pit too. " +
    "Upside down it is a free-standing heap with a flat top.",
  caution: DIGGING_CAUTION,
  args: {
    length: quantity("length", "Length of the bottom", SIDE),
    width: quantity("length", "Width of the bottom", SIDE),
    depth: quantity("length", "Depth", DEPTH),
    side_slope: pitSlope,
  },
  result: quantityResult("earth", "the bank volume of the pit"),
  examples: [
    {
      args: [8, 8, 2, 1.5],
      gives: 9.1852,
      within: 1e-5,
      from: "by hand: 8×8×2 + 1.5×4×16 + 4/3×2.25×8 = 128 + 96 + 24 = 248 ft³; / 27 = 9.185 yd³",
    },
    {
      args: [3, 2, 1, 0, "SI"],
      gives: 6,
      within: 1e-12,
      from: "by hand: 3 × 2 × 1 = 6 m³",
    },
  ],
  compute: ({ length, width, depth, side_slope }) => pitVolume(length, width, depth, side_slope),
});
