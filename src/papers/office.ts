import { counted } from "../taskpane/counted";
import { costKindWord } from "../calc/money/costKinds";
import type { Content, TDocumentDefinitions } from "pdfmake/interfaces";
import { VERDICT } from "../workbook/layout";
import type { CellValue } from "../workbook/model";
import { summarize } from "../workbook/summary";
import { jobName, numberIn, textIn, type PaperCells } from "./cells";
import { draftReason } from "./draft";
import { heading, pairs, paper, quiet, table, title } from "./look";
import { wordsFor, type Words } from "./words";

/** What stays in the office: how the price is built up, what is to see to, what was bought for how much, and what is billed. */
export function officePack(cells: PaperCells): TDocumentDefinitions {
  const words = wordsFor(cells.system, cells.text("Currency"));
  const draft = draftReason(cells);
  return paper(
    cells.system,
    {
      title: `Price and orders of ${jobName(cells)}`,
      foot: `${jobName(cells)} · not for the client`,
      draft: false,
      landscape: true,
    },
    [
      title(jobName(cells), 16),
      quiet(`Office copy: costs, markups and margins. ${draft}`.trim()),
      glance(cells, words),
      ...build(cells, words),
      ...takeoff(cells, words),
      ...labor(cells, words),
      ...toSeeTo(cells),
      ...reconciliation(cells, words),
    ],
  );
}

function glance(cells: PaperCells, words: Words): Content {
  const results = summarize(cells.workbook)?.results ?? [];
  const currency = cells.text("Currency");
  const shown = results.map(({ label, value, unit }): [string, string] => [
    label,
    shownResult(value, unit, unit === currency ? words.money : undefined),
  ]);
  const half = Math.ceil(shown.length / 2);
  return { columns: [pairs(shown.slice(0, half), 190), pairs(shown.slice(half), 190)], margin: [0, 6, 0, 0] };
}

function shownResult(value: CellValue, unit: string, money: Words["money"] | undefined): string {
  if (typeof value !== "number") return String(value);
  return money ? money(value) : `${value.toLocaleString("en-US", { maximumFractionDigits: 2 })} ${unit}`;
}

/** Costs, markups and prices by kind, as on the sheet Price, of the options that are offered. */
function build(cells: PaperCells, words: Words): Content[] {
  const sheet = cells.sheet("Price");
  const head = sheet.findIndex((row) => textIn(row, 0) === "Cost" && textIn(row, 1) === "Markup");
  if (head < 0) return [];
  const end = sheet.findIndex((row, index) => index > head && textIn(row, 0) === "");
  const rows = sheet.slice(head + 1, end < 0 ? undefined : end);
  const names = sheet[head] ?? [];
  const used = names
    .map((_, column) => column)
    .filter((column) => column < 2 || rows.some((row) => numberIn(row, column) !== undefined));
  const shown = (row: readonly CellValue[], column: number): string => {
    const value = numberIn(row, column);
    if (value === undefined) return textIn(row, column);
    const label = textIn(row, 0);
    // The markups typed, and those in use where a price of one's own is wanted.
    if (/^(markup|in use)$/i.test(textIn(names, column)) || /^(gross|net) margin|^smallest markup/i.test(label))
      return words.share(value);
    // What each option builds is no amount.
    if (/^flow\b/i.test(label)) return words.figure(value, 0);
    return /^(crew days|boulders)\b/i.test(label) ? words.figure(value) : words.money(value);
  };
  const strong = rows.map((row) => textIn(row, 1) === "" && /price|cost|total/i.test(textIn(row, 0)));
  return [
    heading(`From cost to price; quoted is option ${cells.text("ChosenOption") || "none"}`),
    table(
      used.map((column) => ({
        title: textIn(names, column).replace(/ \(.*\)$/, ""),
        right: column > 0,
        width: column === 0 ? ("*" as const) : ("auto" as const),
      })),
      rows.map((row) => used.map((column) => shown(row, column))),
      { strong: (row) => strong[row] ?? false, padding: 1 },
    ),
  ];
}

/** The checks that fail or ask for a look, each once. */
function toSeeTo(cells: PaperCells): Content[] {
  const checks = summarize(cells.workbook)?.checks ?? [];
  const open = checks.filter(({ verdict }) => verdict !== VERDICT.ok && verdict !== VERDICT.blank);
  // A check that cannot be made yet asks for nothing of its own: the inputs it waits for are among the others.
  const waiting = checks.filter(({ verdict }) => verdict === VERDICT.blank).length;
  const wait =
    waiting === 0 ? [] : [quiet(`${counted(waiting, "more check")} cannot be made yet: inputs are still blank.`)];
  if (open.length === 0)
    return [heading("Checks"), waiting === 0 ? { text: "All checks pass." } : { text: "None fails." }, ...wait];
  const list = [
    heading(`Checks that need attention (${open.length})`),
    table(
      [
        { title: "Verdict" },
        { title: "Check", width: 170 },
        { title: "Where", width: 120 },
        { title: "What to do", width: "*" },
      ],
      open.map(({ verdict, label, where, cure }) => [verdict, label, where, cure]),
      { padding: 1 },
    ),
    ...wait,
  ];
  // Few stay together; many may not fit a page.
  return [{ stack: list, unbreakable: open.length <= MOST_TOGETHER }];
}

