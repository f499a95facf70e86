import type { Book } from "../../book/types";
import type { JobRow } from "../facts";
import { byCode } from "./newPrices";

/** A line of the job's own copy of the prices. */
export type PriceLine = JobRow<"prices">;

/** What the book says of a line today; its unit is told apart, because nothing converts a pack or a need. */
export type PriceField =
  "cost" | "pack" | "minimum" | "waste" | "freight" | "supplier" | "theirs" | "kind" | "taxable" | "day" | "mark";

/** One line of the job that the book knows better today; nothing is changed before a person has seen it. */
export interface PriceUpdate {
  readonly code: string;
  /** Its place in the job's list, from 0. */
  readonly at: number;
  readonly changes: readonly { readonly field: PriceField; readonly from: unknown; readonly to: unknown }[];
}

/** A line that cannot be compared, and why. */
export interface Incomparable {
  readonly name: string;
  readonly reason: string;
}

/** What a blank cell of a price line means. */
const BLANK: Readonly<Partial<Record<PriceField, unknown>>> = {
  pack: 1,
  minimum: 0,
  waste: 0,
  freight: 0,
  kind: "material",
  taxable: "yes",
};
const FIELDS: readonly PriceField[] = [
  ...(["cost", "pack", "minimum", "waste", "freight", "supplier", "theirs", "kind", "taxable", "day", "mark"] as const),
];

/**
 * What would change if a job's prices were brought up to date with the book: of each line that the book has under its
 * code, every field in which they differ. Lines the book does not have stay; a price the book has not asked for changes
 * none; a day alone is no change.
 */
export function refreshed(
  prices: readonly PriceLine[],
  book: Book,
): { readonly updates: readonly PriceUpdate[]; readonly left: readonly Incomparable[] } {
  const products = byCode(book);
  const left: Incomparable[] = [];
  const updates = prices.flatMap((line, at): PriceUpdate[] => {
    const code = line.code ?? "";
    const today = products.get(code.toLowerCase())?.line;
    if (!today || today.cost === undefined) return [];
    if (line.unit !== undefined && line.unit !== today.unit) {
      left.push({
        name: code,
        reason: `is priced by the ${line.unit} in the job and by the ${today.unit ?? "each"} in the book`,
      });
      return [];
    }
    const changes = FIELDS.flatMap((field) => {
      const [from, to] = [line[field], today[field]];
      return same(from ?? BLANK[field], to ?? BLANK[field]) ? [] : [{ field, from, to }];
    });
    return changes.every(({ field }) => field === "day") ? [] : [{ code, at, changes }];
  });
  return { updates, left };
}

/** A blank text and nothing are the same, and so are numbers but for binary noise. */
function same(a: unknown, b: unknown): boolean {
  if (typeof a === "number" && typeof b === "number") return Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(a));
  return (a ?? "") === (b ?? "");
}
