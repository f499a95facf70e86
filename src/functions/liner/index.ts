import type { Declaration } from "../contract/declaration";
import { CUTPLAN } from "./cutplan";
import { FABRICCUT } from "./fabriccut";
import { FALLCUT } from "./fallcut";
import { LINERCUT } from "./linercut";

export const linerFunctions: readonly Declaration[] = [LINERCUT, FALLCUT, FABRICCUT, CUTPLAN];
