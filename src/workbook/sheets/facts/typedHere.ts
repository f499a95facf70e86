import type { SheetLayout } from "../../layout";
import { COLUMN } from "../../layout/factCells";
import type { Style } from "../../model";

/** A cell of the sheet that a person, or the company's book, may fill. */
export function typedHere(s: SheetLayout, row: number, column: number, look: Style, message: string): void {
  s.put(row, column, { style: "input", look });
  const area = { top: row, left: column, bottom: row, right: column };
  s.sheet.validations.push(
    look.format === "yyyy-mm-dd"
      ? { area, kind: "date", min: 36526, max: 73050, title: "Confirmed on", message }
      : {
          area,
          kind: "text",
          max: 200,
          title: column === COLUMN.drafted ? "As drafted" : "Your company's",
          message: message.slice(0, 225),
        },
  );
}

/** The cell that whoever writes a draft into the job leaves its value in, so that it shows as assumed until it is changed. */
export function draftedHere(s: SheetLayout, row: number): void {
  typedHere(
    s,
    row,
    COLUMN.drafted,
    {},
    "What a draft wrote into the job. While it still stands there, the fact shows as assumed.",
  );
}
