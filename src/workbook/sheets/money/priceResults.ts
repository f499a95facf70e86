import { TAX_BASES } from "../../../calc/money/priceBuildUp";
import type { SheetLayout, TableRef } from "../../layout";
import { cellAddress } from "../../layout/address";
import { optionRow, OPTIONS, type OptionCells } from "./priceTable";

/** Where the results of the options stand: the row of the price before tax. */
export interface Rows {
  readonly before: number;
}

/** Price, tax and margins of the three options. */
export function results(s: SheetLayout, table: TableRef): Rows {
  const before = s.row + 1;
  const price = (o: OptionCells): string => o.at(before);
  optionRow(s, table, {
    label: "Rounding up",
    kind: "money",
    formula: (o) => `ROUND(${o.at(before)}-${o.beforeRounding},2)`,
  });
  optionRow(s, table, {
    label: "Price before tax",
    kind: "money",
    name: "OptionPrices",
    strong: true,
    formula: (o) => `IF(RoundTo>0,CEILING(ROUND(${o.beforeRounding},2),RoundTo),ROUND(${o.beforeRounding},2))`,
  });
  optionRow(s, table, {
    label: "Tax",
    kind: "money",
    name: "OptionTaxes",
    formula: (o) => `ROUND(TaxRate*${taxBase(o, price(o))},2)`,
  });
  optionRow(s, table, {
    label: "Price with tax",
    kind: "money",
    name: "OptionTotals",
    strong: true,
    formula: (o) => `ROUND(${o.at(before)}+${o.at(before + 1)},2)`,
  });
  optionRow(s, table, {
    label: "Gross margin, over direct cost and contingency",
    kind: "share",
    name: "OptionMargins",
    formula: (o) => `(${price(o)}-${o.jobCost})/${price(o)}`,
  });
  optionRow(s, table, {
    label: "Net margin, over overhead too",
    kind: "share",
    formula: (o) => `(${price(o)}-${o.totalCost})/${price(o)}`,
  });
  optionRow(s, table, {
    label: "Profit for a crew day",
    kind: "money",
    formula: (o) => `IF(COUNT(CrewDays)=0,"",IF(CrewDays>0,ROUND((${price(o)}-${o.totalCost})/CrewDays,2),""))`,
  });
  optionRow(s, table, {
    label: "Smallest markup on every line that keeps the margin",
    kind: "share",
    formula: (o) => `ROUNDUP(ROUND(MAX(0,${o.jobCost}/((1-WantedMargin)*${o.totalCost})-1),9),3)`,
  });
  optionRow(s, table, {
    label: "Least price before tax that keeps the margin",
    kind: "money",
    formula: (o) => `ROUNDUP(ROUND(${o.jobCost}/(1-WantedMargin),6),2)`,
  });
  return { before };
}

function taxBase(o: OptionCells, price: string): string {
  const changes = o.index > 1 ? `+SUMIFS(OptionChanges${OPTIONS[o.index - 1]},OptionKinds,"material")` : "";
  const taxable = `SUMIFS(TakeoffCosts,TakeoffTaxables,"yes")${changes}`;
  const [nothing, lines, materials] = TAX_BASES;
  return `IF(TaxBase="${nothing}",0,IF(TaxBase="${lines}",${taxable},IF(TaxBase="${materials}",${o.materialPrice},${price})))`;
}

/** The option that is quoted, under the names the other sheets read. */
export function chosen(s: SheetLayout, table: TableRef, { before }: Rows): void {
  s.section("The option that is quoted");
  const at = 'MATCH(ChosenOption,{"A","B","C"},0)';
  const pick = (cell: (column: number) => string): string =>
    `CHOOSE(${at},${OPTIONS.map((letter) => cell(table.column(`price${letter}`).left)).join(",")})`;
  const below = (offset: number): string => pick((column) => cellAddress(before + offset, column));
  const cost = (row: number): string => pick((column) => cellAddress(table.body.top + row, column - 1));
  const money = (name: string, label: string, formula: string, strong = false, note?: string): void => {
    s.result({
      name,
      label,
      kind: "money",
      formula: `=IF(SUM(OptionPrices)=0,"",ROUND(${formula},2))`,
      strong,
      ...(note ? { note } : {}),
    });
  };
  money("MaterialCost", "Material cost", cost(0));
  money(
    "TotalCost",
    "Total cost",
    pick((column) => cellAddress(table.body.bottom + 1, column - 1)),
    true,
    "Direct cost, overhead and contingency.",
  );
  money("PriceBeforeTax", "Price before tax", below(0), true);
  money("TaxAmount", "Tax", below(1));
  money("PriceTotal", "Price with tax", below(2), true);
  s.result({
    name: "GrossMargin",
    label: "Gross margin",
    kind: "share",
    formula: `=IF(SUM(OptionPrices)=0,"",${below(3)})`,
    strong: true,
  });
  s.result({
    name: "MarkupWanted",
    label: "Markup on cost that equals the wanted margin",
    kind: "share",
    formula: "=RILL.MARKUPFOR(WantedMargin)",
    needs: ["WantedMargin"],
  });
}
