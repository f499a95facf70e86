import type { Content, ContentTable, TableCell, TDocumentDefinitions } from "pdfmake/interfaces";
import type { UnitSystem } from "../calc/quantity/unitSystem";

/** Smallest text of any paper, in points, at the size it is printed. */
export const SMALLEST = 10;
/** Text of what the crew reads in the rain. */
export const CREW_TEXT = 11;

const INK = "#1f2a2e";
const QUIET = "#4f5d63";
const RULE = "#9aa5a9";
const SHADE = "#eef1f0";

/** Points between the text and the paper's edge. */
export const MARGIN = 40;

/** What every paper shares: page, type, foot with name and pages, and the mark of a draft. */
export function paper(
  system: UnitSystem,
  about: {
    readonly title: string;
    readonly foot: string;
    readonly draft: boolean;
    readonly size?: number;
    readonly landscape?: boolean;
  },
  content: Content[],
  margin = MARGIN,
): TDocumentDefinitions {
  return {
    pageSize: system === "US" ? "LETTER" : "A4",
    pageOrientation: about.landscape ? "landscape" : "portrait",
    pageMargins: [margin, margin, margin, margin + 14],
    info: { title: about.title, creator: "Rillwright", producer: "Rillwright" },
    language: system === "US" ? "en-US" : "en-GB",
    defaultStyle: {
      font: "Roboto",
      fontSize: about.size ?? SMALLEST,
      color: INK,
      lineHeight: about.size === CREW_TEXT ? 1.06 : 1.12,
    },
    footer: (page, pages) => ({
      margin: [margin, 8, margin, 0],
      fontSize: SMALLEST,
      color: QUIET,
      columns: [
        { text: about.foot, width: "*" },
        { text: `Page ${page} of ${pages}`, width: "auto", alignment: "right" },
      ],
    }),
    ...(about.draft ? { watermark: { text: "DRAFT", color: "#7f4a00", opacity: 0.12, bold: true, angle: -35 } } : {}),
    content,
  };
}

export function title(text: string, size = 18): Content {
  return { text, fontSize: size, bold: true };
}

/** A heading over a part of a page, kept with what follows it. */
export function heading(text: string): Content {
  return {
    text,
    bold: true,
    fontSize: 12.5,
    margin: [0, 8, 0, 2],
  };
}

export function quiet(text: string): Content {
  return { text, color: QUIET };
}

/** What can kill or maim: in a frame, never by color alone. */
export function caution(texts: readonly string[]): Content {
  return {
    table: {
      widths: ["*"],
      body: texts.map((text) => [
        { text: [{ text: "WARNING  ", bold: true }, together(text.replace(/^WARNING:\s*/, ""))] },
      ]),
    },
    layout: {
      hLineWidth: (line, { table }) => (line === 0 || line === table.body.length ? 1.2 : 0),
      vLineWidth: () => 1.2,
      hLineColor: () => "#9b2424",
      vLineColor: () => "#9b2424",
      paddingTop: () => 1,
      paddingBottom: () => 1,
    },
    margin: [0, 5, 0, 3],
  };
}

/** A text whose numbers and units stay on one line. */
function together(text: string): string {
  return text.replace(/(\d) (ft|m)\b/g, "$1\u00a0$2");
}

/** A column of a table: its heading, its width, and whether it holds numbers. */
export interface Column {
  readonly title: string;
  readonly width?: number | "*" | "auto";
  readonly right?: boolean;
  /** Its texts stay on one line. */
  readonly oneLine?: boolean;
}

/** A table with a heading that repeats on every page; rows that start with "=" in bold are sums. */
export function table(
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
  look: { readonly strong?: (row: number) => boolean; readonly padding?: number } = {},
): ContentTable {
  const pad = look.padding ?? 2;
  const cells = (texts: readonly string[], bold: boolean): TableCell[] =>
    columns.map(({ right, oneLine }, index) => ({
      text: texts[index] ?? "",
      bold,
      ...(oneLine ? { noWrap: true } : {}),
      ...(right ? { alignment: "right" as const, noWrap: true } : {}),
    }));
  return {
    table: {
      headerRows: 1,
      keepWithHeaderRows: 2,
      dontBreakRows: true,
      widths: columns.map(({ width }) => width ?? "auto"),
      body: [
        cells(
          columns.map((column) => column.title),
          true,
        ),
        ...rows.map((row, index) => cells(row, look.strong?.(index) ?? false)),
      ],
    },
    layout: {
      hLineWidth: (line, node) => (line === 1 ? 1 : line === node.table.body.length ? 0.8 : line === 0 ? 0 : 0.4),
      vLineWidth: () => 0,
      hLineColor: () => RULE,
      fillColor: (row) => (row === 0 ? SHADE : null),
      paddingTop: () => pad,
      paddingBottom: () => pad,
      paddingLeft: () => 4,
      paddingRight: () => 4,
    },
  };
}

/** Amounts under a table, the last of them strong. */
export function sums(rows: readonly (readonly [string, string])[]): ContentTable {
  return {
    table: {
      widths: ["*", "auto"],
      body: rows.map(([label, amount], index) => {
        const bold = index === rows.length - 1;
        return [
          { text: label, bold, alignment: "right" as const },
          { text: amount, bold, alignment: "right" as const, noWrap: true },
        ];
      }),
    },
    layout: {
      hLineWidth: (line, node) => (line === node.table.body.length ? 1 : 0),
      vLineWidth: () => 0,
      hLineColor: () => RULE,
      paddingTop: () => 1.5,
      paddingBottom: () => 1.5,
      paddingLeft: () => 4,
      paddingRight: () => 4,
    },
    margin: [0, 3, 0, 0],
  };
}

/** Labels and values, in two or more pairs abreast. */
export function pairs(
  rows: readonly (readonly [string, string])[],
  labelWidth: number | "auto" = "auto",
): ContentTable {
  return {
    table: {
      widths: [labelWidth, "*"],
      body: rows.map(([label, value]) => [
        { text: label, color: QUIET },
        { text: value, bold: true },
      ]),
    },
    layout: {
      hLineWidth: () => 0,
      vLineWidth: () => 0,
      paddingTop: () => 0.5,
      paddingBottom: () => 0.5,
      paddingLeft: () => 0,
      paddingRight: () => 6,
    },
  };
}

export function bullets(texts: readonly string[]): Content {
  return { ul: texts.map((text) => ({ text, margin: [0, 0.5, 0, 1.5] })), markerColor: QUIET };
}

/** A line to sign on, with what stands under it. */
export function signature(label: string, name: string): Content {
  return {
    stack: [
      { canvas: [{ type: "line", x1: 0, y1: 26, x2: 225, y2: 26, lineWidth: 0.8 }] },
      { text: label, color: QUIET, margin: [0, 2, 0, 0] },
      { text: name },
    ],
  };
}

/** A drawing of the page as one of the paper: its own colors, the paper's typeface. */
export function drawn(svg: string, fit: readonly [number, number]): Content {
  const [, width = "0", height = "0"] = /viewBox="0 0 (\d+) (\d+)"/.exec(svg) ?? [];
  const own = svg
    .replace(/var\(--[\w-]+, (#[0-9a-f]{6})\)/g, "$1")
    .replace(/font-family="[^"]*"/, 'font-family="Roboto"')
    .replace(/ style="[^"]*"/, "")
    .replace('width="100%"', `width="${width}" height="${height}"`);
  return { svg: own, fit: [...fit], alignment: "center", margin: [0, 4, 0, 0] };
}
