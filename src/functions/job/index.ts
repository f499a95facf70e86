import type { Declaration } from "../contract/declaration";
import { DRAFT } from "./draft";
import { OPTION } from "./option";
import { PRICERANGE } from "./pricerange";

export const jobFunctions: readonly Declaration[] = [DRAFT, PRICERANGE, OPTION];
