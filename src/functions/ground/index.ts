import type { Declaration } from "../contract/declaration";

export const groundFunctions: readonly Declaration[] = [];
