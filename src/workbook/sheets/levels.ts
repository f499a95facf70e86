import { defineSheet, type Job, type SheetLayout } from "../layout";
import { head } from "../layout/tables";
import { formatOf } from "../layout/formats";
import { validationFor } from "../layout/forms";

const MOST_DROPS = 12;
const FREE_POINTS = 3;

/** A layout of steps to choose from, and the rod readings and string measures the crew sets the feature out with. */
export const levels = defineSheet({
  name: "Levels",
  order: 9,
  build(s, job) {
    s.widths([27, 11, 12, 14, 16, 11, 11, 27]);
    s.title("Levels", "Try layouts of the drops, then set out every point by rod reading or from a string.");
    s.print({ titleRows: [1, 2] });
    steps(s);
    const rows = points(s, job);
    setting(s, rows);
    checks(s, job);
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
    usual: 0.35,
    min: 0,
    max: 1,
    message: "0 % makes all drops alike, 100 % makes them very uneven.",
  });
  s.input({
    name: "StepSeed",
    label: "Seed",
    kind: "count",
    usual: 7,
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

/** The points to set out, with a place for the readings taken; gives their number. */
function points(s: SheetLayout, job: Job): number {
  s.section("Points to set out");
  s.input({
    name: "Backsight",
    label: "Backsight on the bench mark",
    kind: "length",
    format: "#,##0.000",
    usual: { US: 4.5, SI: 1.4 },
    min: 0.01,
    max: { US: 25, SI: 7.6 },
    message: "Rod reading on the bench mark, from where the instrument stands on the day.",
  });
  s.result({
    name: "InstrumentLevel",
    label: "Line of sight",
    formula: "=BenchmarkLevel+Backsight",
    kind: "length",
    format: "#,##0.000",
    needs: ["BenchmarkLevel", "Backsight"],
  });
  s.input({
    name: "GradeTolerance",
    label: "On grade within",
    kind: "size",
    usual: { US: 0.25, SI: 6 },
    min: { US: 0.05, SI: 1 },
    max: { US: 6, SI: 150 },
    message: "As near as this counts as on grade.",
  });
  s.input({
    name: "BoxHeight",
    label: "Spillway box, lip above its foot",
    kind: "size",
    usual: { US: 14, SI: 350 },
    min: 0,
    max: { US: 60, SI: 1500 },
    message: "How far the lip of the spillway box lies above the berm it stands on.",
  });
  s.skip();
  const small = job.pick({ US: 12, SI: 1000 });
  const rows: readonly (readonly [string, string, readonly string[]])[] = [
    ["Pit bottom", "=GradeLevel-PitDepth", ["GradeLevel", "PitDepth"]],
    ["Basin floor", "=FloorLevel", ["FloorLevel"]],
    ["Running level, top-up mark", "=RunningLevel", ["RunningLevel"]],
    ["Basin rim and overflow", "=FullLevel", ["FullLevel"]],
    ["Finished grade at the basin", "=GradeLevel", ["GradeLevel"]],
    ["Berm top, foot of the box", `=TopLipLevel-BoxHeight/${small}`, ["TopLipLevel", "BoxHeight"]],
  ];
  const top = s.row + 1;
  ["Point", "Level", "Reading taken", "Fallen below it"].forEach((title, index) =>
    head(s, s.row, index + 1, { title, kind: index === 0 ? "text" : "length" }),
  );
  s.row++;
  for (const [name, level, needs] of rows)
    row(s, { value: name }, `IF(MIN(${needs.map((n) => `COUNT(${n})`).join(",")})=0,"",${level.slice(1)})`);
  for (let free = 0; free < FREE_POINTS; free++) freeRow(s);
  for (let drop = 1; drop <= MOST_DROPS; drop++) lipRow(s, drop);
  const bottom = s.row - 1;
  s.define("SetoutPoints", top, 1, bottom, 2);
  s.define("SetoutReadings", top, 3, bottom, 3);
  s.sheet.validations.push(
    validationFor(
      s,
      { top, left: 3, bottom, right: 3 },
      {
        label: "Reading taken",
        kind: "length",
        min: 0.01,
        max: { US: 25, SI: 7.6 },
        message: "What the rod shows on this point.",
      },
    ),
  );
  return bottom - top + 1;
}

const LEVEL = "#,##0.000";

function row(s: SheetLayout, name: { value: string } | { formula: string }, level: string, fallen?: string): void {
  s.put(s.row, 1, { ...name, style: "resultText" });
  s.put(s.row, 2, { formula: `=${level}`, style: "result", look: { format: LEVEL } });
  reading(s);
  s.put(s.row, 4, { ...(fallen ? { formula: `=${fallen}` } : {}), style: "result", look: { format: LEVEL } });
  s.row++;
}

/** A point of the user's own. */
function freeRow(s: SheetLayout): void {
  s.put(s.row, 1, { style: "input", look: { format: formatOf("text", s.job.system) } });
  s.put(s.row, 2, { style: "input", look: { format: LEVEL, align: "right" } });
  const { row: at } = s;
  s.sheet.validations.push(
    validationFor(
      s,
      { top: at, left: 1, bottom: at, right: 1 },
      {
        label: "Point of your own",
        kind: "text",
        message: "A point of your own, such as a path or a step.",
      },
    ),
    validationFor(
      s,
      { top: at, left: 2, bottom: at, right: 2 },
      {
        label: "Its level",
        kind: "length",
        min: -2000,
        max: 30000,
        message: "The level this point should have.",
      },
    ),
  );
  reading(s);
  s.put(s.row, 4, { style: "result" });
  s.row++;
}

/** A lip, as far as there are drops: the top lip less all that has fallen above it. Unused drops may lie between. */
function lipRow(s: SheetLayout, drop: number): void {
  const height = `INDEX(Drops,${drop})`;
  const used = `ISNUMBER(${height})`;
  const above = drop === 1 ? "0" : `MAX(0,D${s.row - drop + 1}:D${s.row - 1})`;
  row(
    s,
    { formula: `=IF(${used},"Lip ${drop}${drop === 1 ? ", spillway box" : ""}","")` },
    `IF(AND(${used},COUNT(TopLipLevel)=1),TopLipLevel-D${s.row}+${height},"")`,
    `IF(${used},${above}+${height},"")`,
  );
}

function reading(s: SheetLayout): void {
  s.put(s.row, 3, { style: "input", look: { format: LEVEL, align: "right" } });
}

function setting(s: SheetLayout, rows: number): void {
  s.pageBreak();
  s.section("Rod readings and string measures");
  s.note(
    "With an instrument: move the point until the rod shows its reading. Without one: pull a string level from the bench mark, with a water level or line level, and measure up or down from it.",
  );
  const { body } = s.spill({
    name: "SetoutTable",
    formula: "=RILL.SETOUT(BenchmarkLevel,Backsight,SetoutPoints,SetoutReadings,GradeTolerance,Units)",
    rows,
    header: "function",
    columns: [
      { kind: "text" },
      { kind: "length", format: LEVEL },
      { kind: "length", format: LEVEL },
      { kind: "text" },
      { kind: "text" },
      { kind: "length", format: LEVEL },
      { kind: "length", format: LEVEL },
      { kind: "text" },
    ],
    needs: ["BenchmarkLevel", "Backsight", "INDEX(SetoutPoints,0,2)"],
  });
  // What the crew's page lists: all but the readings taken.
  s.define("SetoutShort", body.top, body.left, body.bottom, body.left + 4);
  s.caution("Read the bench mark again at the end: a moved tripod spoils every level since the last good reading.");
}

function checks(s: SheetLayout, job: Job): void {
  const todo = (word: string): string => `COUNTIF(INDEX(SetoutTable,0,8),"${word}*")`;
  s.check({
    label: "Points above the line of sight",
    value: `=${todo("above")}`,
    limit: 0,
    ok: `${todo("above")}=0`,
    cure: "Set the instrument up higher and change the backsight, or set these points from the string.",
    fix: "Backsight",
    kind: "count",
    weight: "look",
    needs: ["BenchmarkLevel", "Backsight", "INDEX(SetoutPoints,0,2)"],
  });
  s.check({
    label: "Points off grade",
    value: `=${todo("cut")}+${todo("fill")}`,
    limit: 0,
    ok: `${todo("cut")}+${todo("fill")}=0`,
    cure: "Cut or fill as the last column says, then read again.",
    fix: "SetoutReadings",
    kind: "count",
    weight: "look",
    needs: ["SetoutReadings"],
  });
  const landing = "TopLipLevel-SUM(Drops)-GradeLevel";
  s.check({
    label: "The last drop lands at the basin's grade",
    value: `=${landing}`,
    limit: job.system === "US" ? "within 0.25 ft" : "within 0.08 m",
    ok: `ABS(${landing})<=${job.pick({ US: 0.25, SI: 0.08 })}`,
    cure: "Drops, top lip and finished grade do not agree: change the drops on Water, or the levels on Site.",
    fix: "Drops",
    kind: "length",
    needs: ["TopLipLevel", "Drops", "GradeLevel"],
  });
}
