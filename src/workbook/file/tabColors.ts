/** The sheets of a job by what they are for, each group with the color of its tabs. */
const GROUPS: readonly (readonly [color: string, sheets: string])[] = [
  // What is asked and measured, in the color of cells to fill in.
  ["8A6A1F", "Start Site Ground"],
  // What is built.
  ["2B6F8F", "Water Pump Basin Liner Stone Earth Levels"],
  // What it costs.
  ["5E7A3A", "Rates Takeoff Hours Price"],
  // What leaves the office, and what comes back.
  ["2B4A52", "Quote Issued Orders Receipts Reconcile Crew"],
  ["AEB8BB", "Facts"],
];

const COLORS = new Map(GROUPS.flatMap(([color, sheets]) => sheets.split(" ").map((sheet) => [sheet, color] as const)));

/** The color of a sheet's tab; none for the sheets of a company's book. */
export function tabColor(sheet: string): string | undefined {
  return COLORS.get(sheet);
}
