import { readWritten, type WrittenQuantity } from "../../calc/money/reconcile/writtenQuantity";
import { invalid, plain } from "../../calc/problem";
import type { Argument } from "../contract/argument";
import { number } from "../contract/scalars";
import { PAPER_RANGE } from "./arguments";

/** The quantity of a paper: a number in the unit that stands beside it, or text with a unit of its own. */
export function paperQuantity(about: string): Argument<number | WrittenQuantity> {
  const count = number(about, PAPER_RANGE);
  const { min = -Infinity, max = Infinity } = PAPER_RANGE;
  return {
    ...count,
    rule: (system) => `${count.rule(system)}, or text such as "0.5 ton"`,
    read(raw, label, system) {
      if (typeof raw !== "string" || raw.trim() === "") return count.read(raw, label, system);
      const written = readWritten(raw, label);
      if (written.quantity >= min && written.quantity <= max) return written;
      throw invalid(`${label} must be ${plain(min)} to ${plain(max)}; got "${raw.trim().slice(0, 40)}"`);
    },
  };
}
