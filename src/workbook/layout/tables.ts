import type { CellValue } from "../model";
import { Ref, areaAddress } from "./address";
import { allBlank, hideBlankRows } from "./conditions";
import { formatOf } from "./formats";
import { originOf } from "./forms";
import { validationFor } from "./inputRule";
import type { Both } from "./job";
import type { Page } from "./page";
import { fillIn, fillInWhole, placeOf, placesOf, type ColumnSpec } from "./tableColumns";
import { besideNumbers, head } from "./tableHead";
import type { TableRef } from "./tableRef";

export interface TableSpec {
  /** Defined name of the body (header not included). */
  readonly name?: string;
  readonly columns: readonly ColumnSpec[];
  readonly rows: number;
  /** Rows of the demo: the input columns in order; "" leaves a cell blank. */
  readonly demo?: Both<readonly (readonly CellValue[])[]>;
  /** Rows that demo and blank both hold. */
  readonly usual?: Both<readonly (readonly CellValue[])[]>;
  /** The sheet column the table begins at; 1 if left out. */
  readonly at?: number;
  /** A row of totals: keys to add up, and its label in the first column. */
  readonly totals?: {
    readonly label: string;
    readonly keys: readonly string[];
    readonly names?: Readonly<Record<string, string>>;
  };
  /**
   * The table ends the sheet and may grow to so many rows: names and rules reach there, and rows that hold nothing
   * have no cells in the file.
   */
  readonly open?: {
    readonly rows: number;
    /** The row whose look the columns carry, counted from 1; the first if left out. */
    readonly from?: number;
  };
  /** The first row must be filled before the job can be estimated. */
  readonly required?: boolean;
}

export function addTable(page: Page, spec: TableSpec): TableRef {
  const left = spec.at ?? 1;
  const [places, next] = placesOf(spec.columns, left);
  const right = next - 1;
  const headRow = page.row;
  const top = headRow + 1;
  const bottom = headRow + spec.rows;
  // What names and rules cover; the same but for a table that may grow.
  const end = headRow + Math.max(spec.rows, spec.open?.rows ?? 0);
  const rows =
    spec.usual !== undefined
      ? page.job.pick(spec.usual)
      : page.job.filled === "demo" && spec.demo !== undefined
        ? page.job.pick(spec.demo)
        : [];
  if (rows.length > spec.rows) throw new Error(`${page.name}: a table of ${spec.rows} rows is given ${rows.length}`);

  let inputIndex = 0;
  for (const column of spec.columns) {
    const at = placeOf(places, column.key, page.name);
    head(page, headRow, at, column);
    const index = column.input ? inputIndex++ : -1;
    for (let row = top; row <= bottom; row++) {
      const given = index >= 0 ? rows[row - top]?.[index] : column.fixed?.[row - top];
      const formula = column.whole ? undefined : formulaOf(column, row - top);
      bodyCell(page, row, at, { ...column, formula }, given, (text) => fillIn(text, row, top, end, places, page.name));
    }
    const first = page.sheet.rows.get(top)?.get(at);
    if (column.whole && column.formula && first) {
      const filled = column.whole === true ? spec.rows : column.whole;
      first.formula = fillInWhole(formulaOf(column, 0) ?? "", top, top + filled - 1, places, page.name);
      first.spill = { rows: filled, columns: 1 };
      first.origin = originOf(page, column.title, column.source);
    }
    if (column.input) {
      const area = { top, left: at, bottom: end, right: at };
      page.sheet.validations.push(
        validationFor(page, area, { label: column.title, kind: column.kind, unit: column.unit, ...column.input }),
      );
    }
    if (column.name) page.define(column.name, top, at, end, at);
  }
  const [name] = spec.columns;
  if (spec.open === undefined && name && !name.input && !name.fixed) {
    const inputs = spec.columns.filter(({ input }) => input).map(({ key }) => placeOf(places, key, page.name));
    hideBlankRows(page, { top, left, bottom, right }, (column) => inputs.includes(column));
  }
  if (spec.open) page.openFrom(headRow + (spec.open.from ?? 1));
  page.row = bottom + 1;
  if (spec.totals) totals(page, spec, places, top, bottom);
  const body = spec.name ? page.define(spec.name, top, left, end, right) : new Ref(page.name, top, left, end, right);
  const firstInput = spec.columns.find((column) => column.input && column.kind !== "text");
  if (spec.required && firstInput) {
    const at = placeOf(places, firstInput.key, page.name);
    page.required.push({ label: firstInput.title, ref: new Ref(page.name, top, at, top, at) });
  }
  const nameOf = (key: string): string | undefined => spec.columns.find((column) => column.key === key)?.name;
  const table: TableRef = {
    body,
    column: (key) => {
      const at = placeOf(places, key, page.name);
      return new Ref(page.name, top, at, end, at, nameOf(key));
    },
    cell: (key, row) => {
      const at = placeOf(places, key, page.name);
      return new Ref(page.name, top + row - 1, at, top + row - 1, at);
    },
    total: (key) => {
      const at = placeOf(places, key, page.name);
      return new Ref(page.name, bottom + 1, at, bottom + 1, at, spec.totals?.names?.[key]);
    },
  };
  if (spec.name) page.job.tables.set(spec.name, table);
  return table;
}

