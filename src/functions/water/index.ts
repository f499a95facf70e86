import type { Declaration } from "../contract/declaration";

export const waterFunctions: readonly Declaration[] = [];
