import { brinkDepth } from "../../calc/water/brink";
import { lipDoubt } from "../../calc/water/lip";
import { SHARED_LIPS, splitFlow } from "../../calc/water/split";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { tableResult, type TableCell } from "../contract/result";
import { quantity } from "../contract/scalars";
import { table } from "../contract/tables";
import { FLOW } from "../pipe/arguments";
import { LIP_LIMITS, lipShape, lipWidth } from "./arguments";

/** The trade speaks of flow per inch of lip, or per 100 mm. */
const TRADE_WIDTH = { US: 0.0254, SI: 0.1 } as const;

export const SPLITFLOW = declare({
  name: "SPLITFLOW",
  topic: "water",
  summary: "Splits a flow over lips that share one pool and lie at different levels.",
  formula:
    "the water level z where the flows over all lips, Q = C (L - 0.1 n H) H^1.5 with H = z - level, add up; brink = 0.715 × (q² / g)^(1/3), q = flow per width",
  source:
    "Continuity with the weir equations of LIPFLOW; brink: H. Rouse, Civil Engineering 6 (1936), free overfall (from memory)",
  limits: `The pool is taken as level and still. A lip above the water stays dry. Depth is that of the still water upstream; at the brink the sheet is thinner. ${LIP_LIMITS}`,
  args: {
    flow: quantity("flow", "Flow that reaches the pool", FLOW),
    lips: table(
      "Lips: width, level above the lowest",
      {
        lip_width: lipWidth,
        level: optional(quantity("size", "Level above the lowest lip", SHARED_LIPS.level), "0", 0),
      },
      { mostRows: SHARED_LIPS.most },
    ),
    lip_shape: lipShape,
  },
  result: tableResult("the flow over each lip", [
    { title: "Lip" },
    { title: "Flow", measure: "flow" },
    { title: "Depth", measure: "size" },
    { title: "Share" },
    { title: "At the brink", measure: "size" },
    { title: { US: "Per inch", SI: "Per 100 mm" }, measure: "flow" },
    { title: "Remark" },
  ]),
  examples: [
    {
      args: [
        5760,
        [
          [24, 0],
          [12, 0],
        ],
      ],
      gives: [
        { at: [1, 1], is: 3840 },
        { at: [2, 1], is: 1920 },
        { at: [2, 3], is: 0.333333 },
        { at: [1, 4], is: 0.463835 },
        { at: [1, 5], is: 160 },
      ],
      within: 1e-5,
      from:
        "by hand: level lips share a flow by their widths: 24/36 and 12/36 of 5,760 gph; 3,840 / 24 = 160 gph an inch, " +
        "1,920 gph a foot = 0.071297 ft³/s; 0.715 × (0.071297² / 32.174)^(1/3) = 0.038653 ft = 0.463835 in",
    },
    {
      args: [
        3000,
        [
          [12, 0],
          [12, 3],
        ],
        "sharp",
      ],
      gives: [
        { at: [1, 1], is: 3000 },
        { at: [1, 2], is: 1.2459 },
        { at: [2, 1], is: 0 },
        { at: [2, 6], is: "stays dry" },
      ],
      within: 1e-4,
      from: "by hand: 50 gpm over 1 ft stands 1.2459 in deep (see LIPDEPTH), below the second lip",
    },
  ],
  compute({ flow, lips, lip_shape }, system) {
    const widths = lips.map(({ lip_width }) => lip_width);
    const parts = splitFlow(
      flow,
      lips.map(({ lip_width, level }) => ({ width: lip_width, level })),
      lip_shape,
    );
    return parts.map(({ flow: part, depth, share }, index): TableCell[] => {
      const width = widths[index] ?? 0;
      return [
        `Lip ${lips[index]?.row ?? index + 1}`,
        part,
        depth,
        share,
        brinkDepth(part / width),
        (part / width) * TRADE_WIDTH[system],
        depth === 0 ? "stays dry" : lipDoubt(width, depth),
      ];
    });
  },
});
