import type { UnitSystem } from "../calc/quantity/unitSystem";
import { parseArea } from "../xlsx/address";
import { Job, SheetLayout, type SheetDefinition } from "./layout";
import { cellAddress } from "./layout/address";
import { settleBlanks, settleRows } from "./layout/conditions";
import { choiceLists } from "./layout/choiceLists";
import { FACTS_SHEET } from "./layout/factCells";
import type { WorkbookModel } from "./model";

/** Puts the addresses of rows and the questions for blanks into the formulas, now that every name has its area. */
function settle(layouts: readonly SheetLayout[], { spilled, places: laid }: Job): void {
  const ranges = new Set(
    layouts.flatMap(({ names }) =>
      names.flatMap(({ name, area }) => (area.bottom > area.top || area.right > area.left ? [name] : [])),
    ),
  );
  const headOf = (need: string): string | undefined => {
    const place = parseArea(need);
    const table = spilled.find(({ name, sheet, area }) =>
      place
        ? place.sheet === sheet &&
          place.top + 1 > area.top &&
          place.bottom < area.bottom &&
          place.left + 1 >= area.left &&
          place.right < area.right
        : name !== undefined && new RegExp(`(?<![\\w.])${name}(?![\\w.])`).test(need),
    );
    return table && `${table.sheet}!${cellAddress(table.area.top, table.area.left)}`;
  };
  const places = { isRange: (name: string) => ranges.has(name), headOf };
  for (const cells of layouts.flatMap(({ sheet }) => [...sheet.rows.values()])) {
    for (const cell of cells.values()) {
      if (cell.formula?.includes("‹")) cell.formula = settleRows(cell.formula, laid);
      if (cell.formula?.includes("«")) cell.formula = settleBlanks(cell.formula, places);
    }
  }
}

/** Rows in whose multiples a growing list is looked through for cells in error. */
const OPEN_ROWS = 500;

/** Lays out every sheet and puts them in the order of their tabs. */
export function assemble(
  definitions: readonly SheetDefinition[],
  system: UnitSystem,
  filled: "demo" | "blank",
): WorkbookModel {
  const job = new Job(
    system,
    filled,
    definitions.some(({ name }) => name === FACTS_SHEET),
  );
  const layouts = new Map<SheetDefinition, SheetLayout>();
  for (const turn of [0, 1, 2, 3]) {
    for (const definition of definitions.filter((one) => (one.turn ?? 0) === turn)) {
      const layout = new SheetLayout(definition.name, job);
      definition.build(layout, job);
      layout.finish();
      layouts.set(definition, layout);
      const { rows } = layout.sheet;
      const used = largest(rows.keys());
      const open = layout.sheet.openFrom !== undefined;
      job.pages.push({
        name: definition.name,
        order: definition.order,
        purpose: layout.purpose,
        // A list that may grow is looked through for a while beyond what it holds.
        rows: layout.pricedRows ?? (open ? Math.ceil(used / OPEN_ROWS) * OPEN_ROWS : used),
        columns: largest([...rows.values()].map((cells) => largest(cells.keys()))),
      });
    }
  }
  const inOrder = [...layouts].sort(([a], [b]) => a.order - b.order).map(([, layout]) => layout);
  const sheets = inOrder.map(({ sheet }) => sheet);
  if (sheets[0]?.name === "Start") {
    inOrder.forEach((layout, index) => layout.signposts(index > 0, sheets[index + 1]?.name));
  }
  settle(inOrder, job);
  const lists = choiceLists(job, sheets);
  return {
    title: `Rillwright estimate, ${system === "US" ? "US units" : "metric units"}`,
    system,
    filled,
    sheets: lists ? [...sheets, lists.sheet] : sheets,
    names: [...inOrder.flatMap(({ names }) => names), ...(lists?.names ?? [])],
  };
}

/** Of more numbers than a call takes arguments. */
function largest(numbers: Iterable<number>): number {
  let most = -Infinity;
  for (const number of numbers) most = Math.max(most, number);
  return most;
}
