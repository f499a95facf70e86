import { lipDoubt } from "../../calc/water/lip";
import { SHARED_LIPS, splitFlow } from "../../calc/water/split";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { tableResult, type TableCell } from "../contract/result";
import { quantity } from "../contract/scalars";
import { table } from "../contract/tables";
import { FLOW } from "../pipe/arguments";
import { LIP_LIMITS, lipShape, lipWidth } from "./arguments";

export const SPLITFLOW = declare({
  name: "SPLITFLOW",
  topic: "water",
  summary: "Splits a flow over lips that share one pool and lie at different levels.",
  formula: "the water level z where the flows over all lips, Q = C (L - 0.1 n H) H^1.5 with H = z - level, add up",
  source: "Continuity with the weir equations of LIPFLOW",
  limits: `The pool is taken as level and still. A lip above the water stays dry. ${LIP_LIMITS}`,
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
      ],
      within: 1e-5,
      from: "by hand: level lips share a flow by their widths: 24/36 and 12/36 of 5,760 gph",
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
        { at: [2, 4], is: "stays dry" },
      ],
      within: 1e-4,
      from: "by hand: 50 gpm over 1 ft stands 1.2459 in deep (see LIPDEPTH), below the second lip",
    },
  ],
  compute({ flow, lips, lip_shape }) {
    const widths = lips.map(({ lip_width }) => lip_width);
    const parts = splitFlow(
      flow,
      lips.map(({ lip_width, level }) => ({ width: lip_width, level })),
      lip_shape,
    );
    return parts.map(({ flow: part, depth, share }, index): TableCell[] => [
      `Lip ${lips[index]?.row ?? index + 1}`,
      part,
      depth,
      share,
      depth === 0 ? "stays dry" : lipDoubt(widths[index] ?? 0, depth),
    ]);
  },
});
