import { Ref, type Job, type SheetLayout } from "../../layout";
import { BEDS } from "./beds";
import { DROPS } from "./drops";

const CHART_ROWS = 17;
/** The upstream end of the box, the top lip, and two more for each drop. */
const POINTS = 2 + 2 * DROPS;

/** Leaves room for the drawing, which is made when the rest is laid out; gives its first row. */
export function roomForSection(s: SheetLayout): number {
  s.section("Section of the feature");
  const top = s.row;
  s.skip(CHART_ROWS);
  return top;
}

/** The bed whose water pulls hardest at its stones: depth times slope. */
function worstBed(s: SheetLayout): void {
  s.section("Pull of the water on each bed");
  const pulls = s.table({
    rows: BEDS,
    columns: [
      { key: "bed", title: "Bed", kind: "count", fixed: Array.from({ length: BEDS }, (_, index) => index + 1) },
      {
        key: "pull",
        title: "Depth × slope",
        source: "by definition: the pull of water on its bed is its weight × depth × slope",
        kind: "number",
        whole: true,
        formula: "=IF(ISNUMBER(BedDepths)*ISNUMBER(BedSlopes),BedDepths*BedSlopes,0)",
      },
    ],
  });
  const pull = String(pulls.column("pull"));
  s.result({
    name: "WorstBed",
    label: "Bed that pulls hardest",
    kind: "count",
    formula: `=IF(MAX(${pull})=0,"",MATCH(MAX(${pull}),${pull},0))`,
  });
  s.skip();
}

/**
 * Draws the section of the feature: the stepped bed, the basin, and its full and running levels.
 * Behind the top lip the bed has two points for each drop; with fewer drops the last point repeats itself.
 *
 * Its points stand below what is printed.
 *
 * @param numbers the column of the drops' numbers, as formula text
 */
export function layOutSection(s: SheetLayout, job: Job, numbers: string, chartTop: number): void {
  const unit = job.pick({ US: "ft", SI: "m" });
  const box = job.pick({ US: 1, SI: 0.3 });
  s.notPrinted();
  worstBed(s);
  s.section("Points of the section");
  s.note(
    `Worked out from drops, treads and Basin. The spillway box is drawn ${box} ${unit} long, and the basin ` +
      "with upright walls.",
  );
  const pointsTop = s.row;
  /** Drops and treads passed at a point: two points for each, behind the one at the upstream end of the box. */
  const passed = (half: 0 | 1): string => `"<="&INT(([point]-1+${half})/2)`;
  const bed = s.table({
    rows: POINTS,
    columns: [
      {
        key: "point",
        title: "Point of the bed",
        kind: "count",
        fixed: Array.from({ length: POINTS }, (_, index) => index),
      },
      {
        key: "x",
        title: "Distance",
        source: "by definition; the box is drawn 1 ft (0.3 m) long",
        kind: "length",
        whole: true,
        formula: `=IF([point]=0,0,${box}+SUMIF(${numbers},${passed(0)},Treads))`,
      },
      {
        key: "y",
        title: "Level",
        kind: "length",
        whole: true,
        formula: `=IF((COUNT(TopLipLevel)=0)*([point]>=0),0,TopLipLevel-SUMIF(${numbers},${passed(1)},Drops))`,
      },
    ],
  });
  s.row = pointsTop;
  const basin = s.table({
    at: 5,
    rows: 8,
    columns: [
      {
        key: "point",
        title: "Point of the basin",
        kind: "text",
        across: 2,
        fixed: [
          "rim",
          "floor",
          "floor, far side",
          "rim, far side",
          "full",
          "full, far side",
          "running",
          "running, far side",
        ],
      },
      {
        key: "x",
        title: "Distance",
        source: "by definition; the box is drawn 1 ft (0.3 m) long",
        kind: "length",
        formula: [false, false, true, true, false, true, false, true].map(
          (far) => `=IF(MIN(COUNT(Run),COUNT(BasinLength))=0,0,${box}+Run${far ? "+BasinLength" : ""})`,
        ),
      },
      {
        key: "y",
        title: "Level",
        kind: "length",
        formula: ["Grade", "Floor", "Floor", "Grade", "Full", "Full", "Running", "Running"].map(
          (which) =>
            `=IF(MIN(COUNT(FullLevel),COUNT(FloorLevel),COUNT(RunningLevel),COUNT(GradeLevel))=0,0,${which}Level)`,
        ),
      },
    ],
  });
  const rows = (key: string, from: number, to: number): Ref => {
    const { sheet, top, left } = basin.column(key);
    return new Ref(sheet, top + from - 1, left, top + to - 1, left);
  };

  s.row = chartTop;
  s.chart({
    title: "Section of the feature",
    description:
      "Levels over distance: the stepped bed from the top lip down to the basin, the basin's walls and floor, its full level, and the " +
      "lower level while the pump runs.",
    xTitle: `Distance along the feature from its upstream end (${unit})`,
    yTitle: `Level (${unit})`,
    rows: CHART_ROWS,
    series: [
      { title: "Bed", x: bed.column("x"), y: bed.column("y") },
      { title: "Basin", x: rows("x", 1, 4), y: rows("y", 1, 4) },
      { title: "Full level", x: rows("x", 5, 6), y: rows("y", 5, 6) },
      { title: "Running level", x: rows("x", 7, 8), y: rows("y", 7, 8), dashed: true },
    ],
  });
}
