import { ISSUE_CELLS } from "../../job/story/issue";
import { defineSheet, Ref, type Job, type Kind, type SheetLayout } from "../layout";
import { areaAddress } from "../layout/address";
import { formatOf, unitOf } from "../layout/formats";
import { heightOfLines } from "../layout/textRoom";
import { fillDown } from "./money/cells";

/** Rows laid out, and rows the list may grow to: some twenty issues. */
const ROWS = 20;
const MOST_ROWS = 8000;

/** What a client would notice: the price, the days, and the measures of what is built. No cost among them. */
const FIGURES: readonly (readonly [label: string, name: string, kind: Kind, decimals?: number])[] = [
  ["Price with tax", "PriceTotal", "money", 2],
  ["Price before tax", "PriceBeforeTax", "money", 2],
  ["Option quoted", "ChosenOption", "text"],
  ["First payment", "INDEX(StageAmounts,1)", "money", 2],
  ["Working days", "WorkingDays", "number", 1],
  ["Length of the stream", "Run", "length", 2],
  ["Fall", "Fall", "length", 2],
  ["Drops", "DropCount", "count", 0],
  ["Width of the bed", "BedWidth", "length", 2],
  ["Flow", "DesignFlow", "flow", 0],
  ["Pump", "PumpName", "text"],
  ["Length of the basin", "BasinLength", "length", 2],
  ["Width of the basin", "BasinWidth", "length", 2],
  ["Water the basin holds", "BasinHold", "water", 0],
  ["Boulders", "BoulderTons", "load", 2],
  ["Lip stones", "LipStoneCount", "count", 0],
  ["Gravel", "GravelTons", "load", 2],
];

/** The words of a quote that were agreed besides its figures. */
const WORDS = 'TEXTJOIN(" ",TRUE,OwnWords,ScopeLines,ExclusionLines,TermLines,CancelNotice)';

/** What clients hold: every quote that was issued, row by row, and what has changed since the last. */
export const issued = defineSheet({
  name: "Issued",
  order: 14.5,
  turn: 1,
  build(s, job) {
    s.widths([26, 25, 25, 24, 40, 13, 13, 13, 13, 13, 13]);
    s.title(
      "Issued",
      "Read what the client holds and what has changed since; the pane's button adds the next revision.",
    );
    s.print({ landscape: true, titleRows: [1, 2] });
    s.section("Where the quote stands");
    s.result({
      name: "LastRevision",
      label: "Last revision issued",
      kind: "count",
      formula: "=IF(COUNT(IssuedRevisions)=0,0,MAX(IssuedRevisions))",
    });
    s.result({
      name: "LastIssueRow",
      label: "Its first row in the list",
      kind: "count",
      formula: '=IF(LastRevision=0,"",MATCH(LastRevision,IssuedRevisions,0))',
    });
    s.result({
      name: "LastIssueDay",
      label: "Issued on",
      kind: "date",
      formula: '=IF(LastRevision=0,"",INDEX(IssuedDays,LastIssueRow))',
    });
    s.section("Changed since");
    figures(s, job);
    s.section("The list");
    s.note(
      "A revision's rows are added at the end and stay as they are: what the client holds is not changed afterwards.",
    );
    list(s);
  },
});

function figures(s: SheetLayout, job: Job): void {
  const known = FIGURES.filter(([, name]) => name.includes("(") || job.names.has(name));
  const titles = ["What", "Now", "As issued", "Unit", "Change", "Decimals"];
  titles.forEach((title, index) =>
    s.put(s.row, index + 1, { value: title, style: [1, 2, 5].includes(index) ? "head" : "headText" }),
  );
  const top = ++s.row;
  for (const spec of known) figure(s, job, spec);
  changes(s, top);
  words(s);
  // The figures come first in an issue, in the order of the table above.
  const value = `INDEX(IssuedValues,LastIssueRow+SEQUENCE(${s.row - top},1,0))`;
  fillDown(s, new Ref(s.name, top, 3, s.row - 1, 3), `IF(LastRevision=0,"",IF(${value}="","",${value}))`);
  const column = (name: string, at: number): void => void s.define(name, top, at, s.row - 1, at);
  column("FigureNames", 1);
  column("FiguresNow", 2);
  column("FigureUnits", 4);
  column("FigureChanges", 5);
}

