import type { Declaration } from "../contract/declaration";
import { BOULDERMIX } from "./bouldermix";
import { BOULDERTONS } from "./bouldertons";
import { BOULDERWEIGHT } from "./boulderweight";
import { GRAVELTONS } from "./graveltons";
import { STONETONS } from "./stonetons";

export const stoneFunctions: readonly Declaration[] = [GRAVELTONS, STONETONS, BOULDERTONS, BOULDERWEIGHT, BOULDERMIX];
