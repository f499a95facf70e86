import type { Sheet } from "hucre";
import { columnNumber, parseArea, type Area } from "../../xlsx/address";

/** How a sheet is put on paper, as its file says. */
export interface PagePlan {
  /** Rows and columns counted from 0. */
  readonly area: Omit<Area, "sheet">;
  /** Rows that head every page, where the file names some. */
  readonly titles: { readonly first: number; readonly last: number } | undefined;
  /** Rows that begin a new page. */
  readonly breaks: ReadonlySet<number>;
  readonly landscape: boolean;
  readonly paper: "letter" | "A4";
  /** Size on paper beside that on the screen. */
  readonly scale: number;
  /** Margins in inches: top, right, bottom, left. */
  readonly margins: readonly [number, number, number, number];
}

const INCHES = { letter: [8.5, 11], A4: [8.27, 11.69] } as const;
const DOTS_PER_INCH = 96;
const MARGIN = { top: 0.65, right: 0.5, bottom: 0.6, left: 0.5 };

/** The columns of an area such as "$A:$J", which is as long as what stands there. */
function wholeColumns(printed: string): Pick<Area, "left" | "right"> | undefined {
  const [, left, right] = /^\$?([A-Z]{1,3}):\$?([A-Z]{1,3})$/.exec(printed) ?? [];
  return left && right ? { left: columnNumber(left), right: columnNumber(right) } : undefined;
}

/** Plans the pages of a sheet; `filled` is what it holds, for one that names no print area, in pixels `wide` and `high`. */
export function planPages(
  sheet: Pick<Sheet, "name" | "pageSetup" | "rowBreaks">,
  filled: Omit<Area, "sheet">,
  size: (area: Omit<Area, "sheet">) => { readonly wide: number; readonly high: number },
): PagePlan {
  const { pageSetup = {} } = sheet;
  const printed = (pageSetup.printArea ?? "").replace(/^.*!/, "");
  const area = parseArea(printed, sheet.name) ?? { ...filled, ...wholeColumns(printed) };
  const landscape = pageSetup.orientation === "landscape";
  const paper = String(pageSetup.paperSize ?? "letter").toLowerCase() === "a4" ? "A4" : "letter";
  const {
    top = MARGIN.top,
    right = MARGIN.right,
    bottom = MARGIN.bottom,
    left = MARGIN.left,
  } = pageSetup.margins ?? {};
  const [short, long] = INCHES[paper];
  const [across, down] = landscape ? [long, short] : [short, long];
  const { wide, high } = size(area);
  const width = ((across - left - right) * DOTS_PER_INCH) / wide;
  const height = ((down - top - bottom) * DOTS_PER_INCH) / high;
  const onOnePage = (pageSetup.fitToHeight ?? 1) === 1;
  const asked = pageSetup.fitToPage ? (onOnePage ? height : width) : (pageSetup.scale ?? 100) / 100;
  const rows = /^\$?(\d+):\$?(\d+)$/.exec((pageSetup.printTitlesRow ?? "").replace(/^.*!/, ""));
  return {
    area,
    titles: rows ? { first: Number(rows[1]) - 1, last: Number(rows[2]) - 1 } : undefined,
    // The reading library names the row behind which a page ends.
    breaks: new Set((sheet.rowBreaks ?? []).map((row) => row + 1)),
    landscape,
    paper,
    // Never wider than the page, whatever the file says: what runs over its edge is lost.
    scale: Math.min(1, width, asked),
    margins: [top, right, bottom, left],
  };
}
