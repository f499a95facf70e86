import { CENT_DIGITS } from "../../../calc/money/cents";
import { CURRENCY_CODES, MINOR_UNITS } from "../../../calc/tables/currencies";
import type { SheetLayout } from "../../layout";

/** Digits that amounts are rounded to, and the codes that a currency's is held against. */
export function currency(s: SheetLayout): void {
  s.section("Currency");
  const digits = MINOR_UNITS.reduce(
    (others, { codes, signs, digits }) =>
      `IF(OR(Currency={${[...codes, ...signs].map((said) => `"${said}"`).join(",")}}),${digits},${others})`,
    `${CENT_DIGITS}`,
  );
  s.result({
    name: "MoneyDigits",
    label: "Digits behind the point of an amount",
    source: "ISO 4217, list one, minor unit",
    kind: "count",
    formula: `=IFERROR(${digits},${CENT_DIGITS})`,
    note: "As the currency on Site has them; every amount is rounded to these.",
  });
  const codes = s.textAcross(s.row, 1, s.lastColumn, CURRENCY_CODES.join(" "), "note");
  s.define("CurrencyCodes", codes.top, codes.left, codes.top, codes.left);
  s.row++;
}
