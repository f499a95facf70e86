import type { SheetLayout } from "../../layout";
import { chosenCurve } from "./chosen";
import { PUMP_ROWS } from "./demo";
import { RISER_ROWS, ROUTE_NEEDS, ROUTE_ROWS } from "./route";

const CURVE_POINTS = 15;
/** The column at which the chart begins, beside the results of the chosen pump. */
export const CHART_COLUMN = 8;

/** Lengths of all pipes as they lie in the ground: a riser once for each pump. */
function pipesInAll(s: SheetLayout): void {
  s.section("Length of each pipe in all");
  const [pipes, risers] = [
    Array.from({ length: ROUTE_ROWS }, () => 1),
    Array.from({ length: RISER_ROWS }, () => "=N(PumpCount)"),
  ];
  s.table({
    rows: ROUTE_ROWS + RISER_ROWS,
    columns: [
      {
        key: "length",
        title: "Length",
        source: "by definition: each pump has a riser of its own",
        kind: "length",
        name: "PipeLengths",
        whole: true,
        formula: '=IF(ISNUMBER(PipeLengthsEach),PipeLengthsEach*[alike],"")',
      },
      {
        key: "alike",
        title: "Pipes alike",
        kind: "count",
        name: "PipesAlike",
        fixed: pipes,
        formula: [...pipes.map(() => ""), ...risers],
      },
    ],
  });
  s.skip();
}

/** The tables of the functions that chart and results are read from, below what is printed; and the chart, beside the results. */
export function behind(s: SheetLayout, chartTop: number, chartRows: number): void {
  s.notPrinted();
  s.section("Tables of the functions, read by the cells above");
  chosenCurve(s);
  s.skip();
  const duty = s.spill({
    name: "DutyPoint",
    header: "function",
    rows: 6,
    // The last two rows are sentences in a narrow column.
    lines: [1, 1, 1, 1, 2, 4],
    needs: [...ROUTE_NEEDS, "PumpRow"],
    formula:
      "=RILL.DUTY(ChosenCurve,StaticLift,RouteTable,PumpCount,PumpSpeed,DesignFlow,FrictionMethod,,RiserTable,Units)",
    columns: [{ kind: "text" }, { kind: "number", format: "#,##0.00", wrap: true }, { kind: "text" }],
  });
  s.skip();
  s.spill({
    name: "PumpRanking",
    header: "function",
    rows: PUMP_ROWS,
    lines: 3,
    headerLines: 3,
    needs: [...ROUTE_NEEDS, "PumpShutOffs"],
    formula:
      "=RILL.PUMPRANK(PumpTable,DesignFlow,StaticLift,RouteTable,RunHours,RunDays,Tariff,OwnYears,FrictionMethod,,RiserTable,,Currency,Units)",
    columns: [
      { kind: "count" },
      { kind: "text" },
      { kind: "count" },
      { kind: "flow" },
      { kind: "head" },
      { kind: "money" },
      { kind: "money" },
      { kind: "text", wrap: false },
    ],
  });
  pipesInAll(s);
  s.section("Points of the two curves");
  const curves = s.spill({
    header: "function",
    rows: CURVE_POINTS,
    needs: [...ROUTE_NEEDS, "PumpRow"],
    formula: `=RILL.CURVETABLE(ChosenCurve,StaticLift,RouteTable,PumpCount,PumpSpeed,${CURVE_POINTS},FrictionMethod,,RiserTable,Units)`,
    columns: [{ kind: "flow" }, { kind: "head" }, { kind: "head" }],
  });

  const flows = curves.body.column(1);
  const { system } = s.job;
  s.put(chartTop, CHART_COLUMN, {
    value: "Pump curve and system curve",
    style: "section",
    across: s.lastColumn - CHART_COLUMN + 1,
  });
  s.row = chartTop + 1;
  s.chart({
    title: "Where pump and pipe meet",
    description:
      "Head of the chosen pump falling and head of the route rising with flow; they cross at the flow delivered.",
    xTitle: system === "US" ? "Flow (gph)" : "Flow (L/h)",
    yTitle: system === "US" ? "Head (ft)" : "Head (m)",
    at: CHART_COLUMN,
    rows: chartRows - 1,
    series: [
      { title: "Pump", x: flows, y: curves.body.column(2), line: true },
      { title: "System", x: flows, y: curves.body.column(3), line: true, dashed: true },
      { title: "Flow delivered", x: duty.cell(1, 2), y: duty.cell(2, 2), markers: true, line: false },
    ],
  });
}
