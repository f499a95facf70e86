import { assemble } from "../../src/workbook/assemble";
import { cellAddress } from "../../src/workbook/layout/address";
import { yoursName } from "../../src/workbook/yoursName";
import type { CellValue, WorkbookModel } from "../../src/workbook/model";
import { sheets } from "../../src/workbook/sheets";
import { cellToType } from "./typing";

type System = "US" | "SI";

/** Types values into the cells of a defined name, as a person would: unlocked cells only; undefined leaves a cell, "" empties it. */
export function typeInto(
  model: WorkbookModel,
  name: string,
  rows: readonly (readonly (CellValue | undefined)[])[],
): void {
  const named = [yoursName(name), name].flatMap((one) => model.names.find((known) => known.name === one) ?? [])[0];
  const sheet = model.sheets.find((one) => one.name === named?.sheet);
  if (!named || !sheet) throw new Error(`there is no name ${name}`);
  rows.forEach((row, down) =>
    row.forEach((value, across) => {
      if (value === undefined) return;
      const at = { row: named.area.top + down, column: named.area.left + across };
      const cell = cellToType(sheet, at.row, at.column);
      const where = `${name}: ${sheet.name}!${cellAddress(at.row, at.column)}`;
      if (!cell?.style.unlocked || at.row > named.area.bottom) throw new Error(`${where} is no cell to type into`);
      delete cell.formula;
      delete cell.result;
      if (value === "") delete cell.value;
      else cell.value = value;
    }),
  );
}

function repeat<T>(count: number, row: (index: number) => T): T[] {
  return Array.from({ length: count }, (_, index) => row(index));
}

export const OWN_LINES = 40;
export const PAPERS = 300;

/** As large a job as the workbook has room for: 12 drops, 6 pools, 3 lips, 4 beds, 8 liner pieces, 6 pumps, 40 lines of one's own, 300 papers of each kind. */
export function biggestJob(system: System): WorkbookModel {
  const model = assemble(sheets, system, "demo");
  const us = system === "US";
  const type = (name: string, rows: readonly (readonly (CellValue | undefined)[])[]): void =>
    typeInto(model, name, rows);
  type("FallTyped", [[us ? 14 : 4.2]]);
  // The box stands on a berm of 2 ft or 0.6 m: its foot is 14 in or 350 mm below the top lip.
  type("BermGround", [[us ? 110.23 : 53.07]]);
  type("Run", [[us ? 61 : 18.5]]);
  type("DropCount", [[12]]);
  type(
    "LipTable",
    us
      ? [
          [26, 0],
          [14, 0.25],
          [9, 0.4],
        ]
      : [
          [650, 0],
          [380, 6],
          [240, 9],
        ],
  );
  type(
    "PoolTable",
    repeat(6, (index) => (us ? [6 + index, 30 + index] : [0.6 + index / 10, 800 + 20 * index])),
  );
  type(
    "BedTable",
    repeat(4, (index) =>
      us ? [12, 3.25, 3 + index, "cascade over stones"] : [3.6, 1.1, 3 + index, "cascade over stones"],
    ),
  );
  type(
    "PumpTable",
    repeat(6, (index) => {
      const scale = (us ? 1 : 3.785) * (1 + index / 4);
      const head = (us ? 1 : 0.3048) * (1 + index / 8);
      return [
        `Trial pump ${index + 1} (invented)`,
        400 + 90 * index,
        300 + 80 * index,
        24 * head,
        ...[
          [2000, 21],
          [4000, 16],
          [6000, 8.5],
          [7000, 3],
        ].flatMap(([flow = 0, lift = 0]) => [Math.round(flow * scale), lift * head]),
        "",
        "",
      ];
    }),
  );
  type("ChosenPump", [["Trial pump 6 (invented)"]]);
  // The first two pieces follow from stream and basin.
  const skirts = repeat(6, (index) => [`Skirt ${index + 1}`, us ? 5 + index : 1.5 + 0.3 * index, us ? 4 : 1.2, 1]);
  type("LinerPieces", [[undefined], [undefined], ...skirts]);
  type(
    "OwnLines",
    repeat(OWN_LINES, (index) => [`Own line ${index + 1}`, "", "each", 2, 0, 0, 1, undefined, 10]),
  );
  const item = (index: number): CellValue => `ITEM${(index % 60) + 1}`;
  type(
    "OrderLines",
    repeat(60, (index) => ["TRY-1", item(index), 10, "each", 4]),
  );
  // Each item comes in five parts of two, and is invoiced in five parts of two.
  type(
    "TicketLines",
    repeat(PAPERS, (index) => ["TRY-1", item(index), 2, "each", `T${index + 1}`, 46200]),
  );
  type(
    "InvoiceLines",
    repeat(PAPERS, (index) => ["TRY-1", item(index), 2, "each", 4, `I${index + 1}`, 46210]),
  );
  return model;
}

/** The smallest job: one drop, one pool, one lip, one bed. */
export function smallestJob(system: System): WorkbookModel {
  const model = assemble(sheets, system, "demo");
  const us = system === "US";
  const none = (count: number, width: number): ""[][] => repeat(count, () => repeat(width, () => "" as const));
  typeInto(model, "FallTyped", [[us ? 0.8 : 0.25]]);
  typeInto(model, "Run", [[us ? 2.4 : 0.7]]);
  typeInto(model, "DropCount", [[1]]);
  typeInto(model, "LipTable", [us ? [15, 0] : [380, 0], ["", ""], ["", ""]]);
  typeInto(model, "PoolTable", [us ? [2.2, 15] : [0.2, 380], ...none(5, 2)]);
  typeInto(model, "BedTable", [
    us ? [2, 2, 2, "cascade over stones"] : [0.6, 0.6, 2, "cascade over stones"],
    ...none(3, 4),
  ]);
  return model;
}
