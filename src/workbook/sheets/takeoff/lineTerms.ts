import { Ref, type Job, type SheetLayout, type TableRef } from "../../layout";
import { areaAddress, cellAddress } from "../../layout/address";
import type { Origin } from "../../model";
import { RATE_TABLE } from "../../rateColumns";
import { cellOf, fill, fillDown } from "../money/cells";
import { MARK } from "../rates/asShipped";
import { NO_PRICE } from "./asks";
import { BOUGHT, inPacks, workedOut } from "./takeoffColumns";

/**
 * Price and terms of the lines, a column by one formula: each line reads its own row of the price list, where its code is
 * fixed, and what is blank there from the products it asks for.
 */
export function termsOfLines(s: SheetLayout, job: Job, table: TableRef): void {
  const rates = job.tables.get(RATE_TABLE);
  if (!rates) throw new Error("Rates must be laid out before Takeoff");
  if (job.takeoffLines.some(({ code }, row) => code !== job.rateLines[row]?.code)) {
    throw new Error("Rates must list what Takeoff asks for first, in the same order");
  }
  const count = job.takeoffLines.length;
  const products = productsOf(s, table, rates, count);
  const fillRows = (rows: number, formulaOf: Readonly<Record<string, (columns: Columns) => string>>): void => {
    const columns = columnsOf(table, rates, products, rows);
    for (const [key, formula] of Object.entries(formulaOf)) {
      const { sheet, top, left } = table.cell(key, 1);
      const origin = SOURCES[key];
      fillDown(s, new Ref(sheet, top, left, top + rows - 1, left), formula(columns), origin);
    }
  };
  fillRows(count, TERMS);
  // The line of all freight waits for what the others come to.
  fillRows(count - 1, { order: orderOf, price: priceOf, freight: freightOf });
  freightLine(s, table, rates.cell("cost", count), count);
}

/** What each line's products come to: how much of them it asks for, which is blank where it asks for none, and buys. */
function productsOf(s: SheetLayout, table: TableRef, rates: TableRef, rows: number): TableRef {
  s.section("What the products of each line come to");
  const code = areaAddress(table.column("code"));
  const own = ["pack", "minimum", "waste"].map((field) => {
    const { top, left } = rates.cell(field, 1);
    return `Rates!${areaAddress({ top, left, bottom: top + rows - 1, right: left })}`;
  });
  return s.table({
    rows,
    columns: [
      { key: "line", title: "Line", kind: "text", whole: true, formula: `=${code}` },
      { key: "bought", title: "Bought", kind: "number", whole: true, formula: `=SUMIFS(AskBuys,AskLines,${code})` },
      {
        key: "asked",
        title: "Asks",
        kind: "number",
        whole: true,
        formula: `=IF(COUNTIFS(AskLines,${code})=0,"",SUMIFS(AskCounts,AskLines,${code}))`,
      },
      {
        key: "each",
        title: "In packs of each",
        kind: "number",
        whole: true,
        // Terms that are typed for the line itself go before those of its products.
        formula: `=IF(${own.join("&")}="",[bought],0)`,
      },
    ],
  });
}

/** Columns as formulas read them, each of the same rows. */
interface Columns {
  /** What the lines' rows of the price list hold. */
  listed(field: string): string;
  /** What the lines hold. */
  at(key: string): string;
  /** What the lines' products come to. */
  of(key: "asked" | "bought" | "each"): string;
}

function columnsOf(table: TableRef, rates: TableRef, products: TableRef, rows: number): Columns {
  const first = ({ top, left }: Ref): string => areaAddress({ top, left, bottom: top + rows - 1, right: left });
  return {
    listed: (field) => `Rates!${first(rates.cell(field, 1))}`,
    at: (key) => first(table.cell(key, 1)),
    of: (key) => first(products.cell(key, 1)),
  };
}

/** What the products of each line come to. */
function sum({ at }: Columns, name: string): string {
  return `SUMIFS(${name},AskLines,${at("code")})`;
}

/** What the price list says of the line, else what its products say. */
function orElse({ listed, of }: Columns, field: string, ofProducts: string): string {
  return `IF(${listed(field)}<>"",${listed(field)},IF(${of("asked")}="","",${ofProducts}))`;
}

