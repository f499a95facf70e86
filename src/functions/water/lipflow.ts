import { lipFlow } from "../../calc/water/lip";
import { sharpCrestFlow } from "../../calc/water/sharpCrest";
import { declare } from "../contract/declaration";
import { quantityResult } from "../contract/result";
import { quantity } from "../contract/scalars";
import { crestArguments, LIP_LIMITS, lipShape, lipWidth, sharpCrest, SHEET_DEPTH } from "./arguments";

export const LIPFLOW = declare({
  name: "LIPFLOW",
  topic: "water",
  summary: "Gives the flow that a sheet of water of the wanted depth needs over a lip.",
  formula:
    "Q = C (L - 0.1 n H) H^1.5, L lip width, H still water above the lip, n ends where the sheet draws in; of a sharp lip with " +
    "crest height P: Q = 2/3 √(2g) (0.602 + 0.083 H/P) L (H + 1.25 mm)^1.5, with pool width B: Q = Ce (L + kb) (H + kh)^1.5",
  source:
    "J. B. Francis (1855), suppressed and contracted weir; Brater & King (1976), broad lip: both as in the EPA SWMM " +
    "Reference Manual vol. II (2017), section 6.3 and Table 6-3. With a crest height: T. Rehbock (1929, from memory); " +
    "with a pool width: C. E. Kindsvater and R. W. Carter (1959), constants of Table 6-2 there",
  limits: LIP_LIMITS,
  args: {
    lip_width: lipWidth,
    sheet_depth: quantity("size", "Depth of still water above the lip", SHEET_DEPTH),
    lip_shape: lipShape,
    ...crestArguments,
  },
  result: quantityResult("flow", "the flow over the lip"),
  examples: [
    {
      args: [36, 1, "sharp, narrowed"],
      gives: 6435.88,
      within: 1e-4,
      from: "by hand: 3.33 × (3 - 0.2 / 12) ft × (1/12)^1.5 = 0.238988 ft³/s; × 448.831 × 60 gph",
    },
    {
      args: [12, 2.4, "broad, deep"],
      gives: 6117.9,
      within: 1e-4,
      from: "by hand: 2.54 (Brater & King, head 0.2 ft, crest 2 ft) × 1 ft × 0.2^1.5 = 0.22718 ft³/s; × 448.831 × 60 gph",
    },
    {
      args: [24, 2.4, "sharp", 12, 24],
      gives: 16232,
      within: 1e-4,
      from: "by hand: Ce = 0.4 × 0.2 + 3.22 = 3.30; 3.30 × (2 - 0.00295) ft × (0.2 + 0.003)^1.5 = 0.60276 ft³/s; × 26,929.9 gph",
    },
    {
      args: [1000, 50, 1.84, null, null, "SI"],
      gives: 74058,
      within: 1e-4,
      from: "by hand: 1.84 × 1 m × 0.05^1.5 = 0.0205718 m³/s; × 3,600,000 L/h",
    },
  ],
  compute({ lip_width, sheet_depth, lip_shape, crest_height, pool_width }) {
    const crest = sharpCrest(lip_shape, lip_width, crest_height, pool_width);
    return crest ? sharpCrestFlow(crest, sheet_depth) : lipFlow(lip_width, sheet_depth, lip_shape);
  },
});
