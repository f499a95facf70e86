import { farthestApart } from "../../../job/facts/site";
import { Ref, type Job, type SheetLayout } from "../../layout";
import type { Kind } from "../../layout/formats";
import { fillDown } from "../money/cells";

const ASKED = ["RunAsked", "FallAsked", "LipAsked", "WaterCharacter", "SoilAsked", "WayInAsked"] as const;

/** Rows of the draft as the function gives them, in its order; what to measure next follows. */
const NUMBERS: readonly (readonly [label: string, kind: Kind, format?: string])[] = [
  ["Price before tax, low", "money", "#,##0"],
  ["Price before tax, likely", "money", "#,##0"],
  ["Price before tax, high", "money", "#,##0"],
  ["Flow", "flow"],
  ["Pump", "text"],
  ["Basin", "text"],
  ["Boulders", "load"],
  ["Gravel", "load"],
  ["Days on site", "number", "0.0"],
];
/** Rows of the function with what must be known to read the range: after those numbers and the count of its trials. */
const REMARKS = { from: NUMBERS.length + 2, given: 2 } as const;
/** Its row from which on it says what to measure next. */
const MEASURE = REMARKS.from + REMARKS.given;
/** In the order they are shown: texts last, below what stands beside the numbers, where each has the whole width. */
const SHOWN = [...NUMBERS.entries()].sort(([, a], [, b]) => Number(a[1] === "text") - Number(b[1] === "text"));
/** Rows of what to measure next that are shown, and that the function may give. */
const NEXT = { shown: 5, given: 8 } as const;

/** Points of a row of one line, and of two: what is wrong stands before how far it has come. */
const ONE_LINE = 17;
const TWO_LINES = 32;

/** What stands beside the numbers, and, right of the printed sheet, the draft as the function gives it. */
const COLUMN = { next: 4, wanted: 9, spill: 10 } as const;
/** How wide the columns are that only formulas read, from `COLUMN.wanted` on. */
export const DRAFT_WIDTHS = [6, 70, 34, 8, 12, 12, 14] as const;

