import type { Declaration } from "../contract/declaration";
import { FTIN } from "./ftin";
import { QTY } from "./qty";

export const quantityFunctions: readonly Declaration[] = [QTY, FTIN];
