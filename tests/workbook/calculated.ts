import { storeResults } from "../../src/workbook/build";
import { areaAddress, cellAddress } from "../../src/workbook/layout/address";
import type { CellModel, CellValue, WorkbookModel } from "../../src/workbook/model";
import { openWorkbook, type OpenedWorkbook, type Recalculated } from "../../src/workbook/recalculate";
import { writeWorkbook } from "../../src/workbook/write";

type Held = Pick<CellModel, "value" | "formula">;

/** A workbook that was written and opened once, and what its cells held then, by "Sheet!B7". */
interface Opened {
  readonly held: ReadonlyMap<string, Held>;
  readonly workbook: OpenedWorkbook;
}

/** By the sheets and names: workbooks of the same layout that hold other formulas are opened each by itself. */
const known = new Map<string, Opened[]>();
/** The most that are kept of one layout, and the most that is typed into one before opening another is quicker. */
const MOST_KEPT = 3;
const MOST_TYPED = 1000;

/**
 * Calculates a model and stores the results in its cells, as the build's `calculate` does; but where a workbook of the
 * same layout is open, what differs is typed into that one, and only what follows is calculated. That this comes to the
 * same is what engine/demo.test.ts holds.
 */
export async function calculate(model: WorkbookModel): Promise<Recalculated> {
  const layout = layoutOf(model);
  const opened = known.get(layout) ?? [];
  known.set(layout, opened);
  const held = heldIn(model);
  for (const one of opened) {
    const typed = differences(one.held, held);
    if (typed) return kept(model, one.workbook, typed);
  }
  const workbook = await openWorkbook(await writeWorkbook(model, { charts: false }));
  opened.unshift({ held, workbook });
  opened.splice(MOST_KEPT);
  return kept(model, workbook, new Map());
}

function layoutOf({ system, sheets, names }: WorkbookModel): string {
  const places = names.map(({ name, sheet, area }) => `${name}=${sheet}!${areaAddress(area)}`);
  return [system, ...sheets.map(({ name }) => name), ...places].join("|");
}

function heldIn({ sheets }: WorkbookModel): Map<string, Held> {
  const held = new Map<string, Held>();
  for (const { name, rows } of sheets) {
    for (const [row, cells] of rows) {
      for (const [column, { value, formula }] of cells) {
        if (value === undefined && formula === undefined) continue;
        held.set(`${name}!${cellAddress(row, column)}`, formula === undefined ? { value } : { formula });
      }
    }
  }
  return held;
}

/** What has to be typed to come from one to the other; undefined where that takes a formula, or too much. */
function differences(
  before: ReadonlyMap<string, Held>,
  after: ReadonlyMap<string, Held>,
): Map<string, CellValue> | undefined {
  const typed = new Map<string, CellValue>();
  for (const [cell, { value, formula }] of after) {
    const old = before.get(cell);
    if (old?.formula === formula && old?.value === value) continue;
    if (formula !== undefined) return undefined;
    typed.set(cell, value ?? "");
  }
  for (const cell of before.keys()) if (!after.has(cell)) typed.set(cell, "");
  return typed.size > MOST_TYPED ? undefined : typed;
}

/** The outcome, kept from the next calculation of the same workbook, and stored in the model. */
function kept(model: WorkbookModel, workbook: OpenedWorkbook, typed: ReadonlyMap<string, CellValue>): Recalculated {
  const calculated = workbook.recalculate(typed);
  const named = new Map(model.names.map(({ name }) => [name, calculated.named(name)]));
  const lastRows = new Map(calculated.sheets.map((sheet) => [sheet, calculated.lastRow(sheet)]));
  storeResults(model, calculated);
  return {
    ...calculated,
    reasons: new Map(calculated.reasons),
    named: (name) => named.get(name),
    lastRow: (sheet) => lastRows.get(sheet) ?? 0,
  };
}
