import { designResults } from "./design";
import { moneyResults } from "./money";

export type { Result, ResultValue } from "./result";

/** Every result that has a name in the workbook, topic by topic. */
export const RESULTS = { ...designResults, ...moneyResults } as const;
export type Topic = keyof typeof RESULTS;
