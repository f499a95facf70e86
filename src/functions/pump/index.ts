import type { Declaration } from "../contract/declaration";
import { CABLEDROP } from "./cabledrop";
import { CURVETABLE } from "./curvetable";
import { DUTY } from "./duty";
import { PIPERANK } from "./piperank";
import { PUMPHEAD } from "./pumphead";
import { PUMPRANK } from "./pumprank";
import { PUMPWATTS } from "./pumpwatts";
import { RUNCOST } from "./runcost";

export const pumpFunctions: readonly Declaration[] = [
  PUMPHEAD,
  DUTY,
  CURVETABLE,
  PUMPRANK,
  PIPERANK,
  PUMPWATTS,
  RUNCOST,
  CABLEDROP,
];