function figure(s: SheetLayout, { system }: Job, [label, name, kind, decimals = 0]: (typeof FIGURES)[number]): void {
  // A price that is held back is a sentence in place of an amount.
  const wrap = kind === "text" || kind === "money";
  const align = kind === "text" ? ("left" as const) : ("right" as const);
  const format = kind === "number" ? "0.0" : formatOf(kind, system);
  const look = { format, align, wrap };
  if (wrap) s.sheet.heights.set(s.row, heightOfLines(2));
  const unit = kind === "text" || kind === "count" || kind === "number" ? "" : unitOf(kind, system);
  s.put(s.row, 1, { value: label, style: "label" });
  s.put(s.row, 2, { formula: `=IF(ISERROR(${name}),"",IF(${name}="","",${name}))`, style: "result", look });
  s.put(s.row, 3, { style: "result", look });
  s.put(s.row, 4, unit.startsWith("=") ? { formula: unit, style: "unit" } : { value: unit, style: "unit" });
  s.put(s.row, 5, { style: "remark" });
  s.put(s.row, 6, { value: decimals, style: "unit", look: { align: "right" } });
  s.row++;
}

/** What has changed of each figure: of a number whatever is more than noise, two decimals beyond those that are said. */
function changes(s: SheetLayout, top: number): void {
  const [what, now, then, decimals] = [1, 2, 3, 6].map((at) =>
    areaAddress({ top, left: at, bottom: s.row - 1, right: at }),
  );
  const said = (cells = ""): string => `IF(ISNUMBER(${cells}),FIXED(${cells},${decimals}),${cells})`;
  const same = `IF(ISNUMBER(${now})*ISNUMBER(${then}),ROUND(${now}-${then},${decimals}+2)=0,${now}=${then})`;
  fillDown(
    s,
    new Ref(s.name, top, 5, s.row - 1, 5),
    `IF(LastRevision=0,"",IF(${same},"",${what}&" "&${said(then)}&" to "&${said(now)}))`,
  );
}

/** Scope, exclusions and terms count as one: which word changed, the two papers show. */
function words(s: SheetLayout): void {
  const [now, then] = [`$B${s.row}`, `$C${s.row}`];
  s.put(s.row, 1, { value: "Scope, exclusions and terms", style: "label" });
  s.put(s.row, 2, { formula: `=${WORDS}`, style: "resultText", look: { wrap: false } });
  s.put(s.row, 3, { style: "resultText", look: { wrap: false } });
  s.put(s.row, 4, { value: "", style: "unit" });
  s.put(s.row, 5, {
    formula: `=IF(LastRevision=0,"",IF(${now}=${then},"","the wording of scope, exclusions or terms"))`,
    style: "remark",
  });
  s.row++;
}

function list(s: SheetLayout): void {
  const text = (key: string, title: string, name?: string) => ({
    key,
    title,
    kind: "text" as const,
    ...(name ? { name } : {}),
    input: { max: 5000, message: "Written when the quote is issued." },
  });
  s.table({
    name: "IssuedList",
    rows: ROWS,
    open: { rows: MOST_ROWS },
    columns: [
      {
        key: "revision",
        title: "Revision",
        kind: "count",
        name: "IssuedRevisions",
        input: { min: 1, max: 999, message: "Written when the quote is issued." },
      },
      {
        key: "day",
        title: "Day",
        kind: "date",
        name: "IssuedDays",
        input: { message: "Written when the quote is issued." },
      },
      text("part", "Part", "IssuedParts"),
      text("what", "What", "IssuedWhat"),
      text("value", "Value", "IssuedValues"),
      text("unit", "Unit"),
      ...Array.from({ length: ISSUE_CELLS - 3 }, (_, index) => text(`more${index + 1}`, `Cell ${index + 4}`)),
    ],
  });
}
