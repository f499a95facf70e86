import { defineSheet, type Ref, type SheetLayout } from "../../layout";
import { checks } from "./checks";
import { LEVEL, points, stakes } from "./points";

const MOST_DROPS = 12;

/** A layout of steps to choose from, and the rod readings and string measures the crew sets the feature out with. */
export const levels = defineSheet({
  name: "Levels",
  order: 9,
  build(s, job) {
    s.widths([26, 9, 9, 11, 16, 8, 8, 35]);
    s.takesPictures();
    s.title("Levels", "Try layouts of the drops, then set out every point by rod reading or from a string.");
    steps(s);
    const rows = points(s, job);
    const staked = stakes(s);
    checks(s, job);
    s.checksHere();
    setting(s, rows, staked);
  },
});

function steps(s: SheetLayout): void {
  s.section("A natural layout of the drops");
  s.note(
    "A suggestion: where you like it, copy its drops and treads over those on Water, as values. Another seed gives another layout; the same seed repeats it.",
  );
  s.input({
    name: "Unevenness",
    label: "Unevenness",
    kind: "share",
    min: 0,
    max: 1,
    message: "0% makes all drops alike, 100% makes them very uneven.",
  });
  s.input({
    name: "StepSeed",
    label: "Seed",
    kind: "count",
    min: 1,
    max: 1000000,
    message: "Any whole number; another gives another layout.",
  });
  s.skip();
  s.spill({
    name: "StepTable",
    formula: "=RILL.STEPS(Fall,Run,DropCount,Unevenness,StepSeed,Units)",
    rows: MOST_DROPS,
    header: "function",
    columns: [
      { kind: "count" },
      { kind: "length", format: "#,##0.000" },
      { kind: "length", format: "#,##0.000" },
      { kind: "length", format: "#,##0.000" },
      { kind: "length", format: "#,##0.000" },
    ],
    needs: ["Fall", "Run", "DropCount"],
  });
}

function setting(s: SheetLayout, rows: number, staked: number): void {
  s.section("Rod readings and string measures");
  s.note(
    "Move the point until the rod shows its reading; or measure up or down from a string pulled level from the benchmark.",
  );
  s.notice("Read the benchmark again at the end: a moved tripod spoils every level since the last good reading.");
  const columns = [
    { kind: "text" },
    { kind: "length", format: LEVEL },
    { kind: "length", format: LEVEL },
    { kind: "text" },
    { kind: "text" },
    { kind: "length", format: LEVEL },
    { kind: "length", format: LEVEL },
    { kind: "text" },
  ] as const;
  const table = (name: string, points: string, readings: string, count: number): Ref =>
    s.spill({
      name,
      formula: `=RILL.SETOUT(BenchmarkLevel,Backsight,${points},${readings},GradeTolerance,BacksightMoved,Units)`,
      rows: count,
      lines: 2,
      headerLines: 3,
      header: "function",
      columns,
      needs: ["BenchmarkLevel", "Backsight", `INDEX(${points},0,2)`],
    }).body;
  const body = table("SetoutTable", "SetoutPoints", "SetoutReadings", rows);
  // What the crew's page lists: all but the readings taken.
  s.define("SetoutShort", body.top, body.left, body.bottom, body.left + 4);
  s.section("Dug bed along the line, set out");
  table("StakeTable", "StakePoints", "StakeReadings", staked);
}
