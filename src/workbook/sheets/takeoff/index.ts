import { COST_KIND_WORDS } from "../../../calc/money/costKinds";
import { defineSheet, type SheetLayout, type TableRef } from "../../layout";
import { cellAddress } from "../../layout/address";
import { asks } from "./asks";
import { termsOfLines } from "./lineTerms";
import { particulars } from "./particulars";
import { pricesAsShipped } from "../rates/asShipped";
import { fillOwn, ownTable, OWN_ROWS, usedColumns } from "./ownLines";
import { supplierNumbers } from "./supplierNumbers";
import { TAKEOFF_KEYS, TAKEOFF_NAMES } from "./takeoffColumns";
import { fillLines, sheetColumns } from "./takeoffLines";

/** Points; a little less than usual, so that all lines of the sheets stand on one page. */
const LINE_HEIGHT = 17.6;

/** Every quantity of the job, with waste, rounded up to what can be bought, at the price list's prices. */
export const takeoff = defineSheet({
  name: "Takeoff",
  order: 11,
  turn: 1,
  build(s, job) {
    s.widths([34, 14, 6, 9, 8, 9, 6, 9, 10, 11, 14, 29, 9, 23, 9, 9, 13, 9, 14, 10, 9, 9, 9, 9, 9, 9]);
    s.title("Takeoff", "Read what the job needs and what to buy; add your own lines below.", { amounts: true });
    s.section("From the sheets");
    const head = s.row;
    const lines = s.table({ rows: job.takeoffLines.length, columns: sheetColumns(job) });
    s.freeze(head, 1);
    s.filter(head, lines.body.left, lines.body.bottom, lines.body.right);
    fillLines(s, job, lines);
    for (let { top: row } = lines.body; row <= lines.body.bottom; row++) s.sheet.heights.set(row, LINE_HEIGHT);
    s.section("Your own lines");
    s.note(
      "To order = need with waste, at least the minimum, rounded up to whole packs. Prices and packs come from Rates.",
    );
    s.link("Type or change them below the checks.", "OwnLines");
    const own = s.table({ name: "OwnLinesUsed", rows: OWN_ROWS, columns: usedColumns() });
    for (const [key, name] of Object.entries(TAKEOFF_NAMES)) {
      const at = lines.column(key);
      s.define(name, at.top, at.left, own.column(key).bottom, at.left);
    }
    s.define("TakeoffLines", lines.body.top, lines.body.left, own.body.bottom, lines.column("supplier").left);
    s.section("Together");
    s.result({
      name: "TakeoffTotal",
      label: "All lines",
      formula: `=IF(COUNT(TakeoffCosts)=0,"",SUM(TakeoffCosts))`,
      kind: "money",
      strong: true,
      note: "Without the crew's and machines' hours on Hours.",
    });
    // What follows is for the screen: paper as wide as all of it would be too small to read.
    s.print({ landscape: true, titleRows: [1, 2], lastColumn: TAKEOFF_KEYS.indexOf("taxable") + 1 });
    markUnused(s, lines, own);
    checks(s);
    s.checksHere();
    s.notPrinted();
    fillOwn(s, own, ownTable(s, own));
    particulars(s, job, asks(s, job, lines));
    termsOfLines(s, job, lines);
    pricesAsShipped(s, job);
    supplierNumbers(s, lines, own);
    s.skip();
    const kinds = COST_KIND_WORDS[job.system];
    s.table({
      rows: kinds.length,
      columns: [{ key: "kind", title: "Cost kinds", kind: "text", name: "CostKinds", fixed: kinds }],
    });
  },
});

/** Lines that need nothing stand back. */
function markUnused(s: SheetLayout, ...tables: readonly TableRef[]): void {
  for (const table of tables) {
    const { top, left, bottom } = table.body;
    const order = `$${cellAddress(top, table.column("order").left)}`;
    s.sheet.conditionals.push({
      area: { top, left, bottom, right: table.column("origin").left },
      formula: `=AND(ISNUMBER(${order}),${order}=0)`,
      style: { color: "8A959A", italic: true },
    });
  }
}

function checks(s: SheetLayout): void {
  const count = (word: string): string => `COUNTIF(TakeoffLooks,"${word}")`;
  const add = (
    label: string,
    word: string,
    cure: string,
    fix: string,
    more: { weight?: "look"; cureNow?: string } = {},
  ): void => {
    s.check({ label, value: `=${count(word)}`, limit: 0, cure, fix, kind: "count", ...more });
  };
  add(
    "Lines to order without a cost",
    "no cost",
    "Give it a cost on Rates under the code of the line, or type its unit cost.",
    "TakeoffPrices",
    {
      cureNow:
        'IFERROR("Not on Rates: "&INDEX(AskMissing,MATCH("?*",AskMissing,0))&". Add it there under that code, with a price.",' +
        '"Give it a cost on Rates under the code of the line, or type its unit cost.")',
    },
  );
  add(
    "Lines under no cost kind",
    "no cost kind",
    "Pick a cost kind for the line, here or on Rates; Price leaves it out otherwise.",
    "TakeoffKinds",
  );
  add(
    "Lines ordered short of the takeoff",
    "ordered short",
    "Order what is missing, or note on Takeoff why less was ordered.",
    "OrderLines",
    { weight: "look" },
  );
}