/** The same for a word: the first that a product of the line has. */
function word(field: string, name: string, otherwise: string): (columns: Columns) => string {
  return (columns) => {
    const first = `MATCH(${columns.at("code")}&"|?*",AskLines&"|"&${name},0)`;
    return orElse(columns, field, `IFERROR(INDEX(${name},${first}),"${otherwise}")`);
  };
}

/** Whether the line has a price of its own, or no products that could price it. */
function ownPrice({ listed, of }: Columns): string {
  return `(${listed("cost")}<>"")+(${of("asked")}="")>0`;
}

const SOURCES: Readonly<Record<string, Origin>> = {
  waste: { label: "Waste", source: "by definition: the mean of its products, weighed by amount" },
  price: { label: "Unit cost", source: "by definition: the mean of its products, weighed by amount" },
};

const TERMS: Readonly<Record<string, (columns: Columns) => string>> = {
  waste: (c) => orElse(c, "waste", `IF(${c.of("asked")}=0,0,${sum(c, "AskWasted")}/${c.of("asked")})`),
  minimum: (c) => orElse(c, "minimum", sum(c, "AskMinimums")),
  pack: (c) => {
    const largest = `MAXIFS(AskPacks,AskLines,${c.at("code")})`;
    return orElse(c, "pack", `IF(${largest}>0,${largest},1)`);
  },
  kind: word("kind", "AskKinds", "material"),
  supplier: word("supplier", "AskSuppliers", ""),
  taxable: word("taxable", "AskTaxables", "yes"),
  mark: (c) => {
    const invented = `COUNTIFS(AskLines,${c.at("code")},AskCounts,">0",AskMarks,"${MARK}")>0`;
    return `IF(${bought(c)},IF(${ownPrice(c)},${c.listed("mark")}&"",IF(${invented},"${MARK}","")),"")`;
  },
};

/** Each product in packs of its own, or the line in its own. */
function orderOf({ at, of }: Columns): string {
  const [least, each] = [at("least"), of("each")];
  return `IF(${least}="","",IF(${least}<=0,0,IF(${each}>0,ROUND(${each},6),${inPacks(least, at("pack"))})))`;
}

/** The mean of the products' prices by how much is bought of each, where the line has no price of its own. */
function priceOf(columns: Columns): string {
  const { listed, at, of } = columns;
  const missing = `COUNTIFS(AskLines,${at("code")},AskCosts,"${NO_PRICE}")>0`;
  const mean = `IF(${missing},"",ROUND(${sum(columns, "AskCosts")}/${of("bought")},4))`;
  return `IF(${listed("cost")}<>"",ROUND(${listed("cost")},4),IF(${of("bought")}=0,"",${mean}))`;
}

function freightOf(columns: Columns): string {
  const { listed } = columns;
  const ofProducts = `IF(${ownPrice(columns)},0,${sum(columns, "AskFreights")})`;
  return `IF(${bought(columns)},IF(${listed("freight")}<>"",${listed("freight")}+0,${ofProducts}),0)`;
}

function bought({ at }: Columns): string {
  return BOUGHT.replaceAll("[order]", at("order"));
}

/** All freight has the price of what the other lines' freight comes to, and is bought as they are. */
function freightLine(s: SheetLayout, table: TableRef, typed: Ref, row: number): void {
  const at = (key: string): string => {
    const { top, left } = table.cell(key, row);
    return cellAddress(top, left);
  };
  const { least, order } = workedOut(1);
  for (const { key, title: label, source, formula } of [least, order]) {
    fill(
      s,
      table.cell(key, row),
      String(formula).replace(/\[(\w+)\]/g, (_, other: string) => at(other)),
      source === undefined ? { label } : { label, source: s.job.pick(source) },
    );
  }
  cellOf(s, table.cell("freight", row)).value = 0;
  const all = `IF(SUM(TakeoffFreights)=0,"",ROUND(SUM(TakeoffFreights),4))`;
  fill(s, table.cell("price", row), `IF(${typed.address}="",${all},ROUND(${typed.address},4))`);
}
