import { hideBlankRows } from "../../layout/conditions";
import { formatOf } from "../../layout/formats";
import { validationFor } from "../../layout/inputRule";
import { head } from "../../layout/tableHead";
import type { Job, SheetLayout } from "../../layout";

const MOST_DROPS = 12;
const FREE_POINTS = 3;
/** Number format of levels and readings. */
export const LEVEL = "#,##0.000";

/** The points to set out, with a place for the readings taken; gives their number. */
export function points(s: SheetLayout, job: Job): number {
  s.section("Points to set out");
  s.input({
    name: "Backsight",
    label: "Backsight on the bench mark",
    kind: "length",
    format: "#,##0.000",
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
  for (let drop = 1; drop <= MOST_DROPS; drop++) lipRow(s, drop);
  hideBlankRows(s, { top: s.row - MOST_DROPS, left: 1, bottom: s.row - 1, right: 4 }, (column) => column === 3);
  for (let free = 0; free < FREE_POINTS; free++) freeRow(s);
  const bottom = s.row - 1;
  s.define("SetoutOwn", bottom - FREE_POINTS + 1, 1, bottom, 2);
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
