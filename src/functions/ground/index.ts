import type { Declaration } from "../contract/declaration";
import { BERMVOLUME } from "./bermvolume";
import { CUTFILL } from "./cutfill";
import { PITVOLUME } from "./pitvolume";
import { SOILBALANCE } from "./soilbalance";

export const groundFunctions: readonly Declaration[] = [PITVOLUME, BERMVOLUME, SOILBALANCE, CUTFILL];
