import type { DeliveryLine, InvoiceLine, OrderLine } from "../../../../src/calc/money/reconcile/lines";

/*
 * Twenty lines with every kind of disagreement, worked by hand. Days are counted from the first of the month.
 * Each case is one item of one order; its number stands in the item's code.
 * Amounts in whole money. Tolerance 2 %.
 */

type Ordered = [order: string, item: string, quantity: number, unit: string, price: number, density?: number];
type Delivered = [
  order: string,
  item: string,
  quantity: number | undefined,
  unit: string,
  ticket: string,
  day?: number,
];
type Invoiced = [
  order: string,
  item: string,
  quantity: number | undefined,
  unit: string,
  price: number,
  invoice: string,
  day?: number,
];

const SUPPLIERS: Readonly<Record<string, string>> = { "PO-1": "Quarry", "PO-2": "Pipe yard", "PO-3": "Plant hire" };

const ORDERS: Ordered[] = [
  ["PO-1", "01-AGREES", 24, "ton", 32],
  ["PO-1", "02-SHORT", 20, "ton", 30],
  ["PO-1", "03-OVER", 10, "ton", 40],
  ["PO-1", "04-UNITS", 24, "ton", 32],
  ["PO-1", "05-VOLUME", 15, "m3", 50, 1600],
  ["PO-1", "06-NODENSITY", 10, "yd3", 45],
  ["PO-1", "07-SPLIT", 30, "t", 20],
  ["PO-1", "08-TICKET2X", 12, "ton", 35],
  ["PO-2", "09-INVOICE2X", 6, "each", 80],
  ["PO-2", "10-PRICE", 100, "ft", 2.15],
  ["PO-2", "11-EARLY", 40, "ft", 3],
  ["PO-2", "12-CREDIT", 10, "each", 25],
  ["PO-2", "13-CHANGED", 8, "roll", 110],
  ["PO-2", "13-CHANGED", 3, "roll", 120],
  ["PO-2", "14-NOTHING", 5, "bag", 9.5],
  ["PO-2", "15-CODE-A", 4, "each", 60],
  ["PO-3", "16-PREPAID", 2, "day", 320],
  ["PO-3", "freight", 2, "load", 85],
];

const DELIVERIES: Delivered[] = [
  ["PO-1", "01-AGREES", 24.3, "ton", "T1", 3],
  ["PO-1", "02-SHORT", 14, "ton", "T2", 3],
  ["PO-1", "03-OVER", 12, "ton", "T3", 3],
  ["PO-1", "04-UNITS", 48000, "lb", "T4", 3],
  ["PO-1", "05-VOLUME", 24, "t", "T5", 3],
  ["PO-1", "06-NODENSITY", 13.5, "ton", "T6", 3],
  ["PO-1", "07-SPLIT", 11, "t", "T7a", 3],
  ["PO-1", "07-SPLIT", 10000, "kg", "T7b", 4],
  ["PO-1", "07-SPLIT", 9, "tonne", "T7c", 5],
  ["PO-1", "08-TICKET2X", 12, "ton", "T8", 3],
  ["PO-1", "08-TICKET2X", 12, "ton", "t8", 3],
  ["PO-2", "09-INVOICE2X", 6, "ea", "T9", 3],
  ["PO-2", "10-PRICE", 100, "ft", "T10", 3],
  ["PO-2", "11-EARLY", 40, "ft", "T11", 9],
  ["PO-2", "12-CREDIT", 10, "pcs", "T12", 3],
  ["PO-2", "12-CREDIT", -2, "pcs", "T12r", 6],
  ["PO-2", "13-CHANGED", 11, "rolls", "T13", 3],
  ["PO-2", "15CODEA", 4, "", "T15", 3],
  ["", "17-NOORDER", 3, "ton", "T17", 3],
  ["PO-9", "18-UNKNOWN", 3, "ton", "T18", 3],
];

