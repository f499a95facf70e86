import type { Declaration } from "../contract/declaration";

export const basinFunctions: readonly Declaration[] = [];