function formulaOf({ formula }: ColumnSpec, index: number): string | undefined {
  return typeof formula === "string" ? formula : formula?.[index];
}

function bodyCell(
  page: Page,
  row: number,
  at: number,
  column: Omit<ColumnSpec, "formula"> & { readonly formula: string | undefined },
  given: CellValue | undefined,
  fill: (text: string) => string,
): void {
  const isText = column.kind === "text";
  const format = column.format ?? (isText && !column.input ? "General" : formatOf(column.kind, page.job.system));
  // What spills may not meet merged cells: its texts run on over the blank ones beside them.
  const across = column.whole ? 1 : (column.across ?? 1);
  const typed = given !== undefined && given !== "";
  const align = isText ? ("left" as const) : ("right" as const);
  page.put(row, at, {
    ...(typed ? { value: given } : column.formula ? { formula: fill(column.formula) } : {}),
    style: column.input ? "input" : isText ? "resultText" : "result",
    look: {
      format,
      align,
      ...besideNumbers(isText && at > 1),
      ...(column.whole && column.across ? { wrap: false } : {}),
      ...(column.formula && column.input && !typed ? { italic: true } : {}),
    },
    ...(column.unit === undefined ? { kind: column.kind } : {}),
    ...(column.formula && !typed ? { origin: originOf(page, column.title, column.source) } : {}),
    across,
  });
  if (isText && typed && typeof given === "string") page.fitHeight(row, given, page.charactersAcross(at, across));
}

function totals(page: Page, spec: TableSpec, places: ReadonlyMap<string, number>, top: number, bottom: number): void {
  const { row } = page;
  const first = spec.columns[0];
  for (const column of spec.columns) {
    const at = placeOf(places, column.key, page.name);
    const across = column.across ?? 1;
    if (column === first)
      page.put(row, at, { value: spec.totals?.label ?? "Total", style: "strong", look: { align: "left" }, across });
    else if (spec.totals?.keys.includes(column.key)) {
      const name = spec.totals.names?.[column.key];
      page.put(row, at, {
        // A column that holds nothing comes to nothing, not to 0.
        formula: `=IF(${allBlank(areaAddress({ top, left: at, bottom, right: at }))},"",SUM(${areaAddress({ top, left: at, bottom, right: at })}))`,
        style: "strong",
        look: { format: column.format ?? formatOf(column.kind, page.job.system) },
        ...(column.unit === undefined ? { kind: column.kind } : {}),
        across,
        ...(name ? { name } : {}),
      });
    } else page.put(row, at, { style: "strong", across });
  }
  page.row++;
}
