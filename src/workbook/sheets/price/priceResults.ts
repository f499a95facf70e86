import { TAX_BASES } from "../../../calc/money/costKinds";
import type { Job, Ref, SheetLayout, TableRef } from "../../layout";
import { cellOf } from "../money/cells";
import { unitOf } from "../../layout/formats";
import { EFFECT, effectOn } from "./optionEffects";
import { crewShare, optionRow, OPTIONS, type OptionCells } from "./priceTable";

/** Price, tax and margins of the three options. */
export function results(s: SheetLayout, table: TableRef): void {
  const before = s.row + 1;
  const price = (o: OptionCells): string => o.at(before);
  optionRow(s, table, {
    label: "Rounding up",
    kind: "money",
    formula: (o) => `ROUND(${o.at(before)}-${o.beforeRounding},MoneyDigits)`,
  });
  optionRow(s, table, {
    label: "Price before tax",
    kind: "money",
    name: "OptionPrices",
    strong: true,
    formula: (o) =>
      `IF(RoundTo>0,CEILING(ROUND(${o.beforeRounding},MoneyDigits),RoundTo),ROUND(${o.beforeRounding},MoneyDigits))`,
  });
  optionRow(s, table, {
    label: "Tax",
    source: "by definition: the rate on what is taxed; what is taxed is local law",
    kind: "money",
    name: "OptionTaxes",
    formula: (o) => `ROUND(TaxRate*${taxBase(s.job, o, price(o))},MoneyDigits)`,
  });
  optionRow(s, table, {
    label: "Price with tax",
    kind: "money",
    name: "OptionTotals",
    strong: true,
    formula: (o) => `ROUND(${o.at(before)}+${o.at(before + 1)},MoneyDigits)`,
  });
  optionRow(s, table, {
    label: "Gross margin, over direct cost and contingency",
    source: "by definition: what is left of the price, as its share",
    kind: "share",
    name: "OptionMargins",
    formula: (o) => `(${price(o)}-${o.jobCost})/${price(o)}`,
  });
  optionRow(s, table, {
    label: "Net margin, over overhead too",
    source: "by definition: what is left of the price, as its share",
    kind: "share",
    formula: (o) => `(${price(o)}-${o.totalCost})/${price(o)}`,
  });
  const days = s.row;
  optionRow(s, table, {
    label: "Crew days",
    source: "by definition: an option's days go with its cost of labor",
    kind: "number",
    name: "OptionDays",
    formula: (o) => `IF(COUNT(CrewDays)=0,"",CrewDays*${crewShare(s.job, o.index - 1)}${plus(s.job, o, EFFECT.days)})`,
  });
  const compared = [
    ["OptionFlows", "Flow", "flow", "DeliveredFlow", EFFECT.flow],
    ["OptionBoulders", "Boulders", "load", "BoulderTons", EFFECT.boulders],
  ] as const;
  for (const [name, label, kind, whole, row] of compared) {
    if (!s.job.names.has(whole)) continue;
    optionRow(s, table, {
      label: `${label}, ${unitOf(kind, s.job.system)}`,
      kind,
      name,
      formula: (o) => `IF(COUNT(${whole})=0,"",${whole}${plus(s.job, o, row)})`,
    });
  }
  optionRow(s, table, {
    label: "Profit for a crew day",
    source: "by definition: profit over days",
    kind: "money",
    name: "OptionDayProfits",
    formula: (o) => `IF(N(${o.at(days)})>0,ROUND((${price(o)}-${o.totalCost})/${o.at(days)},MoneyDigits),"")`,
  });
  optionRow(s, table, {
    label: "Smallest markup on every line that keeps the margin",
    source: "by definition: price = cost × (1 + markup), and (price − job cost) / price is the margin",
    kind: "share",
    name: "SmallestMarkups",
    formula: (o) => `ROUNDUP(ROUND(MAX(0,${o.jobCost}/((1-WantedMargin)*${o.totalCost})-1),9),3)`,
  });
  optionRow(s, table, {
    label: "Least price before tax that keeps the margin",
    source: "by definition: job cost / (1 − margin)",
    kind: "money",
    formula: (o) => `ROUNDUP(ROUND(${o.jobCost}/(1-WantedMargin),6),MoneyDigits)`,
  });
}

/** What the facts that an option changes add. */
function plus(job: Job, { index }: OptionCells, row: number): string {
  return index > 1 ? `+${effectOn(job, OPTIONS[index - 1] ?? "", row)}` : "";
}

function taxBase(job: Job, o: OptionCells, price: string): string {
  const changes =
    o.index > 1
      ? `+SUMIFS(OptionChanges${OPTIONS[o.index - 1]},OptionKinds,"material")${plus(job, o, EFFECT.taxable)}`
      : "";
  const taxable = `SUMIFS(TakeoffCosts,TakeoffTaxables,"yes")${changes}`;
  const [nothing, lines, materials] = TAX_BASES;
  return `IF(TaxBase="${nothing}",0,IF(TaxBase="${lines}",${taxable},IF(TaxBase="${materials}",${o.materialPrice},${price})))`;
}

/** The option that is quoted, under the names the other sheets read. */
export function chosen(s: SheetLayout): void {
  s.section("The option that is quoted");
  const number = 'MATCH(ChosenOption,{"A","B","C"},0)';
  // The prices of the options stand in every second column.
  const priced = (name: string): string => `INDEX(${name},1,2*${number}-1)`;
  const costed = (formula: (costs: string) => string): string =>
    `CHOOSE(${number},${OPTIONS.map((letter) => formula(`Costs${letter}`)).join(",")})`;
  const add = (name: string, label: string, formula: string, rest: Partial<Parameters<typeof s.result>[0]> = {}): Ref =>
    s.result({
      name,
      label,
      kind: "money",
      formula: `=IF(PriceStanding="",${formula},${name === "PriceTotal" ? "PriceStanding" : '""'})`,
      ...rest,
    });
  add(
    "MaterialCost",
    "Material cost",
    costed((costs) => `INDEX(${costs},1)`),
  );
  add(
    "TotalCost",
    "Total cost",
    costed((costs) => `IF(COUNT(${costs})=0,"",ROUND(SUM(${costs}),MoneyDigits))`),
    {
      note: "Direct cost, overhead and contingency.",
    },
  );
  add("PriceBeforeTax", "Price before tax", priced("OptionPrices"), { strong: true });
  add("TaxAmount", "Tax", priced("OptionTaxes"));
  // The one price that all others show: words, while there is no number to stand behind.
  s.roomFor(s.row, 3);
  const total = add("PriceTotal", "Price with tax", priced("OptionTotals"), { strong: true });
  cellOf(s, total).style = { ...cellOf(s, total).style, wrap: true };
  add("GrossMargin", "Gross margin", priced("OptionMargins"), { kind: "share", strong: true });
  add("CrewDayProfit", "Profit for a crew day", priced("OptionDayProfits"), { strong: true });
  s.result({
    name: "MarkupWanted",
    label: "Markup that equals the margin",
    kind: "share",
    formula: "=RILL.MARKUPFOR(WantedMargin)",
    needs: ["WantedMargin"],
    note: "On the job's own cost.",
  });
}
