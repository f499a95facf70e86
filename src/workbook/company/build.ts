import type { UnitSystem } from "../../calc/quantity/unitSystem";
import { shippedBook } from "../../book/shipped";
import type { Book } from "../../book/types";
import { assemble } from "../assemble";
import { calculate } from "../build";
import { bookWithLogo } from "../logo";
import type { WorkbookModel } from "../model";
import { writeWorkbook } from "../write";
import { companySheets } from "./sheets";

/** The company books that ship, by the name of their file. */
export const COMPANY_BOOKS: readonly {
  readonly file: string;
  readonly system: UnitSystem;
  readonly filled: "demo" | "blank";
}[] = [
  { file: "rillwright-us-company.xlsx", system: "US", filled: "demo" },
  { file: "rillwright-us-company-blank.xlsx", system: "US", filled: "blank" },
  { file: "rillwright-si-company.xlsx", system: "SI", filled: "demo" },
  { file: "rillwright-si-company-blank.xlsx", system: "SI", filled: "blank" },
];

/** A company book laid out: as a book says, or blank. */
export function companyModel(system: UnitSystem, book?: Book): WorkbookModel {
  const model = assemble(companySheets(system, book), system, book ? "demo" : "blank");
  return { ...model, title: `Rillwright company book, ${system === "US" ? "US units" : "metric units"}` };
}

/** Lays out, calculates and writes a company book. */
export async function buildCompanyBook(system: UnitSystem, book?: Book): Promise<Uint8Array> {
  const model = companyModel(system, book);
  await calculate(model);
  const bytes = await writeWorkbook(model);
  const logo = book?.company.logo;
  return logo ? bookWithLogo(bytes, logo) : bytes;
}

/** One of the books that ship. */
export function shippedCompanyBook({ system, filled }: (typeof COMPANY_BOOKS)[number]): Promise<Uint8Array> {
  return buildCompanyBook(system, filled === "demo" ? shippedBook(system) : undefined);
}
