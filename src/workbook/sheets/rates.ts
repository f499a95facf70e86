import { COST_KINDS } from "../../calc/money/priceBuildUp";
import { defineSheet, type Job, type RateLine, type SheetLayout } from "../layout";
import type { CellValue } from "../model";
import { RATE_COLUMNS, RATE_TABLE } from "../rateColumns";
import { costKindOf } from "./money/costKinds";
import { fill, lock } from "./money/cells";

/** Rows for the user's own items, below those the workbook comes with. */
const OWN_ROWS = 60;
/** Day of the invented prices: 1 April 2026. */
const PRICE_DAY = 46113;
/** After this many days a price is worth asking for again; common practice, no source. */
const FRESH_DAYS = 365;
const MONEY_RANGE = { min: 0, max: 1_000_000 } as const;

/** Labour and machine rates built up line by line, and the price list. */
export const rates = defineSheet({
  name: "Rates",
  order: 10,
  turn: 1,
  build(s, job) {
    s.widths([34, 13, 9, 12, 10, 11, 10, 27, 13, 10, 12]);
    s.title("Rates", "Put your own wages and prices in place of the invented ones; Takeoff and Price follow.");
    s.print({ landscape: true, titleRows: [1, 2] });
    s.note(
      "Every wage, rate and price that comes with this workbook is invented. Keep the codes of items that Takeoff asks for.",
    );
    labour(s, job);
    machines(s);
    s.pageBreak();
    priceList(s, job);
    checks(s);
  },
});

function labour(s: SheetLayout, job: Job): void {
  s.section("Burden: what an hour costs on top of the wage");
  s.table({
    name: "BurdenTable",
    rows: 9,
    columns: [
      { key: "line", title: "Burden line", kind: "text", input: { max: 60, message: "What is paid on top of wages." } },
      {
        key: "share",
        title: "Share of wage",
        kind: "share",
        format: "0.00%",
        input: { min: 0, max: 1, message: "Share of the wage, from your payroll or insurer." },
      },
    ],
    usual: {
      US: [
        ["Social security and Medicare, employer's part", 0.0765],
        ["Unemployment insurance", 0.024],
        ["Workers' compensation insurance", 0.088],
        ["Liability insurance", 0.031],
        ["Paid leave and holidays", 0.064],
        ["Health and pension", 0.057],
        ["Small tools and clothing", 0.018],
      ],
      SI: [
        ["Social insurance, employer's part", 0.212],
        ["Accident insurance", 0.037],
        ["Liability insurance", 0.019],
        ["Paid leave and holidays", 0.146],
        ["Sick pay", 0.034],
        ["Pension", 0.028],
        ["Small tools and clothing", 0.017],
      ],
    },
    totals: { label: "Burden", keys: ["share"], names: { share: "BurdenTotal" } },
  });
  if (job.system === "US") {
    s.note(
      "Employer's social security 6.2 % (up to the yearly wage base) and Medicare 1.45 %: IRS Publication 15 (from memory).",
    );
  }

  s.section("Labour rates");
  s.table({
    name: "WageTable",
    rows: 6,
    columns: [
      { key: "role", title: "Role", kind: "text", name: "LabourRoles", input: { max: 40, message: "Who works." } },
      {
        key: "wage",
        title: "Wage an hour",
        kind: "money",
        name: "LabourWages",
        input: { min: 0, max: 1000, message: "Wage paid for an hour." },
      },
      { key: "burden", title: "Burden", kind: "share", formula: `=IF(ISNUMBER([wage]),BurdenTotal,"")` },
      {
        key: "rate",
        title: "Cost an hour",
        kind: "money",
        name: "LabourHourRates",
        formula: `=IF(ISNUMBER([wage]),ROUND([wage]*(1+[burden]),2),"")`,
      },
      {
        key: "people",
        title: "On the crew",
        kind: "count",
        name: "CrewPeople",
        input: { min: 0, max: 30, message: "How many of them are on the usual crew." },
      },
    ],
    usual: {
      US: [
        ["Foreman", 37.5, 1],
        ["Stone setter", 31.25, 1],
        ["Labourer", 23.4, 1],
        ["Machine operator", 33.8, 0],
      ],
      SI: [
        ["Foreman", 29.4, 1],
        ["Stone setter", 24.6, 1],
        ["Labourer", 18.7, 1],
        ["Machine operator", 26.1, 0],
      ],
    },
  });
  s.result({
    name: "CrewHourRate",
    label: "One hour of one person, crew average",
    formula: "=ROUND(SUMPRODUCT(CrewPeople,LabourHourRates)/SUM(CrewPeople),2)",
    kind: "money",
    needs: ["CrewPeople", "LabourHourRates"],
    strong: true,
  });
}

