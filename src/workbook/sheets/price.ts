import { COST_KINDS, TAX_BASES } from "../../calc/money/priceBuildUp";
import { defineSheet, type Job, type SheetLayout, type TableRef } from "../layout";
import { cellAddress } from "../layout/address";
import { quoteTerms } from "./money/quoteTerms";
import { KIND_LABELS, optionRow, OPTIONS, priceTable, type OptionCells } from "./money/priceTable";

const CHANGE_ROWS = 8;

/** From cost to price: markups, overhead, contingency, tax, odds, and three options side by side. */
export const price = defineSheet({
  name: "Price",
  order: 13,
  turn: 1,
  build(s, job) {
    s.widths([36, 12, 13, 13, 13, 13, 13, 13, 13]);
    s.title(
      "Price",
      "Set markups, overhead and tax; price, margin and profit a day follow at once, for three options.",
    );
    s.print({ landscape: true, titleRows: [1, 2] });
    settings(s, job);
    options(s, job);
    s.pageBreak();
    s.section("From cost to price");
    const table = priceTable(s, labourCosts(job));
    const rows = results(s, table);
    chosen(s, table, rows);
    s.pageBreak();
    odds(s);
    s.pageBreak();
    quoteTerms(s, job);
    checks(s);
  },
});

/** Hours are costed on Labour, unless their lines are on Takeoff already. */
function labourCosts(job: Job): { labour?: string; machine?: string } {
  const counted = job.takeoffLines.some(({ category }) => category === "Labour" || category === "Equipment");
  if (counted || !job.names.has("LabourCost")) return {};
  return { labour: "N(LabourCost)", machine: "N(MachineCost)" };
}

function settings(s: SheetLayout, job: Job): void {
  s.section("Settings");
  const share = (name: string, label: string, usual: number, max: number, message: string, note?: string): void => {
    s.input({ name, label, kind: "share", usual, min: 0, max, message, ...(note ? { note } : {}) });
  };
  share(
    "WantedMargin",
    "Gross margin wanted",
    0.3,
    0.9,
    "Share of the price that is left over the job's own cost.",
    "Of the price, not of the cost: 30 % of the price is 42.9 % on cost.",
  );
  s.input({
    name: "OverheadBy",
    label: "Overhead is counted by",
    kind: "text",
    choices: ["share of cost", "crew hours"],
    usual: "share of cost",
    message: "How the office, vehicles and insurance are charged to a job.",
  });
  share("OverheadShare", "Overhead as a share of direct cost", 0.12, 2, "Yearly overhead over yearly direct cost.");
  s.input({
    name: "OverheadPerHour",
    label: "Overhead for a crew hour",
    kind: "money",
    usual: { US: 13.75, SI: 11.5 },
    min: 0,
    max: 1000,
    message: "Yearly overhead over yearly hours on site.",
  });
  s.result({ name: "CrewHours", label: "Crew hours", kind: "hours", formula: whenNamed(job, "LabourHours") });
  s.result({
    name: "CrewDays",
    label: "Crew days",
    kind: "number",
    format: "0.0",
    unit: "days",
    formula: whenNamed(job, "WorkingDays"),
  });
  share(
    "ContingencyShare",
    "Contingency",
    0.05,
    1,
    "Share of the direct cost kept for what goes wrong.",
    "See the odds below for what it should cover.",
  );
  s.input({
    name: "TaxBase",
    label: "Sales tax is owed on",
    kind: "text",
    choices: TAX_BASES,
    usual: { US: "materials with markup", SI: "whole price" },
    message: "What the tax is worked out on; ask your accountant.",
    note: "Rules differ from place to place: ask your accountant.",
  });
  s.input({
    name: "TaxRate",
    label: "Tax rate",
    kind: "share",
    format: "0.000%",
    usual: { US: 0.065, SI: 0.2 },
    min: 0,
    max: 0.5,
    message: "Rate of the sales or value-added tax.",
  });
  s.input({
    name: "RoundTo",
    label: "Raise the price to a multiple of",
    kind: "money",
    usual: 10,
    min: 0,
    max: 10_000,
    message: "The price before tax is raised to a whole multiple; 0 leaves it.",
  });
  s.input({
    name: "ChosenOption",
    label: "Option that is quoted",
    kind: "text",
    choices: OPTIONS,
    usual: "A",
    message: "The option whose price goes to the quote's total.",
  });
}

function whenNamed(job: Job, name: string): string {
  return job.names.has(name) ? `=${name}` : '=""';
}

function options(s: SheetLayout, job: Job): void {
  s.section("Options");
  s.note(
    "Option A is the takeoff as it stands. B and C change its cost; leave their names blank to do without. A change below zero saves.",
  );
  s.table({
    name: "OptionTable",
    rows: OPTIONS.length,
    columns: [
      { key: "letter", title: "Option", kind: "text", fixed: [...OPTIONS] },
      {
        key: "name",
        title: "Name, as the client reads it",
        kind: "text",
        name: "OptionNames",
        across: 3,
        input: { max: 80, message: "A few plain words." },
      },
    ],
    ...(job.filled === "demo"
      ? {
          demo: [
            ["As designed"],
            [job.pick({ US: "Ledge stone at the drops", SI: "Slabs at the drops" })],
            ["As designed, with lamps"],
          ],
        }
      : { usual: [["As designed"]] }),
  });
  s.skip();
  s.table({
    name: "OptionChanges",
    rows: CHANGE_ROWS,
    columns: [
      { key: "what", title: "What changes", kind: "text", input: { max: 120, message: "What is different." } },
      {
        key: "kind",
        title: "Cost kind",
        kind: "text",
        name: "OptionKinds",
        across: 2,
        input: { choices: COST_KINDS, message: "Which cost it changes." },
      },
      ...(["B", "C"] as const).map((letter) => ({
        key: letter,
        title: `${letter}: change`,
        kind: "money" as const,
        name: `OptionChanges${letter}`,
        input: { min: -1_000_000, max: 1_000_000, message: "Cost added, or saved when below zero; a formula will do." },
      })),
    ],
    demo: {
      US: [
        ["Ledge stone in place of mixed boulders", "material", 385, ""],
        ["Setting ledge stone", "labour", 210, ""],
        ["Six lamps with transformer and cable", "material", "", 495],
        ["Fitting the lamps", "labour", "", 180],
      ],
      SI: [
        ["Slabs in place of mixed boulders", "material", 340, ""],
        ["Setting slabs", "labour", 195, ""],
        ["Six lamps with transformer and cable", "material", "", 430],
        ["Fitting the lamps", "labour", "", 165],
      ],
    },
  });
}

