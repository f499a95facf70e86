import { BORE_TYPE } from "../../../calc/pipe/bore";
import { findFitting, fittingK } from "../../../calc/pipe/fittings";
import { FRICTION_METHODS } from "../../../calc/pipe/route";
import { PIPE_TYPES } from "../../../calc/tables/pipes";
import { columnLetters } from "../../layout/address";
import type { Job, SheetLayout } from "../../layout";
import { DEMO_FITTINGS, DEMO_ROUTE } from "./demo";

/** Pipes of the route the sheet has room for. */
export const ROUTE_ROWS = 4;
/** Rows TDHTABLE may give: the lift, friction and fittings of each pipe, the outlet and the total. */
const PARTS_ROWS = 2 * ROUTE_ROWS + 3;

/** The usual fittings: the column's title, and the name that gives its K. */
export const FITTING_COLUMNS = [
  ["90 elbow", "90 elbow"],
  ["90 sweep", "90 sweep"],
  ["45 elbow", "45 elbow"],
  ["Tee, straight", "tee, straight through"],
  ["Tee, branch", "tee, through branch"],
  ["Ball valve", "ball valve"],
  ["Check valve", "swing check valve"],
  ["Union", "union or coupling"],
  ["Intake", "pipe entrance"],
] as const;

/** Bore the K of a ball valve is taken at, m: from 1 1/2 to 4 in it changes by 0.01. */
const USUAL_BORE = 0.0525;

/** What the head of the route cannot be worked out without. */
export const ROUTE_NEEDS = ["DesignFlow", "StaticLift", "RouteSizes", "RouteLengths"] as const;

/** The pipes in series, and the head they take at the wanted flow. */
export function route(s: SheetLayout, job: Job): void {
  s.section("Route");
  s.result({
    name: "StaticLift",
    label: "Lift, running water level to the top lip",
    formula: "=TopLipLevel-RunningLevel",
    kind: "head",
    needs: ["TopLipLevel", "RunningLevel"],
    note: "From the level while the pump runs (full level less the drain-back), not from the rim of the basin.",
  });
  s.input({
    name: "FrictionMethod",
    label: "Friction method",
    kind: "text",
    choices: FRICTION_METHODS,
    usual: "Hazen-Williams",
    message: "Hazen-Williams is the trade's usual one; Darcy-Weisbach is the sounder one for small pipe and slow flow.",
  });
  s.note(
    "Pipes in the order the water takes, from the pump to the outlet. One row is enough where the size stays the same.",
  );
  const head = s.row;
  s.put(head, 1, { value: "Pipe", style: "headText" });
  for (let row = 1; row <= ROUTE_ROWS; row++) s.put(head + row, 1, { value: `Pipe ${row}`, style: "label" });
  const sizedIn = job.pick({ US: "in", SI: "mm" });
  s.table({
    name: "RouteTable",
    at: 2,
    rows: ROUTE_ROWS,
    required: true,
    columns: [
      {
        key: "size",
        title: "Size",
        kind: "size",
        name: "RouteSizes",
        format: job.pick({ US: "General", SI: "0" }),
        input: {
          min: job.pick({ US: 0.5, SI: 12 }),
          max: job.pick({ US: 24, SI: 630 }),
          message: "Nominal size as sold; for the type Bore the inside diameter.",
        },
      },
      {
        key: "length",
        title: "Length",
        kind: "length",
        name: "RouteLengths",
        input: { min: 0, max: job.pick({ US: 2000, SI: 600 }), message: "Length of this pipe." },
      },
      {
        key: "type",
        title: "Pipe type",
        kind: "text",
        input: {
          choices: [...PIPE_TYPES.filter((type) => type.sizedIn === sizedIn).map(({ name }) => name), BORE_TYPE],
          message: `Blank means ${job.pick({ US: "Sch 40 PVC", SI: "PVC-U PN10" })}.`,
        },
      },
      {
        key: "k",
        title: "Sum of K",
        kind: "number",
        format: "0.00",
        formula: '=IF(COUNT([size])=0,"",INDEX(FittingSums,[#]))',
        input: { min: 0, max: 1000, message: "Comes from the fittings below; type over it if you know better." },
      },
    ],
    demo: { US: DEMO_ROUTE.US, SI: DEMO_ROUTE.SI },
  });
  s.result({
    name: "PipeTotalLength",
    label: "Pipe in all",
    formula: "=SUM(RouteLengths)",
    kind: "length",
    needs: ["RouteLengths"],
  });

  const parts = s.spill({
    name: "TdhParts",
    header: "function",
    rows: PARTS_ROWS,
    needs: ROUTE_NEEDS,
    formula: "=RILL.TDHTABLE(DesignFlow,StaticLift,RouteTable,FrictionMethod,Units)",
    columns: [{ kind: "text" }, { kind: "head" }, { kind: "share" }, { kind: "speed" }, { kind: "text", wrap: false }],
  });
  s.result({
    name: "DesignHead",
    label: "Total dynamic head at the wanted flow",
    formula: `=SUMIFS(${parts.body.column(2)},${parts.body.column(1)},"Total dynamic head")`,
    kind: "head",
    strong: true,
    needs: [parts.body.column(2).toString()],
  });
  s.result({
    name: "PipeSpeed",
    label: "Fastest water in the pipe",
    formula: `=MAX(${parts.body.column(4)})`,
    kind: "speed",
    needs: [parts.body.column(4).toString()],
  });
}

/** Counts of the usual fittings on each pipe, added up to the K of the route. */
export function fittingsHelper(s: SheetLayout): void {
  s.pageBreak();
  s.section("Fittings on each pipe");
  s.note(
    "How many of each. Do not count the outlet: its velocity head is added once, by the route. " +
      "K from the EPANET 2.2 User Manual, Table 3.3, and Crane; books differ by a third.",
  );
  const kRow = s.row + ROUTE_ROWS + 1;
  const last = FITTING_COLUMNS.length;
  s.table({
    rows: ROUTE_ROWS,
    columns: [
      {
        key: "pipe",
        title: "Pipe",
        kind: "text",
        fixed: Array.from({ length: ROUTE_ROWS }, (_, i) => `Pipe ${i + 1}`),
      },
      ...FITTING_COLUMNS.map(([title], index) => ({
        key: `f${index + 1}`,
        title,
        kind: "count" as const,
        name: `Fittings${index + 1}`,
        input: { min: 0, max: 200, message: `How many: ${title}.` },
      })),
      {
        key: "other",
        title: "Other K",
        kind: "number" as const,
        format: "0.00",
        input: { min: 0, max: 1000, message: "K of anything else on this pipe, added up." },
      },
      {
        key: "sum",
        title: "Sum of K",
        kind: "number" as const,
        format: "0.00",
        name: "FittingSums",
        formula: `=SUMPRODUCT($B$${kRow}:$${columnLetters(last + 1)}$${kRow},[f1]:[f${last}])+SUM([other])`,
      },
    ],
    demo: DEMO_FITTINGS,
  });
  s.put(s.row, 1, { value: "K of one", style: "label" });
  FITTING_COLUMNS.forEach(([, name], index) => {
    s.put(s.row, index + 2, {
      value: Number(fittingK(findFitting(name), USUAL_BORE).toFixed(2)),
      style: "result",
      look: { format: "0.00" },
    });
  });
  s.row++;
}
