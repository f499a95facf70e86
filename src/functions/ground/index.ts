import type { Declaration } from "../contract/declaration";
import { CUTFILL } from "./cutfill";
import { LINERRUN } from "./linerrun";
import { SHOTCHECK } from "./shotcheck";

export const groundFunctions: readonly Declaration[] = [SHOTCHECK, CUTFILL, LINERRUN];
