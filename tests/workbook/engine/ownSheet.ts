import type { SourceCell } from "../../../src/workbook/engine/book";
import { Engine, type Change } from "../../../src/workbook/engine/engine";
import type { CellValue } from "../../../src/workbook/model";

/** A sheet of a person's own, in which cells are typed by their addresses: "=A1*2" is a formula, "" clears the cell. */
export class OwnSheet {
  readonly engine: Engine;

  constructor(
    cells: readonly SourceCell[] = [],
    merged: { top: number; left: number; bottom: number; right: number }[] = [],
  ) {
    const sheet = { name: "Mine", cells, filled: [], merged, hiddenRows: [] };
    this.engine = new Engine({ sheets: [sheet], names: [], date1904: false });
    this.engine.runAll();
  }

  type(address: string, content: CellValue): Change[] {
    const [column, row] = place(address);
    const formula = typeof content === "string" && content.startsWith("=");
    this.engine.set(
      "Mine",
      row,
      column,
      formula ? { formula: content.slice(1) } : content === "" ? undefined : content,
    );
    return this.engine.run();
  }

  shows(...addresses: string[]): CellValue[] {
    return addresses.map((address) => {
      const [column, row] = place(address);
      return this.engine.value("Mine", row, column);
    });
  }

  reason(address: string): string | undefined {
    return this.engine.reasons.get(`Mine!${address}`);
  }
}

function place(address: string): [column: number, row: number] {
  return [address.charCodeAt(0) - 64, Number(address.slice(1))];
}
