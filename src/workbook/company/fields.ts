import { COST_KINDS, TAX_BASES } from "../../calc/money/costKinds";
import { fromInside, toInside } from "../../calc/quantity/measures";
import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { Book } from "../../book/types";
import type { InputSpec } from "../layout/inputSpec";
import type { CellValue } from "../model";
import { MARK } from "./cells";

/** An input of the book with a cell to itself, and what a book holds of it. */
export interface BookField extends Omit<InputSpec, "name" | "usual" | "demo"> {
  readonly name: string;
  readonly of: (book: Book) => CellValue | undefined;
}

const text = (
  name: string,
  label: string,
  max: number,
  message: string,
  of: (book: Book) => string,
  optional = true,
): BookField => ({ name, label, kind: "text", max, message, of, optional });

const mark = (name: string, what: string, of: (book: Book) => boolean): BookField => ({
  name,
  label: "Mark",
  kind: "text",
  choices: [MARK],
  message: `Marks what came with the tool. Clear it once ${what}.`,
  of: (book) => (of(book) ? MARK : ""),
  optional: true,
});

const share = (name: string, label: string, max: number, message: string, of: BookField["of"]): BookField => ({
  name,
  label,
  kind: "share",
  min: 0,
  max,
  message,
  of,
  optional: true,
});

const money = (name: string, label: string, max: number, message: string, of: BookField["of"]): BookField => ({
  name,
  label,
  kind: "money",
  min: 0,
  max,
  message,
  of,
  optional: true,
});

export const COMPANY_FIELDS: readonly BookField[] = [
  text(
    "BookCompany",
    "Your company",
    45,
    "Your company, as it appears on the quote.",
    ({ company }) => company.name,
    false,
  ),
  text("BookAddress", "Address", 90, "Address for quotes and orders.", ({ company }) => company.address),
  text("BookPhone", "Telephone", 25, "Telephone for quotes and the crew's page.", ({ company }) => company.phone),
  text("BookEmail", "E-mail", 60, "Address for answers to a quote.", ({ company }) => company.email),
  text(
    "BookLicense",
    "License number",
    40,
    "Contractor's license, where the law asks for it.",
    ({ company }) => company.license,
  ),
  text("BookEstimator", "Estimator", 30, "Who makes estimates.", ({ company }) => company.estimator),
  text(
    "BookCurrency",
    "Currency (ISO 4217 code)",
    3,
    "Three letters: USD, CAD, EUR, GBP.",
    ({ company }) => company.currency,
    false,
  ),
  mark("CompanyMark", "this is your company", ({ company }) => company.invented),
];

export const LABOR_FIELDS = (system: UnitSystem): readonly BookField[] => [
  {
    name: "BookDayHours",
    label: "Hours of a working day",
    kind: "hours",
    min: 1,
    max: 14,
    message: "Hours the crew works on site in a day.",
    of: ({ labor }) => labor.dayHours,
    optional: true,
  },
  {
    name: "BookHandLimit",
    label: "Most one person lifts",
    kind: "weight",
    min: { US: 5, SI: 2 },
    max: { US: 200, SI: 90 },
    message: "Your own hand-lift limit; less for awkward lifts.",
    of: ({ labor }) =>
      labor.handLimit === undefined ? undefined : Number(fromInside("weight", labor.handLimit, system).toPrecision(9)),
    optional: true,
  },
];

/** The most one person lifts as it was typed, in kg. */
export function handLimitOf(typed: number | undefined, system: UnitSystem): number | undefined {
  return typed === undefined ? undefined : toInside("weight", typed, system);
}

export const OVERHEAD_WAYS = ["share of cost", "crew hours"] as const;
export { TAX_BASES };

export const PRICING_FIELDS: readonly BookField[] = [
  share(
    "BookMargin",
    "Gross margin wanted",
    0.9,
    "Share of the price left over the job's own cost.",
    ({ pricing }) => pricing.wantedMargin,
  ),
  {
    name: "BookOverheadBy",
    label: "Overhead is counted by",
    kind: "text",
    choices: OVERHEAD_WAYS,
    message: "How the office, vehicles and insurance are charged to a job.",
    of: ({ pricing }) => pricing.overheadBy,
    optional: true,
  },
  share(
    "BookOverheadShare",
    "Overhead as a share of direct cost",
    2,
    "Yearly overhead over yearly direct cost.",
    ({ pricing }) => pricing.overheadShare,
  ),
  money(
    "BookOverheadHour",
    "Overhead for a crew hour",
    1000,
    "Yearly overhead over yearly hours on site.",
    ({ pricing }) => pricing.overheadPerHour,
  ),
  share(
    "BookContingency",
    "Contingency",
    1,
    "Share of the direct cost kept for what goes wrong.",
    ({ pricing }) => pricing.contingencyShare,
  ),
  text("BookTaxName", "Name of the tax", 30, "Sales tax, VAT, GST, MwSt …", ({ pricing }) => pricing.taxName),
  {
    name: "BookTaxBase",
    label: "Tax is owed on",
    kind: "text",
    choices: TAX_BASES,
    message: "What the tax is worked out on; ask your accountant.",
    of: ({ pricing }) => pricing.taxBase,
    optional: true,
  },
  {
    ...share("BookTaxRate", "Tax rate", 0.5, "Rate of the sales or value-added tax.", ({ pricing }) => pricing.taxRate),
    format: "0.000%",
  },
  money(
    "BookRoundTo",
    "Round the price up to a multiple of",
    10_000,
    "The price before tax is raised to a whole multiple.",
    ({ pricing }) => pricing.roundTo,
  ),
  {
    name: "BookValidDays",
    label: "A quote is valid for",
    kind: "count",
    unit: "days",
    min: 1,
    max: 365,
    message: "Days the price holds.",
    of: ({ pricing }) => pricing.validDays,
    optional: true,
  },
  {
    ...money(
      "BookTariff",
      "Price of electricity, for a kWh",
      100,
      "Price of one kilowatt-hour, taxes included.",
      ({ pricing }) => pricing.tariff,
    ),
    format: "0.000",
  },
  {
    name: "BookOwnYears",
    label: "Years a pump is counted over",
    kind: "count",
    unit: "years",
    min: 0,
    max: 50,
    message: "Years over which a pump's price and electricity are added up.",
    of: ({ pricing }) => pricing.ownYears,
    optional: true,
  },
  mark("PricingMark", "these are your own", ({ pricing }) => pricing.invented),
];

/** Rows of the markups. */
export const MARKUP_ROWS = [...COST_KINDS, "overhead", "contingency"] as const;

/** Sentences of a quote, one in a row: defined name, rows, title, and what a book holds. */
export const SENTENCES: readonly {
  readonly key: "terms" | "scope" | "exclusions";
  readonly name: string;
  readonly rows: number;
  readonly title: string;
}[] = [
  { key: "scope", name: "BookScope", rows: 8, title: "Also part of the work, in plain words" },
  { key: "exclusions", name: "BookExclusions", rows: 8, title: "Not part of the price" },
  { key: "terms", name: "BookTerms", rows: 8, title: "Terms of a quote" },
];
/** Letters that fit on one line of the quote. */
export const LONGEST_SENTENCE = 100;
export const STAGE_ROWS = 6;