const MOST_TOGETHER = 12;

/** Columns of the takeoff. */
const TAKEOFF = { what: 0, code: 1, unit: 2, order: 7, price: 8, cost: 9, kind: 10, supplier: 11 } as const;

function takeoff(cells: PaperCells, words: Words): Content[] {
  const rows = cells.rows("TakeoffLines").filter((row) => (numberIn(row, TAKEOFF.order) ?? 0) > 0);
  if (rows.length === 0) return [];
  return [
    { ...(heading("Takeoff") as object), pageBreak: "before" } as Content,
    table(
      [
        { title: "What", width: "*" },
        { title: "Code" },
        { title: "Order", right: true },
        { title: "Unit" },
        { title: "Price", right: true },
        { title: "Cost", right: true },
        { title: "Kind" },
        { title: "Supplier", width: 160 },
      ],
      [
        ...rows.map((row) => [
          textIn(row, TAKEOFF.what),
          textIn(row, TAKEOFF.code),
          (numberIn(row, TAKEOFF.order) ?? 0).toLocaleString("en-US", { maximumFractionDigits: 2 }),
          textIn(row, TAKEOFF.unit),
          words.money(numberIn(row, TAKEOFF.price)),
          words.money(numberIn(row, TAKEOFF.cost)),
          textIn(row, TAKEOFF.kind),
          textIn(row, TAKEOFF.supplier),
        ]),
        ["All lines", "", "", "", "", words.money(cells.number("TakeoffTotal")), "", ""],
      ],
      { strong: (row) => row === rows.length, padding: 1 },
    ),
  ];
}

function labor(cells: PaperCells, words: Words): Content[] {
  const rows = pairs([
    ["Crew hours", `${words.figure(cells.number("LaborHours"), 1)} h at ${words.money(cells.number("CrewHourRate"))}`],
    [`Cost of ${costKindWord("labor", cells.system)}`, words.money(cells.number("LaborCost"))],
    ["Cost of machines", words.money(cells.number("MachineCost"))],
  ]);
  return [{ stack: [rows], unbreakable: true }];
}

/** Columns of the reconciliation: RECONCILE's own. */
export const SQUARED = {
  order: 0,
  supplier: 1,
  item: 2,
  state: 3,
  verdict: 4,
  ordered: 10,
  billed: 11,
  stake: 14,
} as const;

/** Order by order: the sums, and the lines that ask a question. */
function reconciliation(cells: PaperCells, words: Words): Content[] {
  const rows = cells.rows("Reconciled").filter((row) => textIn(row, SQUARED.order) !== "");
  if (rows.length === 0) return [];
  const sum = (row: readonly CellValue[]): boolean => /total/i.test(textIn(row, SQUARED.order));
  // The sums stand once for each order and once for each supplier; the first are enough here.
  const bySupplier = (row: readonly CellValue[]): boolean =>
    textIn(row, SQUARED.order) === `Total ${textIn(row, SQUARED.supplier)}`;
  const asked = rows
    .filter((row) => !bySupplier(row))
    .filter((row) => sum(row) || !/^(Agrees|Open)$/.test(textIn(row, SQUARED.state)));
  return [
    heading("Orders, tickets and invoices"),
    quiet("Lines that agree or are open are in the sums; the others stand here with their verdict."),
    table(
      [
        { title: "Order", width: 74 },
        { title: "Item", width: 150 },
        { title: "Ordered", right: true },
        { title: "Billed", right: true },
        { title: "At stake", right: true },
        { title: "State" },
        { title: "Verdict", width: "*" },
      ],
      asked.map((row) => [
        textIn(row, SQUARED.order),
        sum(row) ? textIn(row, SQUARED.supplier) : textIn(row, SQUARED.item),
        words.money(numberIn(row, SQUARED.ordered)),
        words.money(numberIn(row, SQUARED.billed)),
        words.money(numberIn(row, SQUARED.stake)),
        textIn(row, SQUARED.state),
        textIn(row, SQUARED.verdict),
      ]),
      { strong: (row) => sum(asked[row] ?? []), padding: 1 },
    ),
  ];
}
