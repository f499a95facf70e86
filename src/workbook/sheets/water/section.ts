import { Ref, type ChartSpec, type Job, type SheetLayout } from "../../layout";
import { BEDS } from "./beds";
import { drawnFrom } from "./drawn";
import { DROPS } from "./drops";

const CHART_ROWS = 17;
/** The upstream end of the box, the top lip, and two more for each drop. */
const POINTS = 2 + 2 * DROPS;

/** Leaves room for the drawing, which is made when the rest is laid out; gives its first row. */
export function roomForSection(s: SheetLayout): number {
  s.section("Section of the feature");
  const top = s.row;
  s.skip(1 + CHART_ROWS);
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

/** Points of the basin, and whether each lies on its far side. */
const POINTS_OF_BASIN: readonly (readonly [point: "rim" | "floor" | "full" | "running", far: 0 | 1])[] = [
  ["rim", 0],
  ["floor", 0],
  ["floor", 1],
  ["rim", 1],
  ["full", 0],
  ["full", 1],
  ["running", 0],
  ["running", 1],
];

/**
 * Lays out the points of the section and draws it: the stepped bed, the basin, and its full and running levels.
 * Behind the top lip the bed has two points for each drop; with fewer drops the last point repeats itself. What is not known
 * has its points in one place, so that no line shows.
 *
 * The points stand below what is printed.
 *
 * @param numbers the column of the drops' numbers, as formula text
 */
export function layOutSection(s: SheetLayout, job: Job, numbers: string, chartTop: number): void {
  const unit = job.pick({ US: "ft", SI: "m" });
  const box = job.pick({ US: 1, SI: 0.3 });
  s.notPrinted();
  worstBed(s);
  s.forCharts();
  const { run, grade, basinLength, basinDepth, topLip, drops, treads, rim } = drawnFrom(s, job, numbers);
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
        formula: `=IF((COUNT(${topLip})=0)+([point]=0),0,${box}+SUMIF(${numbers},${passed(0)},${treads}))`,
      },
      {
        key: "y",
        title: "Level",
        kind: "length",
        whole: true,
        formula: `=IF((COUNT(${topLip})=0)*([point]>=0),0,${topLip}-SUMIF(${numbers},${passed(1)},${drops}))`,
      },
    ],
  });
  const named = (name: string, x: Ref, y: Ref): void => void s.define(name, x.top, x.left, y.bottom, y.right);
  named("SectionBed", bed.column("x"), bed.column("y"));
  s.row = pointsTop;
  const unknown = `(COUNT(${run},${grade},${basinLength},${basinDepth})<4)*([far]>=0)`;
  const basin = s.table({
    at: 5,
    rows: POINTS_OF_BASIN.length,
    columns: [
      { key: "point", title: "Point of the basin", kind: "text", fixed: POINTS_OF_BASIN.map(([point]) => point) },
      { key: "far", title: "Far side", kind: "count", fixed: POINTS_OF_BASIN.map(([, far]) => far) },
      {
        key: "x",
        title: "Distance",
        source: "by definition; the box is drawn 1 ft (0.3 m) long",
        kind: "length",
        whole: true,
        formula: `=IF(${unknown},0,${box}+${run}+IF(([point]="running")*(COUNT(LevelDrop)=0),0,[far])*${basinLength})`,
      },
      {
        key: "y",
        title: "Level",
        kind: "length",
        whole: true,
        formula:
          `=IF(${unknown},0,${grade}-([point]<>"rim")*${rim}-([point]="floor")*${basinDepth}-` +
          `([point]="running")*IFERROR(N(LevelDrop),0))`,
      },
    ],
  });
  named("SectionBasin", basin.column("x"), basin.column("y"));
  const rows = (key: string, from: number, to: number): Ref => {
    const { sheet, top, left } = basin.column(key);
    return new Ref(sheet, top + from - 1, left, top + to - 1, left);
  };

  s.row = chartTop;
  s.note("What is still open is drawn as it is drafted from the answers on Start.");
  const spec = {
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
  } satisfies ChartSpec;
  s.chart(spec);
  job.charts.set("Section", spec);
}
