import type { UnitSystem } from "../../calc/quantity/unitSystem";
import type { Book } from "../../book/types";
import { FACTS } from "../../job/facts";
import type { ColumnSpec } from "../layout/tableColumns";
import type { CellValue } from "../model";
import type { RowReader } from "./cells";
import { pastJobColumns, pastJobRow, readPastJob } from "./pastJobs";
import {
  burdenColumns,
  burdenRow,
  machineColumns,
  machineRow,
  rateColumns,
  rateRow,
  readBurden,
  readMachine,
  readRate,
  readSize,
  readWage,
  sizeColumns,
  sizeRow,
  wageColumns,
  wageRow,
} from "./people";
import { productColumns, productRow, readProduct } from "./products";
import { pumpColumns, pumpRow, readPump } from "./pumps";

/** A table of the book: one truth for its layout, its rows as cells, and cells as rows. */
export interface BookTable<R = unknown> {
  /** Defined name of its rows. */
  readonly name: string;
  readonly sheet: string;
  /** Rows it takes. */
  readonly rows: number;
  readonly columns: (system: UnitSystem) => readonly ColumnSpec[];
  readonly of: (book: Book) => readonly R[];
  readonly cells: (row: R, system: UnitSystem) => CellValue[];
  readonly read: (row: RowReader, system: UnitSystem) => R | undefined;
}

function table<R>(spec: BookTable<R>): BookTable<R> {
  return spec;
}

/** Products a book holds: more than any yard sells, and few enough to be opened in a second. */
export const MOST_PRODUCTS = 20_000;

export const TABLES = {
  products: table({
    name: "ProductTable",
    sheet: "Products",
    rows: MOST_PRODUCTS,
    columns: productColumns,
    of: ({ products }) => products,
    cells: productRow,
    read: readProduct,
  }),
  pumps: table({
    name: "BookPumps",
    sheet: "Pumps",
    rows: 500,
    columns: pumpColumns,
    of: ({ pumps }) => pumps,
    cells: pumpRow,
    read: readPump,
  }),
  burden: table({
    name: "BookBurden",
    sheet: "Hours",
    rows: 9,
    columns: () => burdenColumns,
    of: ({ labor }) => labor.burden,
    cells: burdenRow,
    read: readBurden,
  }),
  wages: table({
    name: "BookWages",
    sheet: "Hours",
    rows: 6,
    columns: () => wageColumns,
    of: ({ labor }) => labor.wages,
    cells: wageRow,
    read: readWage,
  }),
  rates: table({
    name: "BookRates",
    sheet: "Hours",
    rows: 40,
    columns: () => rateColumns,
    of: ({ labor }) => labor.rates,
    cells: rateRow,
    read: readRate,
  }),
  sizes: table({
    name: "BookSizeHours",
    sheet: "Hours",
    rows: FACTS.sizeHours.rows,
    columns: sizeColumns,
    of: ({ labor }) => labor.sizes,
    cells: sizeRow,
    read: readSize,
  }),
  machines: table({
    name: "BookMachines",
    sheet: "Machines",
    rows: 60,
    columns: machineColumns,
    of: ({ machines }) => machines,
    cells: machineRow,
    read: readMachine,
  }),
  pastJobs: table({
    name: "BookJobs",
    sheet: "PastJobs",
    rows: 2000,
    columns: () => pastJobColumns,
    of: ({ pastJobs }) => pastJobs,
    cells: pastJobRow,
    read: readPastJob,
  }),
} as const;
