import type { Declaration } from "../contract/declaration";

export const stoneFunctions: readonly Declaration[] = [];
