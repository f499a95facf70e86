import type { Declaration } from "../contract/declaration";

export const sheetFunctions: readonly Declaration[] = [];