const INVOICES: Invoiced[] = [
  ["PO-1", "01-AGREES", 24.3, "ton", 32, "I1", 10],
  ["PO-1", "02-SHORT", 20, "ton", 30, "I1", 10],
  ["PO-1", "03-OVER", 12, "ton", 40, "I1", 10],
  ["PO-1", "04-UNITS", 24, "ton", 32, "I1", 10],
  ["PO-1", "05-VOLUME", 24, "t", 31.25, "I1", 10],
  ["PO-1", "06-NODENSITY", 13.5, "ton", 33, "I1", 10],
  ["PO-1", "07-SPLIT", 21, "t", 20, "I1", 10],
  ["PO-1", "08-TICKET2X", 12, "ton", 35, "I1", 10],
  ["PO-1", "Sales tax", undefined, "", 299.14, "I1", 10],
  ["PO-2", "09-INVOICE2X", 6, "each", 80, "I2", 10],
  ["PO-2", "09-INVOICE2X", 6, "each", 80, "I2", 12],
  ["PO-2", "10-PRICE", 100, "ft", 2.4, "I2", 10],
  ["PO-2", "11-EARLY", 40, "ft", 3, "I3", 8],
  ["PO-2", "12-CREDIT", 10, "each", 25, "I2", 10],
  ["PO-2", "12-CREDIT", -2, "each", 25, "C1", 12],
  ["PO-2", "13-CHANGED", 8, "roll", 110, "I2", 10],
  ["PO-2", "13-CHANGED", 3, "roll", 120, "I2", 10],
  ["PO-2", "15CODEA", 4, "", 60, "I2", 10],
  ["PO-3", "16-PREPAID", 2, "days", 320, "I4", 10],
  ["PO-3", "freight", 2, "load", 85, "I4", 10],
  ["PO-3", "fuel surcharge", undefined, "", 45, "I4", 10],
];

export const orders = ORDERS.map(([order, item, quantity, unit, price, density], index): OrderLine => ({
  order,
  item,
  quantity,
  unit,
  price,
  density,
  supplier: SUPPLIERS[order],
  row: index + 1,
}));
export const deliveries = DELIVERIES.map(([order, item, quantity, unit, ticket, date], index): DeliveryLine => ({
  order: order || undefined,
  item,
  quantity,
  unit: unit || undefined,
  ticket,
  date,
  row: index + 1,
}));
export const invoices = INVOICES.map(([order, item, quantity, unit, price, invoice, date], index): InvoiceLine => ({
  order,
  item,
  quantity,
  unit: unit || undefined,
  price,
  invoice,
  date,
  row: index + 1,
}));

/** What each line comes to, by hand: [ordered, delivered, invoiced] then money [ordered, billed, price, to come, at stake]. */
export const EXPECTED: Readonly<
  Record<
    string,
    {
      readonly quantities?: readonly [number, number, number];
      readonly amounts: readonly [number, number, number, number, number];
      readonly state: string;
      readonly says: readonly string[];
    }
  >
