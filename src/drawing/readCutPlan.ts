import type { CutPlanFacts } from "./cutPlanFacts";

/**
 * Reads the rows of RILL.CUTPLAN, header or not, as they stand in a sheet.
 * Rows that are neither a cut nor a length to buy are passed over.
 */
export function readCutPlan(rows: readonly (readonly unknown[])[]): Pick<CutPlanFacts, "bought" | "cuts"> {
  const bought: CutPlanFacts["bought"][number][] = [];
  const cuts: CutPlanFacts["cuts"][number][] = [];
  for (const [name, ...cells] of rows) {
    const [roll, along, across, length, width] = cells;
    const numbers = [roll, along, across, length, width];
    if (!numbers.every((cell): cell is number => typeof cell === "number")) continue;
    const [r = 0, a = 0, c = 0, l = 0, w = 0] = numbers;
    if (name === "Length to buy") bought.push({ roll: r, start: a, length: l, width: w });
    else
      cuts.push({
        name: String(name),
        roll: r,
        along: a,
        across: c,
        length: l,
        width: w,
        turned: cells[5] === "turned",
      });
  }
  return { bought, cuts };
}
