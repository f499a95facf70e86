import type { UnitSystem } from "../calc/quantity/unitSystem";
import { Job, SheetLayout, type SheetDefinition } from "./layout";
import { choiceLists } from "./layout/choiceLists";
import type { WorkbookModel } from "./model";

/** Lays out every sheet and puts them in the order of their tabs. */
export function assemble(
  definitions: readonly SheetDefinition[],
  system: UnitSystem,
  filled: "demo" | "blank",
): WorkbookModel {
  const job = new Job(system, filled);
  const layouts = new Map<SheetDefinition, SheetLayout>();
  for (const turn of [0, 1, 2]) {
    for (const definition of definitions.filter((one) => (one.turn ?? 0) === turn)) {
      const layout = new SheetLayout(definition.name, job);
      definition.build(layout, job);
      layout.finish();
      layouts.set(definition, layout);
      job.pages.push({ name: definition.name, order: definition.order, purpose: layout.purpose });
    }
  }
  const inOrder = [...layouts].sort(([a], [b]) => a.order - b.order).map(([, layout]) => layout);
  const sheets = inOrder.map(({ sheet }) => sheet);
  const lists = choiceLists(job, sheets);
  return {
    title: `Rillwright estimate, ${system === "US" ? "US units" : "metric units"}`,
    system,
    filled,
    sheets: lists ? [...sheets, lists.sheet] : sheets,
    names: [...inOrder.flatMap(({ names }) => names), ...(lists?.names ?? [])],
  };
}
