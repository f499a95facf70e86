import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { TAX_BASES } from "../../calc/money/costKinds";
import type { Company, Labor, Pricing } from "../../book/types";
import { isCurrency } from "../../calc/money/currency";
import { parseArea } from "../../xlsx/address";
import type { ColumnSpec } from "../layout/tableColumns";
import type { CellValue } from "../model";
import type { Recalculated } from "../recalculate";
import { RowReader, type BookProblem } from "./cells";
import { handLimitOf, LABOR_FIELDS, COMPANY_FIELDS, OVERHEAD_WAYS, PRICING_FIELDS, SENTENCES } from "./fields";

interface Fields extends Pick<Labor, "dayHours" | "handLimit"> {
  readonly company: Company;
  readonly pricing: Pricing;
}

/** What stands in the cells of the book that are no table: the company, the pricing, the working day. */
export function readFields(workbook: Recalculated, system: UnitSystem, problems: BookProblem[]): Fields {
  const labels = new Map(
    [...COMPANY_FIELDS, ...LABOR_FIELDS(system), ...PRICING_FIELDS].map((one) => [one.name, one.label]),
  );
  const field = (name: string): RowReader => readerOf(workbook, name, labels.get(name) ?? name, system, problems);
  const text = (name: string): string => field(name).text("value");
  const share = (name: string, max: number): number | undefined => field(name).number("value", { min: 0, max });
  const amount = (name: string): number | undefined => field(name).number("value", { min: 0 });
  const sentences = (name: string): string[] =>
    column(workbook, name, 0).flatMap((cell) => (String(cell).trim() === "" ? [] : [String(cell).trim()]));
  const [scope, exclusions, terms] = SENTENCES.map(({ name }) => sentences(name));
  const currency = text("BookCurrency").toUpperCase();
  if (currency !== "" && !isCurrency(currency)) {
    field("BookCurrency").wrong("value", "must be a code of ISO 4217, such as USD, CAD, EUR or GBP");
  }
  return {
    company: {
      name: text("BookCompany"),
      address: text("BookAddress"),
      phone: text("BookPhone"),
      email: text("BookEmail"),
      license: text("BookLicense"),
      estimator: text("BookEstimator"),
      currency: isCurrency(currency) ? currency : "",
      scope: scope ?? [],
      exclusions: exclusions ?? [],
      terms: terms ?? [],
      invented: text("CompanyMark") !== "",
    },
    dayHours: field("BookDayHours").number("value", { above: 0, max: 24 }),
    handLimit: handLimitOf(field("BookHandLimit").number("value", { above: 0 }), system),
    pricing: {
      wantedMargin: share("BookMargin", 0.9),
      overheadBy: field("BookOverheadBy").choice("value", OVERHEAD_WAYS),
      overheadShare: share("BookOverheadShare", 2),
      overheadPerHour: amount("BookOverheadHour"),
      contingencyShare: share("BookContingency", 1),
      taxName: text("BookTaxName"),
      taxBase: field("BookTaxBase").choice("value", TAX_BASES),
      taxRate: share("BookTaxRate", 0.5),
      roundTo: amount("BookRoundTo"),
      validDays: amount("BookValidDays"),
      tariff: amount("BookTariff"),
      ownYears: amount("BookOwnYears"),
      markups: readMarkups(workbook, system, problems),
      stages: readStages(workbook, system, problems),
      invented: text("PricingMark") !== "",
    },
  };
}

function readMarkups(workbook: Recalculated, system: UnitSystem, problems: BookProblem[]): Pricing["markups"] {
  return tableRows(workbook, "BookMarkups", ["kind", "markup"], system, problems).map((row) =>
    row.number("markup", { min: 0, max: 10 }),
  );
}

function readStages(workbook: Recalculated, system: UnitSystem, problems: BookProblem[]): Pricing["stages"] {
  return tableRows(workbook, "BookStages", ["name", "share"], system, problems)
    .filter((row) => row.text("name") !== "" || row.text("share") !== "")
    .map((row) => ({ name: row.text("name"), share: row.number("share", { min: 0, max: 1 }) }));
}

const columnOf = (key: string, title = key): ColumnSpec => ({ key, title, kind: "text", input: { message: title } });

function tableRows(
  workbook: Recalculated,
  name: string,
  keys: readonly string[],
  system: UnitSystem,
  problems: BookProblem[],
): RowReader[] {
  const area = parseArea(workbook.names.get(name) ?? "");
  if (!area) return [];
  const columns = keys.map((key) => columnOf(key));
  return (workbook.named(name) ?? []).map(
    (cells, index) => new RowReader(area.sheet, area.top + index + 1, area.left + 1, columns, cells, system, problems),
  );
}

/** A cell by its name, as a row of one column. */
function readerOf(
  workbook: Recalculated,
  name: string,
  label: string,
  system: UnitSystem,
  problems: BookProblem[],
): RowReader {
  const area = parseArea(workbook.names.get(name) ?? "");
  const cell: CellValue = (area && workbook.named(name)?.[0]?.[0]) ?? "";
  const [row, left] = area ? [area.top + 1, area.left + 1] : [1, 1];
  return new RowReader(area?.sheet ?? name, row, left, [columnOf("value", label)], [cell], system, problems);
}

function column(workbook: Recalculated, name: string, at: number): CellValue[] {
  return (workbook.named(name) ?? []).map((row) => row[at] ?? "");
}
