import { hideBlankRows, rowOf, whenFilled } from "../../layout/conditions";
import { formatOf } from "../../layout/formats";
import { validationFor } from "../../layout/inputRule";
import { head } from "../../layout/tableHead";
import { Ref, type Job, type SheetLayout } from "../../layout";
import type { Origin } from "../../model";
import { fillDown } from "../money/cells";

const MOST_DROPS = 12;
const FREE_POINTS = 3;
/** Number format of levels and readings. */
export const LEVEL = "#,##0.000";

/** What the demo's crew read on its points, from the pit's bottom to the berm: to a hundredth of a foot, or a millimeter. */
const DEMO_READINGS = {
  US: [7.77, 7.6, 5.55, 5.35, 5.1, 3.52],
  SI: [2.455, 2.405, 1.708, 1.655, 1.58, 0.98],
};

/** The points to set out, with a place for the readings taken; gives their number. */
export function points(s: SheetLayout, job: Job): number {
  s.section("Points to set out");
  s.input({
    name: "Backsight",
    label: "Backsight on the benchmark",
    kind: "length",
    format: "#,##0.000",
    min: 0.01,
    max: { US: 25, SI: 7.6 },
    message: "Rod reading on the benchmark, from where the instrument stands on the day.",
  });
  s.input({
    name: "BacksightMoved",
    label: "Backsight after moving it",
    kind: "length",
    format: "#,##0.000",
    min: 0.01,
    max: { US: 25, SI: 7.6 },
    optional: true,
    message: "Rod reading on the benchmark after the instrument was moved or set up anew; blank while it stands.",
    note: "All that a move takes: readings taken before it stay good, the rod readings below follow.",
  });
  s.result({
    name: "InstrumentLevel",
    label: "Line of sight",
    formula: "=BenchmarkLevel+IF(COUNT(BacksightMoved)=1,BacksightMoved,Backsight)",
    kind: "length",
    format: "#,##0.000",
    needs: ["BenchmarkLevel", "Backsight"],
  });
  s.input({
    name: "GradeTolerance",
    label: "On grade within",
    kind: "size",
    min: { US: 0.05, SI: 1 },
    max: { US: 6, SI: 150 },
    message: "As near as this counts as on grade.",
  });
  s.input({
    name: "BoxHeight",
    label: "Spillway box, lip above its foot",
    kind: "size",
    min: 0,
    max: { US: 60, SI: 1500 },
    message: "How far the lip of the spillway box lies above the berm it stands on.",
  });
  s.result({
    name: "ReadingsTaken",
    label: "Readings taken so far",
    kind: "count",
    formula: '=IF(COUNT(SetoutReadings,StakeReadings)=0,"",COUNT(SetoutReadings,StakeReadings))',
  });
  s.skip();
  const small = job.per("size", "length");
  const rows: readonly (readonly [string, string, readonly string[]])[] = [
    ["Pit bottom", "=GradeLevel-PitDepth", ["GradeLevel", "PitDepth"]],
    ["Basin floor", "=FloorLevel", ["FloorLevel"]],
    ["Running level, top-up mark", "=RunningLevel", ["RunningLevel"]],
    ["Basin rim and overflow", "=FullLevel", ["FullLevel"]],
    ["Finished grade at the basin", "=GradeLevel", ["GradeLevel"]],
    ["Berm top, foot of the box", `=TopLipLevel-BoxHeight/${small}`, ["TopLipLevel", "BoxHeight"]],
  ];
  const top = s.row + 1;
  ["Point", "Level", "Reading taken", "After moving", "Fallen below it"].forEach((title, index) =>
    head(s, s.row, index + 1, { title, kind: index === 0 ? "text" : "length" }),
  );
  s.put(s.row, 7, { value: "With level", style: "head" });
  // Blank while a point still needs its level: nothing is said of all of them before.
  s.put(s.row + 1, 7, {
    formula: whenFilled('IF(COUNTIF(INDEX(SetoutTable,0,8),"needs*")>0,"",COUNT(INDEX(SetoutTable,0,2)))', [
      "SetoutTable",
    ]),
    style: "result",
    kind: "count",
    look: { format: "0" },
    name: "PointsTold",
  });
  s.row++;
  for (const [name, level, needs] of rows)
    row(s, { value: name }, `IF(MIN(${needs.map((n) => `COUNT(${n})`).join(",")})=0,"",${level.slice(1)})`);
  for (let drop = 1; drop <= MOST_DROPS; drop++) lipRow(s, drop);
  const drops = `SEQUENCE(${MOST_DROPS})`;
  fillDown(
    s,
    new Ref(s.name, s.row - MOST_DROPS, 1, s.row - 1, 1),
    `IF(ISNUMBER(Drops),"Lip "&${drops}&IF(${drops}=1,", spillway box",""),"")`,
  );
  hideBlankRows(s, { top: s.row - MOST_DROPS, left: 1, bottom: s.row - 1, right: 5 }, isReading);
  for (let free = 0; free < FREE_POINTS; free++) freeRow(s);
  const bottom = s.row - 1;
  const read = job.filled === "demo" ? job.pick(DEMO_READINGS) : [];
  read.forEach((value, index) => reading(s, top + index, value));
  s.define("SetoutOwn", bottom - FREE_POINTS + 1, 1, bottom, 2);
  s.define("SetoutPoints", top, 1, bottom, 2);
  s.define("SetoutReadings", top, 3, bottom, 4);
  readingRules(s, top, bottom);
  return bottom - top + 1;
}

