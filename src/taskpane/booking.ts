import { areaName, type Area } from "../xlsx/address";
import type { Change, Grid } from "../host/port";
import { TAKEOFF_KEYS } from "../workbook/sheets/takeoff/takeoffColumns";
import { counted } from "./counted";

/** The names that `bookOrders` needs, in its order. */
export const BOOKING_PLACES = ["TakeoffLines", "TakeoffOpen", "SupplierTable", "OrderLines"] as const;

/** Lines for the order book, and why other lines stay out. */
export interface Booking {
  readonly change: Change | undefined;
  readonly lines: number;
  /** Suppliers without an order number, whose lines wait. */
  readonly unnumbered: readonly string[];
  /** Lines that have no code to be found by. */
  readonly uncoded: number;
  /** Lines for which the book has no room. */
  readonly crowded: number;
}

/** Enters what Takeoff still asks of each numbered supplier below the last line of the order book, dated today. */
export function bookOrders([takeoff, open, suppliers, book]: readonly Grid[], place: Area, today: number): Booking {
  const numbers = new Map((suppliers ?? []).map(([supplier, order]) => [String(supplier), String(order ?? "")]));
  const unnumbered = new Set<string>();
  let uncoded = 0;
  const rows = (takeoff ?? []).flatMap((row, index) => {
    const cell = (key: (typeof TAKEOFF_KEYS)[number]) => row[TAKEOFF_KEYS.indexOf(key)] ?? "";
    const quantity = open?.[index]?.[0];
    const [supplier, code] = [String(cell("supplier")), String(cell("code"))];
    if (typeof quantity !== "number" || !(quantity > 0) || supplier === "") return [];
    const order = numbers.get(supplier) ?? "";
    if (order === "") unnumbered.add(supplier);
    else if (code === "") uncoded++;
    else return [[order, code, quantity, cell("unit"), cell("price"), supplier, "", today]];
    return [];
  });
  const used = (book ?? []).reduce((last, row, index) => (row.some((cell) => cell !== "") ? index + 1 : last), 0);
  const values = rows.slice(0, Math.max(0, (book?.length ?? 0) - used));
  const top = place.top + used;
  // The day stands right of what RILL.RECONCILE reads.
  const area = { ...place, top, bottom: top + values.length - 1, right: place.right + 1 };
  return {
    change: values.length > 0 ? { place: areaName(area), values } : undefined,
    lines: values.length,
    unnumbered: [...unnumbered],
    uncoded,
    crowded: rows.length - values.length,
  };
}

/** What was entered and what was not, in sentences. */
export function bookingWords({ lines, unnumbered, uncoded, crowded }: Booking): string {
  return [
    lines > 0
      ? `${counted(lines, "line")} entered at the end of the order book on Orders.`
      : "Nothing was entered: Takeoff has nothing left to order from a supplier with an order number.",
    unnumbered.length > 0 ? `Give an order number on Orders first: ${unnumbered.join(", ")}.` : "",
    uncoded > 0 ? `Left out for want of a code on Takeoff: ${counted(uncoded, "line")}.` : "",
    crowded > 0 ? `No free row in the book for ${counted(crowded, "line")}.` : "",
  ]
    .filter(Boolean)
    .join(" ");
}
