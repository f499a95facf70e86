import { equivalentLength, FRICTION_FACTOR_RANGE, sumOfK } from "../../calc/pipe/fittings";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { quantityResult } from "../contract/result";
import { number } from "../contract/scalars";
import { fittings, pipeOf, pipeSize, pipeType } from "./arguments";

export const FITLENGTH = declare({
  name: "FITLENGTH",
  topic: "pipe",
  summary: "Gives the length of straight pipe that takes as much head as the fittings (their equivalent length).",
  formula: "L = ΣK d / f, d the bore, f the friction factor; left out, Crane's fully rough factor of the bore",
  source: "Crane TP-410, Eq. 2-4 (K = f L/D) and Eq. 2-8; K as in FITLOSS",
  limits:
    "Books differ by a third and more for the same fitting, and a smooth pipe's own factor is smaller than Crane's: with " +
    "it the length is longer. Count fittings once, as K in a route or as length of pipe. The pipe outlet counts if listed.",
  args: {
    size: pipeSize,
    fittings,
    friction_factor: optional(
      number("Friction factor of the pipe (Darcy)", FRICTION_FACTOR_RANGE),
      "Crane's fully rough factor of the bore",
    ),
    pipe_type: pipeType,
  },
  result: quantityResult("length", "the equivalent length of the fittings"),
  examples: [
    {
      args: ["bore 154 mm", [[3.6, 1]], 0.015, null, "SI"],
      gives: 36.96,
      within: 1e-6,
      from: "Crane TP-410M, Example 7.2: K 3.6, f 0.015, bore 154 mm: 37 m; by hand 3.6 × 0.154 / 0.015 = 36.96",
    },
    {
      args: [2, [["butterfly valve", 1]]],
      gives: 7.75,
      within: 0.001,
      from: "Crane TP-410: 45 diameters of 2.067 in = 7.75 ft",
    },
  ],
  compute({ size, fittings, friction_factor, pipe_type }) {
    const { bore } = pipeOf(size, pipe_type);
    return equivalentLength(sumOfK(fittings, bore, true), bore, friction_factor);
  },
});
