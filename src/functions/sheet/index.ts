import type { Declaration } from "../contract/declaration";
import { CUTPLAN } from "./cutplan";
import { FABRICCUT } from "./fabriccut";
import { FALLCUT } from "./fallcut";
import { LINERCUT } from "./linercut";
import { LINERRUN } from "./linerrun";

export const sheetFunctions: readonly Declaration[] = [LINERCUT, FALLCUT, FABRICCUT, LINERRUN, CUTPLAN];
