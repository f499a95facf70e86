import type { Declaration } from "../contract/declaration";

export const pipeFunctions: readonly Declaration[] = [];
