import type { SheetLayout } from "../../layout";
import type { Style } from "../../model";

/** A cell of the sheet that a person, or the company's book, may fill. */
export function typedHere(s: SheetLayout, row: number, column: number, look: Style, message: string): void {
  s.put(row, column, { style: "input", look });
  const area = { top: row, left: column, bottom: row, right: column };
  s.sheet.validations.push(
    look.format === "yyyy-mm-dd"
      ? { area, kind: "date", min: 36526, max: 73050, title: "Confirmed on", message }
      : { area, kind: "text", max: 200, title: "Your company's", message: message.slice(0, 225) },
  );
}
