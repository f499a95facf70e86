import type { Declaration } from "../contract/declaration";
import { FTIN } from "./ftin";
import { QTY } from "./qty";

export const quantitiesFunctions: readonly Declaration[] = [QTY, FTIN];
