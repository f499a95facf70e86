import type { Content, TDocumentDefinitions } from "pdfmake/interfaces";
import { companyLines, numberIn, textIn, type PaperCells } from "./cells";
import { heading, pairs, paper, quiet, table, title } from "./look";
import { wordsFor } from "./words";

/** Columns of the suppliers' table and of the order that is printed. */
const SUPPLIER = { name: 0, order: 1, wanted: 2, loads: 3, remark: 6 } as const;
const LINE = { what: 0, code: 1, unit: 2, quantity: 3, price: 4, amount: 5 } as const;

/** Suppliers that this job orders from. */
export function suppliersOf(cells: PaperCells): string[] {
  return cells
    .rows("SupplierTable")
    .map((row) => textIn(row, SUPPLIER.name))
    .filter((name) => name !== "");
}

/**
 * One purchase order, of the supplier that the workbook shows on Orders, and of nobody else.
 * `today` is the day of the order, in the workbook's days.
 */
export function supplierPack(cells: PaperCells, today: number): TDocumentDefinitions {
  const words = wordsFor(cells.system, cells.text("Currency"));
  const name = cells.text("PrintedName");
  const supplier = cells.rows("SupplierTable").find((row) => textIn(row, SUPPLIER.name) === name) ?? [];
  const order = textIn(supplier, SUPPLIER.order);
  const loads = numberIn(supplier, SUPPLIER.loads);
  const lines = cells.rows("PrintedOrder").filter((row) => textIn(row, LINE.what) !== "");
  const theirs = codes(cells, "RateCodes", "RateTheirCodes");
  const which = codes(cells, "ParticularCodes", "ParticularTexts");
  // A supplier without codes of his own needs no column for them.
  const coded = lines.some((row) => theirs.get(textIn(row, LINE.code)));
  const rows = lines.map((row) => {
    const code = textIn(row, LINE.code);
    const particular = which.get(code);
    return [
      ...(coded ? [theirs.get(code) || "–"] : []),
      `${textIn(row, LINE.what)}${particular ? `\n${particular}` : ""}`,
      (numberIn(row, LINE.quantity) ?? 0).toLocaleString("en-US", { maximumFractionDigits: 2 }),
      textIn(row, LINE.unit),
      words.money(numberIn(row, LINE.price)),
      words.money(numberIn(row, LINE.amount)),
      code,
    ];
  });
  const draft = cells.text("OrderDraft");
  const remark = textIn(supplier, SUPPLIER.remark);
  return paper(
    cells.system,
    {
      title: `Purchase order ${order} to ${name}`,
      foot: `${cells.text("CompanyName")} · Order ${order}`,
      draft: order === "" || draft !== "",
    },
    [
      {
        columns: [
          { width: "*", stack: [title(cells.text("CompanyName"), 16), ...companyLines(cells).map(quiet)] },
          { width: 170, stack: [title("Purchase order", 18)], alignment: "right" },
        ],
      },
      {
        margin: [0, 12, 0, 4],
        columns: [
          {
            width: "*",
            stack: [
              pairs(
                [
                  ["To", name],
                  ["Deliver to", cells.text("SiteAddress")],
                  ["For the job", cells.text("JobName")],
                  ["Access", cells.text("AccessNote")],
                ],
                62,
              ),
            ],
          },
          {
            width: 210,
            stack: [
              pairs(
                [
                  ["Order no.", order || "______"],
                  ["Date", words.day(today)],
                  ["Wanted on", wanted(numberIn(supplier, SUPPLIER.wanted), words.day)],
                  ["Deliveries", loads === undefined ? "as you can" : `${loads}`],
                ],
                62,
              ),
            ],
          },
        ],
      },
      ...(remark === "" ? [] : [{ text: remark, bold: true, margin: [0, 2, 0, 4] } satisfies Content]),
      ...(draft === "" ? [] : [{ text: draft, bold: true, margin: [0, 2, 0, 4] } satisfies Content]),
      heading("Please deliver"),
      rows.length === 0
        ? quiet("Nothing is left to order from this supplier.")
        : table(
            [
              ...(coded ? [{ title: "Your code" }] : []),
              { title: "What", width: "*" as const },
              { title: "Quantity", right: true },
              { title: "Unit" },
              { title: "Price", right: true },
              { title: "Amount", right: true },
              { title: "Our code" },
            ],
            [
              ...rows,
              [...(coded ? [""] : []), "Total without tax", "", "", "", words.money(cells.number("PrintedTotal")), ""],
            ],
            { strong: (row) => row === rows.length, padding: 3 },
          ),
      {
        margin: [0, 10, 0, 0],
        text: `Please confirm price and day. Put ${order === "" ? "the order number" : `number ${order}`} on ${cells.system === "US" ? "tickets" : "delivery notes"} and invoices.`,
      },
    ],
  );
}

function wanted(day: number | undefined, text: (day: number) => string): string {
  return day === undefined ? "to be agreed" : text(day);
}

/** One column of a table by another of the same rows. */
function codes(cells: PaperCells, keys: string, values: string): Map<string, string> {
  const texts = cells.rows(values);
  return new Map(cells.rows(keys).map((row, index) => [textIn(row, 0), textIn(texts[index] ?? [], 0)]));
}
