import type { Declaration } from "../contract/declaration";
import { BEDDEPTH } from "./beddepth";
import { BEDSPEED } from "./bedspeed";
import { BEDSTONE } from "./bedstone";
import { EVAPLOSS } from "./evaploss";
import { LIPDEPTH } from "./lipdepth";
import { LIPFLOW } from "./lipflow";
import { SPLITFLOW } from "./splitflow";
import { STABLESTONE } from "./stablestone";

export const waterFunctions: readonly Declaration[] = [
  LIPFLOW,
  LIPDEPTH,
  SPLITFLOW,
  BEDDEPTH,
  BEDSPEED,
  BEDSTONE,
  STABLESTONE,
  EVAPLOSS,
];
