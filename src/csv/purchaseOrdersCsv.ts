import { fromCents, lineCents, sumCents } from "../calc/money/cents";
import type { CsvStyle } from "./csvStyle";
import { writeCsv } from "./writeCsv";

/** One line of a purchase order. */
export interface PurchaseLine {
  readonly order: string;
  readonly supplier: string;
  /** yyyy-mm-dd, or blank. */
  readonly wanted: string;
  readonly code: string;
  readonly description: string;
  /** Which of the item is meant: its size, kind or name; blank where the description says it all. */
  readonly which: string;
  readonly quantity: number;
  readonly unit: string;
  readonly price: number;
}

const HEADING = ["Order", "Supplier", "Wanted", "Code", "Description", "Which", "Quantity", "Unit", "Price", "Amount"];

/** Purchase orders as a CSV file: every line with its rounded amount, and the total of each order behind its lines. */
export function purchaseOrdersCsv(lines: readonly PurchaseLine[], style?: CsvStyle): string {
  const orders = new Map<string, PurchaseLine[]>();
  for (const line of lines) {
    const order = orders.get(line.order);
    if (order) order.push(line);
    else orders.set(line.order, [line]);
  }
  const rows = [...orders].flatMap(([order, own]) => {
    const cents = own.map(({ quantity, price }) => lineCents(quantity, price));
    return [
      ...own.map((line, index) => [
        order,
        line.supplier,
        line.wanted,
        line.code,
        line.description,
        line.which,
        line.quantity,
        line.unit,
        line.price,
        fromCents(cents[index] ?? 0),
      ]),
      [order, own[0]?.supplier ?? "", "", "", `Total ${order}`, "", "", "", "", fromCents(sumCents(cents))],
    ];
  });
  return writeCsv(HEADING, rows, style);
}
