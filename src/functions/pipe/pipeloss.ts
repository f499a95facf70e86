import { totalDynamicHead } from "../../calc/pipe/route";
import { declare } from "../contract/declaration";
import { quantityResult } from "../contract/result";
import { quantity } from "../contract/scalars";
import { FLOW, PIPE_LENGTH, method, pipeOf, pipeSize, pipeType, waterTemp } from "./arguments";

export const PIPELOSS = declare({
  name: "PIPELOSS",
  topic: "pipe",
  summary: "Gives the friction head of a length of straight pipe.",
  formula:
    "Hazen-Williams hf = 10.67 L Q^1.852 / (C^1.852 d^4.8704) in SI; or Darcy-Weisbach hf = f (L/d) V²/2g with Colebrook-White, 64/Re when laminar",
  source:
    "Hazen-Williams: SI form as in Shammas & Wang, Eq. 5.37. Darcy-Weisbach: Colebrook (1939). C and roughness of plastic: EPANET 2.2 User Manual, Table 3.2",
  limits:
    "Hazen-Williams holds for turbulent water near 60 °F (15 °C) up to 10 ft/s (3 m/s) and does not see temperature. " +
    "A bore 2% off, as pipe is made, moves friction by 10%. Between Reynolds numbers 2000 and 4000 no method is sure to 10%.",
  args: {
    flow: quantity("flow", "Flow in the pipe", FLOW),
    size: pipeSize,
    length: quantity("length", "Pipe length", PIPE_LENGTH),
    pipe_type: pipeType,
    method,
    water_temp: waterTemp,
  },
  result: quantityResult("head", "the friction head"),
  examples: [
    {
      args: [2400, 2, 100],
      gives: 2.62,
      within: 0.035,
      from: "Illinois Administrative Code 77, part 906, appendix A, exhibit I: 40 gpm in 2 in Schedule 40, C 150, 2.62 ft per 100 ft",
    },
    {
      args: [10800, "bore 57 mm", 20, null, null, null, "SI"],
      gives: 0.485388,
      within: 0.0001,
      from: "by hand: 10.67 × 20 × 0.003^1.852 / (150^1.852 × 0.057^4.8704) = 0.4854 m",
    },
  ],
  compute: ({ flow, size, length, pipe_type, method, water_temp }) =>
    totalDynamicHead(flow, 0, [{ pipe: pipeOf(size, pipe_type), length, k: 0 }], {
      method,
      waterTemperature: water_temp,
      outlets: 0,
    }),
});