> = {
  // 24.3 of 24 tons is 1.25 % over, within 2 %; 24.3 × 32 = 777.60; ordered 768.00. Nothing at stake.
  "01-AGREES": { quantities: [24, 24.3, 24.3], amounts: [768, 777.6, 0, 0, 0], state: "Agrees", says: ["Agrees."] },
  // 6 tons to come (180.00); billed 20 × 30 = 600 for 14 tons that came, 420: 180 at stake.
  "02-SHORT": {
    quantities: [20, 14, 20],
    amounts: [600, 600, 0, 180, 180],
    state: "Query",
    says: ["6 ton invoiced that did not come", "Short: 6 ton still to come"],
  },
  // 2 tons nobody ordered, billed: 2 × 40 = 80 at stake.
  "03-OVER": {
    quantities: [10, 12, 12],
    amounts: [400, 480, 0, 0, 80],
    state: "Query",
    says: ["Over: 2 ton more delivered than ordered"],
  },
  // 48,000 lb / 2,000 = 24 tons.
  "04-UNITS": { quantities: [24, 24, 24], amounts: [768, 768, 0, 0, 0], state: "Agrees", says: ["Agrees."] },
  // 24 t / 1.6 t/m³ = 15 m³; 31.25 a tonne × 1.6 = 50 a cubic metre.
  "05-VOLUME": { quantities: [15, 15, 15], amounts: [750, 750, 0, 0, 0], state: "Agrees", says: ["Agrees."] },
  // Tons meet cubic yards only with a density: nothing counted, all of 13.5 × 33 = 445.50 at stake, 450 to come.
  "06-NODENSITY": {
    quantities: [10, 0, 0],
    amounts: [450, 445.5, 0, 450, 445.5],
    state: "Query",
    says: ["Delivery row 6 not counted: ton meets yd3 only with a density on the order line"],
  },
  // 11 + 10 + 9 = 30 t in three loads; 21 invoiced, 9 not yet.
  "07-SPLIT": {
    quantities: [30, 30, 21],
    amounts: [600, 420, 0, 0, 0],
    state: "Open",
    says: ["9 t delivered and not invoiced yet", "Came in 3 deliveries"],
  },
  // The ticket counts once: 12 tons.
  "08-TICKET2X": {
    quantities: [12, 12, 12],
    amounts: [420, 420, 0, 0, 0],
    state: "Query",
    says: ["Ticket t8 entered twice; counted once"],
  },
  // Billed 480 twice = 960; due once: 480 at stake.
  "09-INVOICE2X": {
    quantities: [6, 6, 6],
    amounts: [480, 960, 0, 0, 480],
    state: "Query",
    says: ["Invoice I2 entered twice; pay once"],
  },
  // 100 × (2.40 - 2.15) = 25.
  "10-PRICE": {
    quantities: [100, 100, 100],
    amounts: [215, 240, 25, 0, 25],
    state: "Query",
    says: ["Price 2.4 instead of 2.15 per ft on I2: 25.00 too much"],
  },
  // Invoice of the 8th, ticket of the 9th; everything else agrees.
  "11-EARLY": {
    quantities: [40, 40, 40],
    amounts: [120, 120, 0, 0, 0],
    state: "Query",
    says: ["Invoice I3 is dated before its delivery"],
  },
  // 10 - 2 sent back = 8; billed 250 - 50 = 200; 2 × 25 = 50 to come again.
  "12-CREDIT": {
    quantities: [10, 8, 8],
    amounts: [250, 200, 0, 50, 0],
    state: "Open",
    says: ["Short: 2 each still to come", "2 each sent back", "Credit of 50.00 on C1 counted"],
  },
  // 8 × 110 + 3 × 120 = 1240, and each invoice line meets one of the two prices.
  "13-CHANGED": {
    quantities: [11, 11, 11],
    amounts: [1240, 1240, 0, 0, 0],
    state: "Agrees",
    says: ["Order changed: 2 lines added together make 11 roll, at prices 110 and 120"],
  },
  // 5 × 9.50 = 47.50 to come.
  "14-NOTHING": {
    quantities: [5, 0, 0],
    amounts: [47.5, 0, 0, 47.5, 0],
    state: "Open",
    says: ["Nothing delivered yet."],
  },
  // Its papers carry a wrong code: on the order's own line nothing came, 4 × 60 = 240 to come.
  "15-CODE-A": {
    quantities: [4, 0, 0],
    amounts: [240, 0, 0, 240, 0],
    state: "Open",
    says: ["Nothing delivered yet."],
  },
  "15CODEA": {
    quantities: [0, 4, 4],
    amounts: [0, 240, 0, 0, 240],
    state: "Query",
    says: ["Not on the order; is 15-CODE-A meant?"],
  },
  // Two days of plant invoiced, no ticket: 640 at stake and to come.
  "16-PREPAID": {
    quantities: [2, 0, 2],
    amounts: [640, 640, 0, 640, 640],
    state: "Query",
    says: ["2 day invoiced before any delivery"],
  },
  // Freight that was ordered needs no ticket.
  freight: { quantities: [2, 2, 2], amounts: [170, 170, 0, 0, 0], state: "Agrees", says: ["Agrees."] },
  "17-NOORDER": { quantities: [0, 3, 0], amounts: [0, 0, 0, 0, 0], state: "Query", says: ["Names no order"] },
  "18-UNKNOWN": { quantities: [0, 3, 0], amounts: [0, 0, 0, 0, 0], state: "Query", says: ["There is no order PO-9"] },
  // Goods on I1: 777.60 + 600 + 480 + 768 + 750 + 445.50 + 420 + 420 = 4661.10; 299.14 / 4661.10 = 6.42 %.
  "Sales tax": {
    amounts: [0, 299.14, 0, 0, 0],
    state: "Agrees",
    says: ["Tax on invoice I1 is 6.42% of the goods"],
  },
  // A charge without a quantity stands for itself.
  "fuel surcharge": {
    amounts: [0, 45, 0, 0, 45],
    state: "Query",
    says: ["Freight on invoice I4 was not on the order"],
  },
};
