import { lipFlow } from "../../calc/water/lip";
import { declare } from "../contract/declaration";
import { quantityResult } from "../contract/result";
import { quantity } from "../contract/scalars";
import { LIP_LIMITS, lipShape, lipWidth, SHEET_DEPTH } from "./arguments";

export const LIPFLOW = declare({
  name: "LIPFLOW",
  topic: "water",
  summary: "Gives the flow that a sheet of water of the wanted depth needs over a lip.",
  formula: "Q = C (L - 0.1 n H) H^1.5, L lip width, H still water above the lip, n ends where the sheet draws in",
  source:
    "J. B. Francis (1855), suppressed and contracted weir; Brater & King (1976), broad lip: both as in the EPA SWMM " +
    "Reference Manual vol. II (2017), section 6.3 and Table 6-3",
  limits: LIP_LIMITS,
  args: {
    lip_width: lipWidth,
    sheet_depth: quantity("size", "Depth of still water above the lip", SHEET_DEPTH),
    lip_shape: lipShape,
  },
  result: quantityResult("flow", "the flow over the lip"),
  examples: [
    {
      args: [36, 1, "sharp, narrowed"],
      gives: 6480,
      within: 0.02,
      from: "standard weir table, 1 in over 3 ft: 108 gpm = 6,480 gph",
    },
    {
      args: [12, 2.4, "broad, deep"],
      gives: 6117.9,
      within: 1e-4,
      from: "by hand: 2.54 (Brater & King, head 0.2 ft, crest 2 ft) × 1 ft × 0.2^1.5 = 0.22718 ft³/s; × 448.831 × 60 gph",
    },
    {
      args: [1000, 50, 1.84, "SI"],
      gives: 74058,
      within: 1e-4,
      from: "by hand: 1.84 × 1 m × 0.05^1.5 = 0.0205718 m³/s; × 3,600,000 L/h",
    },
  ],
  compute: ({ lip_width, sheet_depth, lip_shape }) => lipFlow(lip_width, sheet_depth, lip_shape),
});
