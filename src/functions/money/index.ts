import type { Declaration } from "../contract/declaration";

export const moneyFunctions: readonly Declaration[] = [];
