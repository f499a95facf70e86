import type { Field } from "../csv/priceItem";

/** The columns of the price list on Rates, from left to right, each with the defined name of its cells. */
export const RATE_COLUMNS: readonly { readonly field: Field; readonly name: string }[] = [
  { field: "description", name: "RateDescriptions" },
  { field: "code", name: "RateCodes" },
  { field: "unit", name: "RateUnits" },
  { field: "cost", name: "RateCosts" },
  { field: "pack", name: "RatePacks" },
  { field: "minimum", name: "RateMinimums" },
  { field: "waste", name: "RateWastes" },
  { field: "supplier", name: "RateSuppliers" },
  { field: "kind", name: "RateKinds" },
  { field: "taxable", name: "RateTaxables" },
  { field: "day", name: "RateDays" },
  { field: "theirs", name: "RateTheirCodes" },
];

/** The defined name of the whole price list, headings not included. */
export const RATE_TABLE = "RateTable";
