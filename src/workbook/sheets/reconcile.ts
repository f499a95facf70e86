import { GRAND_TOTAL } from "../../calc/money/reconcile/totals";
import { whenFilled } from "../layout/conditions";
import { cellOf, fillDown } from "./money/cells";
import { defineSheet, Ref, type SheetLayout, type SpillRef } from "../layout";
import { areaAddress } from "../layout/address";

/** Lines and totals the sheet has room for. */
const MOST_ROWS = 400;
/** Lines of text that a verdict takes at most, as a rule. */
const VERDICT_LINES = 3;

/** Orders, tickets and invoices side by side, with what to query and what is at stake. */
export const reconcile = defineSheet({
  name: "Reconcile",
  order: 17,
  turn: 1,
  build(s) {
    s.widths([18, 15, 14, 8, 40, 7, 9, 9, 12.2, 9, 9, 9, 10, 9, 9]);
    s.title(
      "Reconcile",
      "Read the verdicts before you pay: every order, ticket and invoice of Orders and Receipts is compared here.",
      { amounts: true },
    );
    s.section("At a glance");
    s.input({
      name: "QuantityTolerance",
      label: "Quantities agree within",
      kind: "share",
      usual: 0.02,
      min: 0,
      max: 0.25,
      message: "Share by which delivered and invoiced quantities may differ unremarked.",
    });
    const total = glance(s);
    checks(s);
    s.checksHere();
    s.section("Order by order");
    s.print({ landscape: true, titleRows: [s.row, s.row] });
    const table = s.spill({
      name: "Reconciled",
      header: "function",
      rows: MOST_ROWS,
      open: true,
      lines: VERDICT_LINES,
      formula: "=RILL.RECONCILE(OrderLines,TicketLines,InvoiceLines,QuantityTolerance,Currency,Units)",
      needs: ["OrderQuantities"],
      columns: [
        ...Array.from({ length: 6 }, () => ({ kind: "text" }) as const),
        ...Array.from({ length: 4 }, () => ({ kind: "number", format: "#,##0.00" }) as const),
        ...Array.from({ length: 5 }, () => ({ kind: "money" }) as const),
      ],
    });
    total(table);
    s.define("ReconciledHead", table.anchor.top, table.anchor.left, table.anchor.bottom, table.anchor.left);
    s.define("ReconciledOrders", table.body.top, table.body.left, table.body.bottom, table.body.left);
    const verdicts = table.body.left + 4;
    s.define("ReconciledVerdicts", table.body.top, verdicts, table.body.bottom, verdicts);
    marks(s, table);
  },
});

/** The grand totals, above the table they come from; gives what fills them in once the table is laid out. */
function glance(s: SheetLayout): (table: SpillRef) => void {
  // In the order of the table's columns of money.
  const lines: readonly (readonly [name: string, label: string, note: string])[] = [
    ["ReconciledOrdered", "Ordered", "Committed: every line of the order book at its price."],
    ["ReconciledBilled", "Billed", "Every invoice line as it stands, freight, tax and credits included."],
    ["ReconciledPriceDifference", "Invoiced above ordered prices", "Below zero: invoiced for less."],
    ["ReconciledToCome", "Still to come", "Ordered and not delivered yet."],
    ["ReconciledAtStake", "At stake", "Paid too much if every invoice were paid as it stands."],
  ];
  const cells = lines.map(([name, label, note]) => {
    const cell = s.result({ name, label, kind: "money", note, strong: name === "ReconciledAtStake", formula: "=0" });
    delete cellOf(s, cell).formula;
    return cell;
  });
  s.result({
    name: "CommittedLeft",
    label: "Estimated cost of goods not ordered yet",
    kind: "money",
    note: "Takeoff less the order book; below zero: more was committed than estimated.",
    formula: "=ROUND(TakeoffTotal-OrderedAmount,MoneyDigits)",
    needs: ["OrderQuantities", "TakeoffTotal"],
  });
  return ({ body }) => {
    const [first, last] = [cells[0], cells[cells.length - 1]];
    if (!first || !last) return;
    const amounts = { ...body, left: body.right - cells.length + 1 };
    const totals = `INDEX(${areaAddress(amounts, true)},MATCH("${GRAND_TOTAL}",ReconciledOrders,0),0)`;
    const column = new Ref(s.name, first.top, first.left, last.top, first.left);
    fillDown(s, column, whenFilled(`TRANSPOSE(${totals})`, ["OrderQuantities"]));
  };
}

function marks(s: SheetLayout, table: SpillRef): void {
  const { top, left, bottom, right } = table.body;
  s.sheet.conditionals.push(
    // The first rule that gives a fill wins it, and white letters need theirs.
    {
      area: { top, left: left + 3, bottom, right: left + 3 },
      formula: `=$D${top}="Query"`,
      style: { bold: true, color: "FFFFFF", fill: "5A1F14" },
    },
    {
      area: { top, left, bottom, right },
      formula: `=OR(LEFT($A${top},5)="Total",$A${top}="${GRAND_TOTAL}")`,
      style: { bold: true, fill: "E6ECEC" },
    },
  );
}

function checks(s: SheetLayout): void {
  s.check({
    label: "Money at stake",
    value: "=ReconciledAtStake",
    limit: 0,
    cure: "Settle the lines marked Query with the supplier before paying.",
    fix: "Reconciled",
    kind: "money",
    weight: "look",
    needs: ["ReconciledAtStake"],
  });
  s.check({
    label: "Billed over ordered",
    value: "=MAX(0,ROUND(ReconciledBilled-ReconciledOrdered,MoneyDigits))",
    limit: 0,
    cure: "Invoices ask for more than was ordered in all: look for freight, price and quantity among the verdicts.",
    fix: "Reconciled",
    kind: "money",
    weight: "look",
    needs: ["ReconciledBilled"],
  });
  const unread = 'COUNTIF(ReconciledVerdicts,"* was not read: *")';
  s.check({
    label: "Rows that could not be read",
    value: `=${unread}`,
    limit: 0,
    cure: "Fix the rows that their lines here name; no sum has them.",
    fix: "Reconciled",
    kind: "count",
    needs: ["OrderQuantities"],
  });
  s.check({
    label: "Room for every line",
    value: `=N(COUNTIF(ReconciledOrders,"${GRAND_TOTAL}")=1)`,
    sign: "at least",
    limit: 1,
    cure: `More than ${MOST_ROWS} lines and totals: use RILL.RECONCILE on a sheet of your own.`,
    cureNow: `IF(ISERROR(ReconciledHead),"The table could not be made: point at the error in its first cell to read why.","More than ${MOST_ROWS} lines and totals: use RILL.RECONCILE on a sheet of your own.")`,
    fix: "Reconciled",
    kind: "answer",
    needs: ["OrderQuantities"],
  });
}
