/**
 * How to write a sheet
 * ====================
 * One file, `src/workbook/sheets/<name>.ts`, and one line in `src/workbook/sheets/index.ts`:
 *
 *   export const pump = defineSheet({
 *     name: "Pump",                       // the tab; letters only
 *     order: 4,                           // place among the tabs
 *     build(s, job) {
 *       s.title("Pump", "Lay out the pipe, then pick a pump.");
 *       s.section("Pipe");
 *       s.input({ name: "RunHours", label: "Hours a day", kind: "hours", usual: 24, min: 0, max: 24, message: "Hours the pump runs a day." });
 *       const route = s.table({
 *         name: "RouteTable", rows: 4, required: true,
 *         columns: [
 *           { key: "size", title: "Size", kind: "size", input: { min: 0.25, max: 24, message: "Nominal size as sold." } },
 *           { key: "length", title: "Length", kind: "length", input: { min: 0, max: 1000, message: "Pipe length." } },
 *         ],
 *         demo: { US: [[2, 38]], SI: [[63, 12]] },           // input columns in order
 *       });
 *       s.result({ name: "DesignHead", label: "Head", kind: "head", strong: true,
 *         formula: `=RILL.TDH(DesignFlow,StaticLift,${route.cell("size", 1)},…,Units)`, needs: ["DesignFlow", "StaticLift"] });
 *       const parts = s.spill({ name: "TdhParts", header: "function", rows: 10, needs: ["DesignFlow"],
 *         formula: "=RILL.TDHTABLE(DesignFlow,StaticLift,RouteTable,,Units)",
 *         columns: [{ kind: "text" }, { kind: "head" }, { kind: "share" }, { kind: "speed" }, { kind: "text" }] });
 *       s.check({ label: "Water speed in the pipe", value: "=PipeSpeed", sign: "at most", limit: job.pick({ US: 5, SI: 1.5 }),
 *         cure: "Choose a wider pipe.", fix: "RouteTable", kind: "speed", needs: ["PipeSpeed"] });
 *       s.takeoff({ code: "PIPE", description: "Pressure pipe", unit: "ft", quantity: "=PipeTotalLength", category: "Pipe" });
 *       s.rate({ code: "PIPE", description: "Pressure pipe, 2 in", unit: "ft", category: "Pipe", supplier: "Yard (demo)", price: { US: 3.1, SI: 5.4 } });
 *     },
 *   });
 *
 * To see it calculated: `npx tsx src/cli/sheet.ts Pump US demo`. For all files: `npm run templates`.
 *
 * Rules
 * - Formulas are written as a user types them, beginning with "=" or not; other sheets are reached by defined names.
 *   A reference (`s.input(…)`, `table.column("size")`) inside a template literal reads as formula text.
 * - Every value says its `kind` (layout/formats.ts): a measure, or money, share, count, number, factor, hours, text, date.
 *   The kind gives the unit beside it and the number format, in either system. `unit` overrides the unit text.
 *   `Both<T>` is one value, or `{ US, SI }`.
 * - `demo` is in the demo only; `usual` in demo and blank alike.
 * - In the blank workbook nothing may show an error: list in `needs` the NUMBER cells (names) a formula cannot do without;
 *   it then stays "" until they are filled, and so does whatever needs it in turn. Checks say "to fill".
 * - Inputs need `min` and `max` (or `choices`, or kind "text"/"date") and a `message`. Inputs not `optional` are counted by
 *   the sheet's own check of blank inputs.
 * - A RILL function in a cell is one of about 60, and no more than 4 in a chain (checks 5). Prefer `s.spill` of a table function, then read
 *   its cells: `parts.cell(3, 2)`, or `INDEX(TdhParts,3,2)`.
 * - A list the user fills (prices, tickets, orders) ends its sheet and is `open: { rows }`: names and rules reach that far, and
 *   blank rows have no cells in the file, so that they do not print. Call `s.checksHere()` above it.
 * - Text that a formula gives: kind "text" in a result or column.
 * - A column whose rows no input and no cell above reads again is `whole: true`: one formula fills it. Rows that differ have a
 *   list of formulas.
 * - Plain cells take no array formula: use SUMPRODUCT, SUMIFS, INDEX/MATCH, or `s.spill`.
 * - Free pages (Quote, Crew): `s.widths([...])`, then `s.put(row, column, { value | formula, style, kind, across, link, name })`,
 *   `s.textAcross(row, column, across, text, style)`, and move `s.row` yourself. Styles: layout/style.ts.
 * - A sheet that lists what others contributed sets `turn: 1` (Takeoff, Rates) or 2 (Start) and reads
 *   `job.takeoffLines`, `job.rateLines`, `job.checks`.
 */
export { Ref } from "./address";
export { defineSheet, type SheetDefinition } from "./defineSheet";
export {
  CATEGORIES,
  Job,
  type AskSpec,
  type Both,
  type Category,
  type CheckSpec,
  type PlacedCheck,
  type PlacedTakeoffLine,
  type RateLine,
  type TakeoffLine,
} from "./job";
export type { ChartSpec } from "./chartSpec";
export { markVerdicts } from "./checks";
export { CHECK_COLUMN, limitFormat, VERDICT } from "./verdict";
export type { Kind } from "./formats";
export { SheetLayout } from "./sheetLayout";
export type { TableRef } from "./tableRef";
export type { SpillRef } from "./spills";
