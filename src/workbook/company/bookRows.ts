import { parseArea } from "../../xlsx/address";
import { cellAddress } from "../layout/address";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { CellValue } from "../model";
import type { Recalculated } from "../recalculate";
import { heldIn, sameValue, type CellChange } from "./difference";
import type { BookTable } from "./tables";

/** Rows of a book's table as cells to type: into a row that is there, or into the next that is free. */
export class BookRows<R> {
  private next: number;
  private readonly last: number;
  private readonly corner: { readonly sheet: string; readonly top: number; readonly left: number };
  private readonly keys: readonly string[];

  constructor(
    private readonly table: BookTable<R>,
    private readonly workbook: Recalculated,
    private readonly system: UnitSystem,
  ) {
    const area = parseArea(workbook.names.get(table.name) ?? "");
    if (!area) throw new Error(`the book has no ${table.name}`);
    this.corner = area;
    this.keys = table.columns(system).map(({ key }) => key);
    const rows = workbook.named(table.name) ?? [];
    const used = rows.reduce((last, row, index) => (row.some((cell) => cell !== "") ? index + 1 : last), 0);
    this.next = area.top + used + 1;
    this.last = area.top + table.rows;
  }

  /** The cells that change when a row of the sheet comes to say this; of these columns only, where they are named. */
  changed(row: number, to: R, only?: readonly string[]): CellChange[] {
    return this.table.cells(to, this.system).flatMap((value, index) => {
      const key = this.keys[index] ?? "";
      if (only && !only.includes(key)) return [];
      const cell = `${this.corner.sheet}!${cellAddress(row, this.corner.left + index + 1)}`;
      const from = heldIn(this.workbook, cell);
      return sameValue(from, value) ? [] : [{ cell, from, to: value }];
    });
  }

  /** The cells of a new row; undefined where the table is full. */
  added(to: R): CellChange[] | undefined {
    if (this.next > this.last) return undefined;
    return this.changed(this.next++, to);
  }
}

/** The cells to type, by "Products!L7". */
export function cellsToTake(taken: readonly { readonly cells: readonly CellChange[] }[]): Map<string, CellValue> {
  return new Map(taken.flatMap(({ cells }) => cells.map(({ cell, to }) => [cell, to] as const)));
}
