import { describe, expect, it } from "vitest";
import { PUMPRANK } from "../../../src/functions/pump/pumprank";

const route = [[2, 100, "Sch 40 PVC", 6]];
/** Ranks pumps for 3500 gph over 8 ft, 20 h on 300 days at 0.15; header left out. */
function rank(...pumps: unknown[][]): unknown[][] {
  const width = Math.max(...pumps.map((row) => row.length));
  const rows = pumps.map((row) => [...row, ...Array.from({ length: width - row.length }, () => null)]);
  return (PUMPRANK.evaluate([rows, 3500, 8, route, 20, 300, 0.15, 10]) as unknown[][]).slice(1);
}
const serves = ["Serves", 400, 500, 26, 2400, 22, 4800, 10];

describe("RILL.PUMPRANK says of each pump why", () => {
  it("meets the flow, with what it has to spare", () => {
    // EPANET 2.3.5, its curve of three points: 59.735 gpm = 3584.1 gph, 84.1 gph and 2 % over 3500.
    expect(rank(serves)[0]?.[7]).toMatch(/^Meets the flow with 84\.\d gph \(2%\) to spare\.$/);
  });

  it("is dearer to own than the first: 100 W more for 6000 h a year at 0.15 over ten years are 900", () => {
    const [first, second] = rank(["Thirsty", 400, 600, ...serves.slice(3)], serves);
    expect(first?.slice(0, 2)).toEqual([1, "Serves"]);
    expect(second?.slice(0, 2)).toEqual([2, "Thirsty"]);
    expect(second?.[7]).toMatch(/to spare\. Costs 900\.00 more than the first\.$/);
  });

  it("is short of it, cannot lift, or runs off its curve", () => {
    const rows = rank(
      ["Weak", 100, 90, 12, 1500, 9, 3000, 3],
      ["Low", 100, 90, 7.5, 3000, 3],
      ["Ends early", 100, 90, 30, 1000, 29],
      serves,
    );
    const verdict = (name: string): unknown => rows.find((row) => row[1] === name)?.[7];
    expect(verdict("Weak")).toMatch(/^Short by \d+ gph \(\d+%\)\.$/);
    expect(verdict("Low")).toBe("Cannot lift: its shut-off head of 7.5 ft is not above the lift of 8 ft.");
    expect(verdict("Ends early")).toBe(
      "Runs off its curve, which ends at 3000 gph and 29 ft; the true flow is more than that and not known.",
    );
    expect(rows.map((row) => row[0])).toEqual([1, "", "", ""]);
  });

  it("looks as if gpm were typed as gph", () => {
    const [row] = rank(["Gallons a minute", 400, 500, 26, 20, 25, 40, 22.5, 60, 18, 80, 11, 95, 3]);
    expect(row?.[7]).toMatch(/gpm typed as gph\?$/);
  });

  it("has a curve that rises, without hiding the others", () => {
    const rows = rank(["Typed wrong", 100, 90, 20, 1000, 22], serves);
    expect(rows[0]?.[1]).toBe("Serves");
    expect(rows[1]?.[7]).toMatch(/^Its curve rises between its points 1 and 2/);
    expect(rows[1]?.slice(3, 5)).toEqual(["", ""]);
  });

  it("names the row and the value of a pump that lacks its power", () => {
    expect(() => rank(serves, ["No power", 100, null, 20, 1000, 18])).toThrow("pumps row 2: watts is needed");
  });
});
