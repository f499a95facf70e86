import { BORE_TYPE } from "../../../calc/pipe/bore";
import { findFitting, fittingK } from "../../../calc/pipe/fittings";
import { FRICTION_METHODS } from "../../../calc/pipe/route";
import { PIPE_TYPES, USUAL_PIPE } from "../../../calc/tables/pipes";
import { columnLetters } from "../../layout/address";
import type { Job, SheetLayout, TableRef } from "../../layout";
import type { CellValue } from "../../model";
import { numbered } from "../water/parts";
import { DEMO_FITTINGS, DEMO_ROUTE } from "./demo";

/** Pipes of the route the sheet has room for, and of the riser each of several pumps has for itself. */
export const ROUTE_ROWS = 4;
export const RISER_ROWS = 1;
const PIPE_ROWS = ROUTE_ROWS + RISER_ROWS;
/** The sheet column of the first fitting, right of the pipe and its K. */
const FIRST_FITTING = 6;
/** Rows TDHTABLE may give: the lift, friction and fittings of each pipe, the outlet and the total. */
const PARTS_ROWS = 2 * PIPE_ROWS + 3;

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

const PIPE_LABELS = [...numbered("Pipe", ROUTE_ROWS), "Riser of each pump"];

/** What the head of the route cannot be worked out without. */
export const ROUTE_NEEDS = ["DesignFlow", "StaticLift", "RouteSizes", "RouteLengths"] as const;

