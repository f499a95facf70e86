import type { Content, TDocumentDefinitions } from "pdfmake/interfaces";
import type { Logo } from "../book/types";
import { clientsDrawing } from "../taskpane/clientsDrawing";
import { counted } from "../taskpane/counted";
import type { CellValue } from "../workbook/model";
import { companyLines, numberIn, textIn, type PaperCells } from "./cells";
import { draftReason } from "./draft";
import { jobDrawing } from "./jobDrawing";
import { bullets, drawn, heading, MARGIN, pairs, paper, quiet, signature, sums, table, title } from "./look";
import { logoContent } from "./logoContent";
import { quoteBlocks, sentencesOf, type QuoteBlock } from "./quoteSheet";
import { wordsFor, type Words } from "./words";

/** What the client gets: the quote with the drawing of what is built. No cost, markup or quantity of the takeoff. */
export function clientPack(cells: PaperCells, logo?: Logo): TDocumentDefinitions {
  const words = wordsFor(cells.system, cells.text("Currency"));
  const draft = draftReason(cells);
  const blocks = quoteBlocks(cells);
  const agreed = blocks.findIndex((block) => block.title === "Agreed");
  const [first, ...rest] = agreed < 0 ? blocks : blocks.slice(0, agreed);
  const number = cells.text("QuoteNumber");
  return paper(
    cells.system,
    {
      title: `Quote ${number}`.trim(),
      foot: [cells.text("CompanyName"), `Quote ${number}`.trim()].filter((text) => text !== "").join(" · "),
      draft: draft !== "",
    },
    [
      ...letterhead(cells, words, draft, logo),
      ...(first ? block(first, words) : []),
      picture(cells),
      ...rest.flatMap((part) => block(part, words)),
      // A draft without a price has nothing yet to agree to.
      ...(draft === "" || priced(cells)
        ? [
            {
              unbreakable: true,
              stack: [...(blocks[agreed] ? agreement(blocks[agreed], cells) : []), signatures(cells, draft !== "")],
            },
          ]
        : []),
    ],
  );
}

function letterhead(cells: PaperCells, words: Words, draft: string, logo?: Logo): Content[] {
  const issue = cells.text("QuoteIssue");
  const days = cells.number("WorkingDays");
  const start = cells.number("StartDay");
  const date = cells.number("QuoteDate");
  const valid = cells.number("ValidDays");
  return [
    {
      columns: [
        ...(logo ? [logoContent(logo)] : []),
        { width: "*", stack: [title(cells.text("CompanyName"), 16), ...companyLines(cells).map(quiet)] },
        { width: 110, stack: [title(draft === "" ? "Quote" : "Draft", 20)], alignment: "right" },
      ],
      columnGap: 12,
    },
    { canvas: [{ type: "line", x1: 0, y1: 4, x2: pageWidth(cells), y2: 4, lineWidth: 1.2 }], margin: [0, 2, 0, 8] },
    ...(issue === "" ? [] : [{ text: issue, margin: [0, 0, 0, 4] as [number, number, number, number] }]),
    ...(draft === "" ? [] : [{ text: draft, bold: true, margin: [0, 0, 0, 6] as [number, number, number, number] }]),
    {
      columns: [
        {
          width: "*",
          stack: [
            pairs(
              [
                ["For", cells.text("ClientName")],
                ["Where", cells.text("SiteAddress")],
                ["Work", cells.text("JobName")],
                ["Takes", days === undefined ? "" : `about ${counted(Math.ceil(days), "working day")}`],
              ],
              42,
            ),
          ],
        },
        {
          width: 200,
          stack: [
            pairs(
              [
                ["Quote no.", cells.text("QuoteNumber")],
                ["Date", words.day(date)],
                ["Valid until", words.day(date === undefined || valid === undefined ? undefined : date + valid)],
                ["Begins", start === undefined ? "as agreed" : words.day(start)],
              ],
              58,
            ),
          ],
        },
      ],
    },
  ];
}

function priced(cells: PaperCells): boolean {
  return cells.number("PriceTotal") !== undefined;
}

/** Points between the margins. */
function pageWidth({ system }: PaperCells): number {
  return (system === "US" ? 612 : 595) - 2 * MARGIN;
}