interface Rows {
  readonly before: number;
}

function results(s: SheetLayout, table: TableRef): Rows {
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
function chosen(s: SheetLayout, table: TableRef, { before }: Rows): void {
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

/** Three-point costs of the quoted option, and what they come to with the confidence wanted. */
function odds(s: SheetLayout): void {
  s.section("Odds of the cost");
  s.note(
    "Say how far each cost may fall below or rise above the likely one. The odds take costs as independent and their sum as a bell curve: a guide, not a promise.",
  );
  s.input({
    name: "Confidence",
    label: "Chance of keeping the cost",
    kind: "share",
    usual: 0.8,
    min: 0.5,
    max: 0.99,
    message: "How sure you want to be that the cost is kept.",
  });
  const likely = `CHOOSE(MATCH(ChosenOption,{"A","B","C"},0),${OPTIONS.map((letter) => `INDEX(Costs${letter},[#])`).join(",")})`;
  const side = (key: string, title: string, message: string) => ({
    key,
    title,
    kind: "share" as const,
    input: { min: 0, max: 3, message },
  });
  const table = s.table({
    rows: COST_KINDS.length,
    columns: [
      { key: "line", title: "Cost", kind: "text", fixed: COST_KINDS.map((kind) => KIND_LABELS[kind]) },
      side("below", "May fall by", "Share by which the cost may fall below the likely one, at the lowest."),
      side("above", "May rise by", "Share by which the cost may rise above the likely one, at the highest."),
      {
        key: "low",
        title: "Low",
        kind: "money",
        formula: `=IF(ISNUMBER([likely]),ROUND([likely]*(1-MIN(1,[below])),2),"")`,
      },
      { key: "likely", title: "Likely", kind: "money", formula: `=IF(COUNT(TotalCost)=0,"",${likely})` },
      {
        key: "high",
        title: "High",
        kind: "money",
        formula: `=IF(ISNUMBER([likely]),ROUND([likely]*(1+[above]),2),"")`,
      },
    ],
    usual: [
      [0.04, 0.12],
      [0.1, 0.3],
      [0.1, 0.25],
      [0.02, 0.1],
      [0.05, 0.2],
      [0, 0.1],
    ],
  });
  const low = table.column("low");
  s.define("OddsItems", low.top, low.left, low.bottom, table.column("high").left);
  s.skip();
  const spill = s.spill({
    name: "CostOdds",
    header: "function",
    rows: 6,
    formula: "=RILL.COSTODDS(OddsItems,Confidence)",
    needs: ["TotalCost", "Confidence"],
    columns: [{ kind: "text" }, { kind: "money" }],
  });
  s.result({
    name: "PriceAtConfidence",
    label: "Price before tax that keeps the margin at that cost",
    kind: "money",
    formula: `=ROUNDUP(ROUND(${spill.cell(5, 2)}/(1-WantedMargin),6),2)`,
    needs: [spill.cell(5, 2).address],
  });
}

function checks(s: SheetLayout): void {
  s.check({
    label: "Gross margin of the quoted option",
    value: "=GrossMargin",
    limit: "=WantedMargin",
    ok: "ROUND(GrossMargin,6)>=ROUND(WantedMargin,6)",
    cure: "Raise the markups to the smallest that keeps the margin, or accept the thinner margin by lowering the wanted one.",
    fix: "Markups",
    kind: "share",
    needs: ["GrossMargin"],
  });
  s.check({
    label: "Contingency covers the odds",
    value: "=INDEX(CostOdds,6,2)",
    limit: `=CHOOSE(MATCH(ChosenOption,{"A","B","C"},0),INDEX(CostsA,8),INDEX(CostsB,8),INDEX(CostsC,8))`,
    ok: `INDEX(CostOdds,6,2)<=CHOOSE(MATCH(ChosenOption,{"A","B","C"},0),INDEX(CostsA,8),INDEX(CostsB,8),INDEX(CostsC,8))`,
    cure: "Raise the contingency to the reserve that the odds ask for, or take more risk knowingly.",
    fix: "ContingencyShare",
    kind: "money",
    weight: "look",
    needs: ["TotalCost"],
  });
  s.check({
    label: "The quoted option is one that is used",
    value: "=COUNT(PriceBeforeTax)",
    limit: 1,
    ok: "COUNT(PriceBeforeTax)=1",
    cure: "Pick an option that has a name, or name it.",
    fix: "ChosenOption",
    kind: "count",
    needs: ["CostsA"],
  });
  s.check({
    label: "Payment stages add up to the price",
    value: "=SUM(StageAmounts)",
    limit: "=PriceTotal",
    ok: "ROUND(SUM(StageAmounts)-PriceTotal,2)=0",
    cure: "Make the shares of the payment stages add up to 100 %.",
    fix: "StageShares",
    kind: "money",
    needs: ["PriceTotal", "StageShares"],
  });
}