/** The pipes in series, and the head they take at the wanted flow. */
export function route(s: SheetLayout, job: Job): void {
  s.section("Route");
  s.result({
    name: "StaticLift",
    label: "Lift, from water to water",
    formula: `=TopLipLevel+MAX(INDEX(LipSplit,0,3))/${job.per("size", "length")}-RunningLevel`,
    kind: "head",
    needs: ["TopLipLevel", "INDEX(LipSplit,0,3)", "RunningLevel"],
    note: "From the level while the pump runs, not from the basin's rim, to the sheet over the top lip. More where the pipe ends above it.",
  });
  s.input({
    name: "FrictionMethod",
    label: "Friction method",
    kind: "text",
    choices: FRICTION_METHODS,
    message: {
      US: "Hazen-Williams is the trade's usual one; Darcy-Weisbach is the sounder one for small pipe and slow flow.",
      SI: "Darcy-Weisbach (with Colebrook) is the usual and sounder one; Hazen-Williams is common in the United States.",
    },
    note: {
      US: "For water at 59 °F; near freezing friction is some 10% more.",
      SI: "For water at 15 °C; near freezing friction is some 10% more.",
    },
  });
  s.note(
    "Pipes in the order the water takes, from the pump to the outlet, and how many fittings are on each. One row is enough where the size " +
      "stays the same. Do not count the outlet: its velocity head is added once. Reducers and glue go among your own lines of Takeoff. " +
      "Riser: with several pumps, the pipe each has for itself up to where they join; it carries that pump's share of the flow.",
  );
  pipes(s, job);
  s.result({
    name: "PipeTotalLength",
    label: "Pipe in all",
    source: "by definition: each pump has a riser of its own",
    formula: "=SUM(RouteLengths)+N(PumpCount)*SUM(RiserLengths)",
    kind: "length",
    needs: ["RouteLengths"],
  });

  const parts = s.spill({
    name: "TdhParts",
    header: "function",
    rows: PARTS_ROWS,
    needs: ROUTE_NEEDS,
    formula: "=RILL.TDHTABLE(DesignFlow,StaticLift,RouteTable,FrictionMethod,,RiserTable,PumpCount,Units)",
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

/** One row a pipe: what it is, and the usual fittings on it, whose K are added up beside it. */
function pipes(s: SheetLayout, job: Job): void {
  const kRow = s.row + PIPE_ROWS + 1;
  const sizedIn = job.pick({ US: "in", SI: "mm" });
  const last = columnLetters(FIRST_FITTING + FITTING_COLUMNS.length - 1);
  const table = s.table({
    rows: PIPE_ROWS,
    required: true,
    columns: [
      { key: "pipe", title: "Pipe", kind: "text", fixed: PIPE_LABELS },
      {
        key: "size",
        title: "Size",
        kind: "size",
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
        input: { min: 0, max: job.pick({ US: 2000, SI: 600 }), message: "Length of this pipe." },
      },
      {
        key: "type",
        title: "Pipe type",
        kind: "text",
        input: {
          choices: [...PIPE_TYPES.filter((type) => type.sizedIn === sizedIn).map(({ name }) => name), BORE_TYPE],
          message: `Blank means ${job.pick(USUAL_PIPE)}.`,
        },
      },
      {
        key: "k",
        title: "Sum of K",
        source: "by definition: pieces times their K, EPANET 2.2 Manual, Table 3.3, and Crane",
        kind: "number",
        format: "0.00",
        formula: `=IF(COUNT([size])=0,"",SUMPRODUCT($${columnLetters(FIRST_FITTING)}$${kRow}:$${last}$${kRow},[f1]:[f${FITTING_COLUMNS.length}])+SUM([other]))`,
        input: { min: 0, max: 1000, message: "Comes from the fittings beside it; type over it if you know better." },
      },
      ...FITTING_COLUMNS.map(([title], index) => ({
        key: `f${index + 1}`,
        title,
        kind: "count" as const,
        // None, until somebody types how many; emptied by hand, nobody knows.
        formula: '=IF([size]="","",0)',
        input: { min: 0, max: 200, message: `How many: ${title}.` },
      })),
      {
        key: "other",
        title: "Other K",
        kind: "number" as const,
        format: "0.00",
        input: { min: 0, max: 1000, message: "K of anything else on this pipe, added up." },
      },
    ],
    demo: { US: demoRows("US"), SI: demoRows("SI") },
  });
  namePipes(s, table);
  s.put(s.row, 1, { value: "K of one fitting", style: "label" });
  s.put(s.row, 2, {
    value: "EPANET 2.2 Manual, Table 3.3; Crane",
    style: "remark",
    across: FIRST_FITTING - 2,
  });
  FITTING_COLUMNS.forEach(([, name], index) => {
    s.put(s.row, FIRST_FITTING + index, {
      value: Number(fittingK(findFitting(name), USUAL_BORE).toFixed(2)),
      style: "result",
      look: { format: "0.00" },
    });
  });
  s.row++;
}

/** Names of the shared pipes and of the riser's, which lie below them; and of the columns over both. */
function namePipes(s: SheetLayout, table: TableRef): void {
  const [sizes, sums] = [table.column("size"), table.column("k")];
  const shared = { top: sizes.top, bottom: sizes.top + ROUTE_ROWS - 1 };
  const riser = { top: shared.bottom + 1, bottom: sizes.bottom };
  const column = (name: string, { top, bottom }: { top: number; bottom: number }, key: string): void => {
    const { left } = table.column(key);
    s.define(name, top, left, bottom, left);
  };
  s.define("RouteTable", shared.top, sizes.left, shared.bottom, sums.left);
  s.define("RiserTable", riser.top, sizes.left, riser.bottom, sums.left);
  for (const [prefix, rows] of [
    ["Route", shared],
    ["Riser", riser],
  ] as const) {
    column(`${prefix}Sizes`, rows, "size");
    column(`${prefix}Lengths`, rows, "length");
  }
  for (const [prefix, rows] of [
    ["Fittings", shared],
    ["RiserFittings", riser],
  ] as const) {
    FITTING_COLUMNS.forEach((_, index) => column(`${prefix}${index + 1}`, rows, `f${index + 1}`));
    column(`${prefix}OtherK`, rows, "other");
  }
  const all = { top: shared.top, bottom: riser.bottom };
  column("PipeSizes", all, "size");
  column("PipeTypes", all, "type");
  column("PipeLengthsEach", all, "length");
  FITTING_COLUMNS.forEach((_, index) => column(`PipeFittings${index + 1}`, all, `f${index + 1}`));
}

/** Size, length, type, the sum of K that the formula gives, and the fittings. */
function demoRows(system: "US" | "SI"): CellValue[][] {
  return DEMO_ROUTE[system].map((pipe, index) => [...pipe, "", ...(DEMO_FITTINGS[index] ?? [])]);
}
