import type { Declaration } from "../contract/declaration";
import { LEVELRUN } from "./levelrun";
import { SETOUT } from "./setout";
import { STEPS } from "./steps";

export const levelsFunctions: readonly Declaration[] = [STEPS, SETOUT, LEVELRUN];
