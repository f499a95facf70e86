import type { Declaration } from "../contract/declaration";
import { PIPEBORE } from "./pipebore";

export const pipeFunctions: readonly Declaration[] = [PIPEBORE];