/** Most of the height that the drawing takes of the page, in points. */
const PICTURE_HEIGHT = 380;

/** The drawing in what is left of the first page; a job that cannot be drawn yet says why. */
function picture(cells: PaperCells): Content {
  const sheet = { width: pageWidth(cells), height: PICTURE_HEIGHT };
  const made = jobDrawing(clientsDrawing, cells, sheet);
  if ("reason" in made) return quiet(`No drawing yet: ${made.reason}.`);
  return { stack: [drawn(made.svg, [sheet.width, sheet.height])], unbreakable: true };
}

function block(part: QuoteBlock, words: Words): Content[] {
  const tabular = part.rows.some((row) => row.slice(1).some((_, column) => textIn(row, column + 1) !== ""));
  const [first = [], ...sums] = part.groups;
  const body = tabular
    ? [headed(first, words), ...sums.map((rows) => sumTable(rows, words))]
    : [bullets(sentencesOf(part))];
  return [{ stack: [heading(part.title), ...body], unbreakable: true }];
}

type Rows = readonly (readonly CellValue[])[];

/** Rows as a table: the first names the columns, money and shares are written as such. */
function headed(rows: Rows, words: Words): Content {
  const [names = [], ...body] = rows;
  if (body.length === 0) return [];
  // A draft has no amounts yet, and no column for them.
  const used = names.map((_, column) => column).filter((column) => body.some((row) => textIn(row, column) !== ""));
  const share = names.findIndex((name) => name === "Share");
  const last = used.at(-1);
  const wide = textIn(names, 1) === "" ? 0 : 1;
  return table(
    used.map((column) => ({
      // The currency is in the amounts.
      title: textIn(names, column).replace(/ \(.*\)$/, ""),
      right: column === share || column === last,
      ...(column === wide ? { width: "*" as const } : { oneLine: true }),
    })),
    body.map((row) =>
      used.map((column) => {
        const value = numberIn(row, column);
        if (value === undefined) return textIn(row, column);
        return column === share ? words.share(value) : words.money(value);
      }),
    ),
  );
}

/** Labels and amounts, the last being what all comes to; what a draft takes for granted stands below, across the page. */
function sumTable(rows: Rows, words: Words): Content {
  const sentence = (row: Rows[number]): boolean => textIn(row, 0).startsWith("•");
  const amounts = sums(
    rows
      .filter((row) => !sentence(row))
      .map((row) => {
        const amounts = row.flatMap((_, column) => numberIn(row, column) ?? []);
        // A draft has a range in place of its price.
        const said =
          amounts.length > 0
            ? amounts.map(amounts.length > 1 ? words.rounded : words.money).join(" to ")
            : textIn(row, row.length - 1);
        return [textIn(row, 0).replace(", from and to", ""), said];
      }),
  );
  const below = rows.filter(sentence).map((row) => quiet(textIn(row, 0).replace(/^•\s*/, "")));
  return below.length === 0 ? amounts : { stack: [amounts, { stack: below, margin: ABOVE }] };
}

/** What is agreed, which option, and the notice that the law asks for above the client's signature: in bold, as it asks. */
function agreement(part: QuoteBlock, cells: PaperCells): Content[] {
  const notice = cells.text("CancelNotice");
  const [sentence = "", option = ""] = sentencesOf(part);
  return [
    heading(part.title),
    { text: sentence },
    ...(option.startsWith("Option") ? [{ text: option, bold: true, margin: ABOVE }] : []),
    ...(notice === "" ? [] : [{ text: notice, bold: true, margin: ABOVE }]),
  ];
}

const ABOVE: [number, number, number, number] = [0, 5, 0, 0];

function signatures(cells: PaperCells, draft: boolean): Content {
  // Nothing invented or incomplete is ever signed.
  if (draft) return { text: "Draft: not to be signed", bold: true, margin: [0, 12, 0, 0] };
  return {
    columns: [
      signature("Client: signature and date", cells.text("ClientName")),
      signature("Company: signature and date", cells.text("CompanyName")),
    ],
    margin: [0, 6, 0, 0],
  };
}
