import type { Declaration } from "../contract/declaration";
import { LEVELRUN } from "./levelrun";
import { SETOUT } from "./setout";
import { SHOTCHECK } from "./shotcheck";
import { STEPS } from "./steps";

export const levelFunctions: readonly Declaration[] = [STEPS, SETOUT, LEVELRUN, SHOTCHECK];
