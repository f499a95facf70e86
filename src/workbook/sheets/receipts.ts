import { defineSheet } from "../layout";
import { UNIT_COST_FORMAT } from "./takeoff/takeoffColumns";
import { INVOICES, TICKETS } from "./money/demoPapers";

/** Rows laid out, and rows the papers may grow to. */
const ROWS = 20;
const MOST_ROWS = 2000;
const QUANTITY = { min: -1_000_000, max: 1_000_000 } as const;

/** Delivery tickets and invoices, line by line as they come. */
export const receipts = defineSheet({
  name: "Receipts",
  order: 16,
  build(s) {
    s.widths([13, 16, 11, 9, 14, 12, 3, 13, 16, 11, 9, 12, 14, 12]);
    s.takesPictures();
    s.title(
      "Receipts",
      "Enter delivery tickets on the left and invoices on the right, line by line as they come; Reconcile squares them.",
    );
    s.note(
      "Any unit will do: tons, pounds, tonnes, kilograms, cubic yards or m³ of stone; blank means the order's unit. " +
        "Goods sent back and credits are below zero. Write freight and sales tax of an invoice as items of these names. " +
        "Reconcile names rows as counted below the headings, here and in the order book.",
    );
    s.put(s.row, 1, { value: "Delivery tickets", style: "section", across: 6 });
    s.put(s.row, 8, { value: "Invoices", style: "section", across: 7 });
    s.row++;
    const top = s.row;
    const order = {
      key: "order",
      title: "Order no.",
      kind: "text" as const,
      input: { max: 20, message: "Number of the purchase order." },
    };
    const item = {
      key: "item",
      title: "Item",
      kind: "text" as const,
      input: { max: 100, message: "Code of the item, as ordered." },
    };
    const unit = {
      key: "unit",
      title: "Unit",
      kind: "text" as const,
      input: { max: 20, message: "Unit as on the paper; blank is the order's." },
    };
    const quantity = (message: string) => ({
      key: "quantity",
      title: "Quantity",
      kind: "number" as const,
      input: { ...QUANTITY, message },
    });
    s.table({
      name: "TicketLines",
      rows: ROWS,
      open: { rows: MOST_ROWS },
      columns: [
        order,
        item,
        quantity("Quantity as on the ticket; below zero was sent back."),
        unit,
        {
          key: "ticket",
          title: "Ticket no.",
          kind: "text",
          input: { max: 40, message: "Number of the delivery ticket." },
        },
        { key: "day", title: "Came on", kind: "date", input: { message: "Day of the delivery." } },
      ],
      demo: TICKETS,
    });
    s.row = top;
    s.table({
      name: "InvoiceLines",
      at: 8,
      rows: ROWS,
      open: { rows: MOST_ROWS },
      columns: [
        order,
        item,
        quantity("Quantity as on the invoice; below zero is a credit."),
        unit,
        {
          key: "price",
          title: "Price",
          kind: "money",
          format: UNIT_COST_FORMAT,
          input: { ...QUANTITY, message: "Price of one unit as on the invoice." },
        },
        { key: "invoice", title: "Invoice no.", kind: "text", input: { max: 40, message: "Number of the invoice." } },
        { key: "day", title: "Dated", kind: "date", input: { message: "Day of the invoice." } },
      ],
      demo: INVOICES,
    });
    s.print({ landscape: true, titleRows: [1, top] });
    s.freeze(top);
  },
});