/** The draft that the answers make until the sheets hold the job: price, main numbers, and what to measure next. */
export function draft(s: SheetLayout, job: Job): void {
  s.section("First price: 8 jobs in 10 like this should come in between low and high");
  const told = s.row++;
  const top = s.row;
  const { cell, anchor } = s.spill({
    name: "DraftTable",
    at: COLUMN.spill,
    header: "function",
    rows: MEASURE - 1 + NEXT.given,
    headerLines: 1,
    formula: `=IF(DraftWanted="yes",RILL.PRICERANGE(FactKeys,FactsSaid,RateTable,PumpTable,Units),"")`,
    columns: [
      { kind: "text", wrap: false },
      { kind: "text", wrap: false },
      { kind: "text", wrap: false },
      { kind: "money", wrap: false },
      { kind: "money", wrap: false },
      { kind: "share", wrap: false },
    ],
  });
  s.put(told, COLUMN.wanted, {
    formula: `=${ASKED.map((name) => `IFERROR(N(${name}<>""),0)`).join("+")}`,
    style: "unit",
    name: "StartAnswered",
  });
  s.put(top, COLUMN.wanted, {
    formula: '=IF(OR(StartAnswered=0,FactsUnknown+SUM(FactsStillDrafted)=0),"no","yes")',
    style: "unit",
    name: "DraftWanted",
  });
  // As the draft's own rule says it, which leaves that level out.
  const farOff = s.put(told, COLUMN.spill + 5, {
    formula:
      "=IFERROR(IF(AND(COUNT(BermGround)=1,ABS(BermGround-IF(COUNT(GradeLevel)=1,GradeLevel,BenchmarkLevel)-N(FallTyped))>" +
      `${farthestApart(job.system)}),"Ground under the berm is far off finished grade: check both levels; this price leaves it out. ",""),"")`,
    style: "unit",
    look: { wrap: false },
  });
  // What is wrong is left out, and the rest drafted all the same.
  s.put(told, COLUMN.spill, {
    formula:
      '=IF(FactsWrong>0,"Fix "&INDEX(FactMissing,MATCH("wrong",FactStates,0))&"; this price leaves it out. ","")&' +
      `IF(IFERROR((N(Run)>0)*(N(FallTyped)>N(Run)),0),"The fall is more than the run: check which is which. ","")&${farOff}`,
    style: "unit",
    look: { wrap: false },
    name: "StartFault",
  });
  // How far it has come, while there is nothing else to say.
  const progress = s.put(told, COLUMN.spill + 1, {
    formula:
      '=IF(StartAnswered=0,"Answer what you know; typical values fill in the rest.",' +
      'StartAnswered&" of 6 answered. Wages, hours, markups and prices are the ones in this workbook, made-up ones where you have none: sign nothing on it.")',
    style: "unit",
    look: { wrap: false },
  });
  s.put(told, 1, {
    formula:
      '=StartFault&IF((StartAnswered>0)*(DraftWanted="no"),"Every fact is known: the sheets price this job.",' +
      `IF((StartAnswered>0)*ISERROR(${anchor}),"No first price: "&IF(FunctionsRun="yes","a number is far off, or prices or pumps are missing.","the add-in's functions don't run here."),${progress}))`,
    style: "strong",
    look: { align: "left", wrap: true },
    across: s.lastColumn,
  });
  // Without a height of its own a host makes a row as high as its merged text would need in the first column alone.
  s.sheet.heights.set(told, TWO_LINES);
  s.sheet.heights.set(top, ONE_LINE);

  // Below a draft in error there is nothing.
  const read = (rows: string, columns: string): string => {
    const cells = `INDEX(DraftTable,${rows},${columns})`;
    return `=IF(${cells}="","",${cells})`;
  };
  s.row = top + 1;
  SHOWN.forEach(([index, [label, kind, format]]) => {
    s.put(s.row, 1, { value: label, style: "label" });
    const text = kind === "text";
    s.put(s.row, 2, {
      ...(text ? { formula: read(String(index + 1), "2") } : {}),
      style: text ? "resultText" : "result",
      kind,
      look: { ...(format ? { format } : {}), wrap: true },
      ...(text ? { across: s.lastColumn - 1 } : {}),
    });
    if (!text) s.put(s.row, 3, { style: "unit" });
    s.row++;
  });
  // Numbers with their units are one formula; texts take the whole width, and nothing spills into merged cells.
  const numbers = SHOWN.filter(([, [, kind]]) => kind !== "text").map(([index]) => index + 1);
  const shown = new Ref(s.name, top + 1, 2, top + numbers.length, 3);
  fillDown(s, shown, read(`{${numbers.join(";")}}`, "{2,3}"));
  s.define("DraftShown", top + 1, 1, s.row - 1, 3);
  // For the quote of a draft: its range, and what it rests on, most of the range first.
  s.define("DraftLow", top + 1, 2, top + 1, 2);
  s.define("DraftHigh", top + 3, 2, top + 3, 2);
  const doubts = (name: string, column: number): void => {
    const { top: first, left, bottom: last } = cell(MEASURE, column).down(NEXT.shown);
    s.define(name, first, left, last, left);
  };
  doubts("DraftDoubts", 1);
  doubts("DraftDoubtShares", 6);
  s.define("DraftNext", top + 1, COLUMN.next, top + NEXT.shown, COLUMN.next);
  s.put(top, COLUMN.next, {
    value: "Measure next: the price if it comes in low or high, and its share of the range",
    style: "headText",
    across: s.lastColumn - COLUMN.next + 1,
  });
  // Each runs on over blank cells with the same line below.
  s.styleArea(
    { top: top + 1, left: COLUMN.next, bottom: top + NEXT.shown + REMARKS.given, right: s.lastColumn },
    "resultText",
    {
      wrap: false,
    },
  );
  const [what, low, high, share] = [1, 4, 5, 6].map((column) => String(cell(MEASURE, column).down(NEXT.shown)));
  fillDown(
    s,
    new Ref(s.name, top + 1, COLUMN.next, top + NEXT.shown, COLUMN.next),
    `IF(${what}="","",IFERROR(${what}&" "&Currency&FIXED(${low},0)&" to "&Currency&FIXED(${high},0)&", "&` +
      `ROUND(100*${share},0)&"%",${what}&" no price at one end"))`,
  );
  const remarks = cell(REMARKS.from, 2).down(REMARKS.given);
  const below = top + 1 + NEXT.shown;
  fillDown(s, new Ref(s.name, below, COLUMN.next, below + REMARKS.given - 1, COLUMN.next), `${String(remarks)}&""`);
  s.define("DraftRemarks", below, COLUMN.next, below + REMARKS.given - 1, COLUMN.next);
}