function row(s: SheetLayout, name: { value?: string }, level: string, fallen?: string): void {
  s.put(s.row, 1, { ...name, style: "resultText" });
  s.put(s.row, 2, { formula: `=${level}`, style: "result", look: { format: LEVEL } });
  reading(s);
  s.put(s.row, 5, { ...(fallen ? { formula: `=${fallen}` } : {}), style: "result", look: { format: LEVEL } });
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
  s.put(s.row, 5, { style: "result" });
  s.row++;
}

/** A lip, as far as there are drops: the top lip less all that has fallen above it. Unused drops may lie between. */
function lipRow(s: SheetLayout, drop: number): void {
  const height = rowOf("Drops", drop);
  const used = `ISNUMBER(${height})`;
  // From the row above the first lip, in which nothing has fallen.
  const above = `MAX(0,$E$${s.row - drop}:E${s.row - 1})`;
  row(
    s,
    {},
    `IF(AND(${used},COUNT(TopLipLevel)=1),TopLipLevel-E${s.row}+${height},"")`,
    `IF(${used},${above}+${height},"")`,
  );
}

/** Whether a column of points holds readings. */
function isReading(column: number): boolean {
  return column === 3 || column === 4;
}

function reading(s: SheetLayout, row = s.row, value?: number): void {
  const look = { format: LEVEL, align: "right" } as const;
  s.put(row, 3, { style: "input", look, ...(value === undefined ? {} : { value }) });
  s.put(row, 4, { style: "input", look });
}

/** What may be typed as a reading, before the instrument was moved and after. */
function readingRules(s: SheetLayout, top: number, bottom: number): void {
  const rule = (column: number, label: string, message: string): void => {
    s.sheet.validations.push(
      validationFor(
        s,
        { top, left: column, bottom, right: column },
        { label, kind: "length", min: 0.01, max: { US: 25, SI: 7.6 }, message },
      ),
    );
  };
  rule(3, "Reading taken", "What the rod shows on this point.");
  rule(4, "Reading after moving", "What the rod shows on this point since the instrument was moved.");
}

/** The dug bed to set out along the line, by station; as many rows as Ground has beds, and the edge of the basin. */
export function stakes(s: SheetLayout): number {
  const rows = MOST_DROPS + 1;
  s.section("Dug bed along the line");
  s.note(
    "Stations are pulled down the line from the top lip, offsets square to it, to either side: the bed is dug level from one to the other.",
  );
  const top = s.row + 1;
  ["Point", "Level", "Reading taken", "After moving", "Station", "Offset, either side"].forEach((title, index) =>
    head(s, s.row, index + 1, { title, kind: index === 0 ? "text" : "length" }),
  );
  s.row++;
  for (let row = 1; row <= rows; row++) {
    s.put(s.row, 1, { style: "resultText" });
    s.put(s.row, 2, { style: "result", look: { format: LEVEL } });
    reading(s);
    for (const column of [5, 6]) s.put(s.row, column, { style: "result", look: { format: "#,##0.00" } });
    s.row++;
  }
  const bottom = s.row - 1;
  // All but the first place, the back of the berm's crest.
  const surface = `SEQUENCE(${rows},1,2)`;
  const station = (column: number): string => `INDEX(SurfaceStations,${surface},${column})`;
  const fillColumn = (column: number, formula: string, origin?: Origin): void =>
    fillDown(s, new Ref(s.name, top, column, bottom, column), `IF(ISNUMBER(${station(2)}),${formula},"")`, origin);
  fillColumn(1, `INDEX(SurfacePlaces,${surface})`);
  fillColumn(2, station(2));
  fillColumn(5, station(1));
  fillColumn(6, `${station(3)}/2`, { label: "Offset, either side", source: "by definition: half the width" });
  hideBlankRows(s, { top, left: 1, bottom, right: 6 }, isReading);
  s.define("StakePoints", top, 1, bottom, 2);
  s.define("StakeReadings", top, 3, bottom, 4);
  s.define("StakeStations", top, 5, bottom, 6);
  readingRules(s, top, bottom);
  return rows;
}