function machines(s: SheetLayout): void {
  s.section("Machine rates, without the operator");
  const part = (key: string, title: string, message: string) => ({
    key,
    title,
    kind: "money" as const,
    input: { ...MONEY_RANGE, message },
  });
  s.table({
    name: "MachineTable",
    rows: 6,
    columns: [
      {
        key: "machine",
        title: "Machine",
        kind: "text",
        name: "MachineNames",
        input: { max: 60, message: "Which machine." },
      },
      part("own", "Hire or ownership an hour", "Hire, or what the machine loses in value, for an hour at work."),
      part("fuel", "Fuel an hour", "Fuel and oil for an hour at work."),
      part("wear", "Upkeep an hour", "Wear parts and repairs for an hour at work."),
      {
        key: "rate",
        title: "Cost an hour",
        kind: "money",
        name: "MachineHourRates",
        formula: `=IF(COUNT([own],[fuel],[wear])=0,"",ROUND(SUM([own],[fuel],[wear]),2))`,
      },
      {
        key: "share",
        title: "Share of the hours",
        kind: "share",
        name: "MachineShares",
        input: { min: 0, max: 1, message: "Share of the usual machine hours that this machine works." },
      },
    ],
    usual: {
      US: [
        ["Mini excavator, 4 ton", 41, 9.8, 6.2, 0.7],
        ["Skid steer loader", 33, 8.4, 4.9, 0.3],
        ["Plate compactor", 9.5, 1.6, 1.1, 0],
        ["Dump trailer", 12.5, 0, 2.4, 0],
      ],
      SI: [
        ["Mini excavator, 3.5 t", 36, 8.7, 5.6, 0.7],
        ["Wheel loader, 1 t", 31, 7.9, 4.7, 0.3],
        ["Plate compactor", 8.5, 1.5, 1.2, 0],
        ["Tipping trailer", 11, 0, 2.1, 0],
      ],
    },
  });
  s.result({
    name: "MachineHourRate",
    label: "One machine hour, average",
    formula: "=ROUND(SUMPRODUCT(MachineShares,MachineHourRates)/SUM(MachineShares),2)",
    kind: "money",
    needs: ["MachineShares", "MachineHourRates"],
    strong: true,
  });
}

function priceList(s: SheetLayout, job: Job): void {
  s.section("Price list");
  s.note(
    "The last rows are yours. A supplier's CSV file comes in through the pane, which shows what would change first.",
  );
  const lines = job.rateLines;
  const table = s.table({
    name: RATE_TABLE,
    rows: lines.length + OWN_ROWS,
    columns: [
      column("description", "Description", "text", { max: 200, message: "What it is." }),
      column("code", "Code", "text", { max: 100, message: "The code it is looked up by; each code once." }),
      column("unit", "Unit", "text", { max: 20, message: "Unit it is priced and bought in." }),
      column("cost", "Cost", "money", { ...MONEY_RANGE, message: "Price you pay for one unit, without tax." }),
      column("pack", "Pack", "number", { min: 0.0001, max: 1_000_000, message: "Quantity sold in one piece." }),
      column("minimum", "Minimum", "number", { min: 0, max: 1_000_000, message: "Least quantity the supplier sells." }),
      column("waste", "Waste", "share", { min: 0, max: 2, message: "Share added to the need." }),
      column("supplier", "Supplier", "text", { max: 100, message: "Who sells it." }),
      column("kind", "Cost kind", "text", { choices: COST_KINDS, message: "Which line of Price it counts under." }),
      column("taxable", "Taxable", "text", { choices: ["yes", "no"], message: "Whether sales tax is owed on it." }),
      column("day", "Price of", "date", { message: "Day the price was given." }),
    ],
    usual: lines.map((line) => rowOf(line, job)),
  });
  lines.forEach(({ priceFormula }, index) => {
    // Takeoff reads these rows where they stand, so that codes must not move.
    lock(s, table.cell("code", index + 1));
    lock(s, table.cell("unit", index + 1));
    if (priceFormula !== undefined) fill(s, table.cell("cost", index + 1), priceFormula);
  });
}

function column(
  key: (typeof RATE_COLUMNS)[number]["field"],
  title: string,
  kind: "text" | "money" | "number" | "share" | "date",
  input: { min?: number; max?: number; choices?: readonly string[]; message: string },
) {
  return { key, title, kind, name: RATE_COLUMNS.find(({ field }) => field === key)?.name, input };
}

function rowOf(line: RateLine, job: Job): CellValue[] {
  return [
    line.description,
    line.code,
    line.unit,
    line.priceFormula === undefined ? job.pick(line.price) : "",
    line.pack === undefined ? 1 : job.pick(line.pack),
    line.minimum === undefined ? 0 : job.pick(line.minimum),
    line.waste ?? 0,
    line.supplier,
    costKindOf(line),
    "yes",
    PRICE_DAY,
  ];
}

function checks(s: SheetLayout): void {
  const unpriced = 'COUNTIF(RateCodes,"?*")-COUNTIFS(RateCodes,"?*",RateCosts,">=0")';
  s.check({
    label: "Codes that stand twice",
    value: '=SUMPRODUCT((RateCodes<>"")*(COUNTIF(RateCodes,RateCodes)>1))',
    limit: 0,
    ok: 'SUMPRODUCT((RateCodes<>"")*(COUNTIF(RateCodes,RateCodes)>1))=0',
    cure: "Give each item of the price list a code of its own; only the first of two is found.",
    fix: "RateCodes",
    kind: "count",
  });
  s.check({
    label: "Items without a cost",
    value: `=${unpriced}`,
    limit: 0,
    ok: `${unpriced}=0`,
    cure: "Fill in the cost of every item that has a code.",
    fix: "RateCosts",
    kind: "count",
  });
  s.check({
    label: "Age of the oldest price at the visit",
    value: "=MAX(0,VisitDate-MIN(RateDays))",
    limit: `at most ${FRESH_DAYS} days`,
    ok: `VisitDate-MIN(RateDays)<=${FRESH_DAYS}`,
    cure: "Ask the supplier for today's price, then change cost and date (common practice, no source).",
    fix: "RateDays",
    kind: "count",
    unit: "days",
    weight: "look",
    needs: ["VisitDate", "RateDays"],
  });
}
