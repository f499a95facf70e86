import { type SheetLayout } from "../../layout";
import { CHANGE_ROWS } from "./priceSettings";

/** What the client reads of each option that differs from A: the names of its changes, without their amounts. */
export function optionWords(s: SheetLayout): void {
  s.section("What differs, in the client's words");
  const named = (option: "B" | "C"): string =>
    `IF(N(INDEX(OptionChanges${option},[#]))=0,"",INDEX(OptionChanges,[#],1)&"")`;
  const top = s.row;
  for (let row = 1; row <= CHANGE_ROWS; row++) {
    (["B", "C"] as const).forEach((option, index) =>
      s.put(s.row, 1 + 2 * index, {
        across: 2 + 2 * index,
        formula: `=${named(option).replaceAll("[#]", String(row))}`,
        style: "plain",
      }),
    );
    s.row++;
  }
  s.define("DifferencesB", top, 1, s.row - 1, 1);
  s.define("DifferencesC", top, 3, s.row - 1, 3);
}
