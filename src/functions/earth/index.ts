import type { Declaration } from "../contract/declaration";
import { BERMVOLUME } from "./bermvolume";
import { PITVOLUME } from "./pitvolume";
import { SOILBALANCE } from "./soilbalance";

export const earthFunctions: readonly Declaration[] = [PITVOLUME, BERMVOLUME, SOILBALANCE];
