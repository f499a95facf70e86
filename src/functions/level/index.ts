import type { Declaration } from "../contract/declaration";

export const levelFunctions: readonly Declaration[] = [];
