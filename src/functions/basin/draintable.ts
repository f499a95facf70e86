import { drainBackTotal } from "../../calc/basin/drainBack";
import { declare } from "../contract/declaration";
import { tableResult, type TableCell } from "../contract/result";
import { DRAIN_LIMITS, drainArguments, drainParts } from "./arguments";

export const DRAINTABLE = declare({
  name: "DRAINTABLE",
  topic: "basin",
  summary: "Takes the drain-back apart: water, depth and speed of every pool, bed and pipe, and the total.",
  formula: "as DRAINBACK; share = part / total",
  source: "Geometry, with the weir equation of LIPDEPTH and Manning's of BEDDEPTH",
  limits: DRAIN_LIMITS,
  args: drainArguments,
  result: tableResult("the parts of the drain-back", [
    { title: "Part" },
    { title: "Water", measure: "water" },
    { title: "Share" },
    { title: "Depth", measure: "size" },
    { title: "Speed", measure: "speed" },
    { title: "Remark" },
  ]),
  examples: [
    {
      args: [3600, null, [[20, 1.5, 5, 0.05]], 2, 60, null, true],
      gives: [
        { at: [1, 0], is: "Bed 1" },
        { at: [1, 1], is: 17.5704 },
        { at: [1, 3], is: 0.93953 },
        { at: [2, 1], is: 0 },
        { at: [2, 5], is: "held by the check valve" },
        { at: [3, 0], is: "Total" },
        { at: [3, 1], is: 17.5704 },
      ],
      within: 1e-4,
      from:
        "put back by hand: y = 0.93953 in = 0.078294 ft in 1.5 ft: A = 0.117441 ft², P = 1.656588 ft; 1.486 / 0.05 × 0.117441 × " +
        "0.070893^(2/3) × 0.223607 = 0.1337 ft³/s = 60 gpm; 20 ft × 0.117441 ft² × 7.48052 = 17.570 gal",
    },
  ],
  compute(values, system) {
    const { parts, labels } = drainParts(values, system);
    const total = drainBackTotal(parts);
    const rows = parts.map(({ volume, depth, speed, remark }, index): TableCell[] => [
      labels[index] ?? "",
      volume,
      total === 0 ? 0 : volume / total,
      depth ?? "",
      speed ?? "",
      remark,
    ]);
    return [...rows, ["Total", total, total === 0 ? 0 : 1, "", "", ""]];
  },
});
