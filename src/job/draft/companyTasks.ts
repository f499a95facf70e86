import { shippedLabor } from "../../book/shipped/people";
import type { Book, ProductionRate } from "../../book/types";
import { FACTS, type JobRow } from "../facts";

/**
 * The book's production rates as tasks of a job. The job counts its usual tasks by their place, so a rate goes where its
 * task stands, by its name; a usual task that the book does not name has no rates, and the book's own come behind.
 */
export function tasksOf({ labor, system }: Pick<Book, "labor" | "system">): {
  readonly rows: JobRow<"tasks">[];
  readonly left: readonly string[];
} {
  const usual = shippedLabor(system).rates;
  const key = ({ task }: Pick<ProductionRate, "task">): string => task.trim().toLowerCase();
  const held = new Map(labor.rates.map((rate) => [key(rate), rate]));
  const known = new Set(usual.map(key));
  const own = labor.rates.filter((rate) => !known.has(key(rate)));
  const rows = usual.map((task): JobRow<"tasks"> =>
    taskRow(held.get(key(task)) ?? { task: task.task, unit: task.unit }),
  );
  const room = FACTS.tasks.rows - rows.length;
  return { rows: [...rows, ...own.slice(0, room).map(taskRow)], left: own.slice(room).map(({ task }) => task) };
}

function taskRow({ task, unit, hours, machineHours }: Pick<ProductionRate, "task" | "unit"> & Partial<ProductionRate>) {
  return { name: task, unit, hours, machineHours };
}
