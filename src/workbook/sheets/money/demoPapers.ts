import type { CellValue } from "../../model";

type Rows = readonly (readonly CellValue[])[];

/** Order, item, quantity, unit, ticket, day. Invented. */
export const TICKETS: Readonly<Record<"US" | "SI", Rows>> = { US: [], SI: [] };

/** Order, item, quantity, unit, price, invoice, day. Invented. */
export const INVOICES: Readonly<Record<"US" | "SI", Rows>> = { US: [], SI: [] };
