import type { Declaration } from "../contract/declaration";

export const pumpFunctions: readonly Declaration[] = [];
