import { DIGGING_CAUTION } from "../../functions/ground/arguments";
import { LIFTING_CAUTION } from "../../functions/stone/arguments";
import { defineSheet, type Job, type SheetLayout } from "../layout";
import { formatOf, type Kind } from "../layout/formats";
import { head } from "../layout/tables";
import { unitLabel } from "../../calc/quantity/measures";

const WIDTHS = [26, 9, 10, 12, 15, 2, 21, 10, 10, 11];
/** The first column of the right half. */
const RIGHT = 7;
const LEVEL_ROWS = 21;
const PIECES = 8;
const SIZES = 5;

/** The one page the crew takes along: sequence, levels, cuts, stones, cautions. */
export const crew = defineSheet({
  name: "Crew",
  order: 18,
  build(s, job) {
    s.widths(WIDTHS);
    s.purpose = "Print this page for the crew; everything on it comes from the other sheets.";
    s.print({ pagesHigh: 1 });
    letterhead(s);
    cautions(s);
    sequence(s, job);
    const top = s.row + 1;
    levels(s, top);
    cuts(s, top);
    stones(s, top + PIECES + 3, job);
    s.row = top + LEVEL_ROWS + 2;
    signOff(s);
  },
});

function letterhead(s: SheetLayout): void {
  const last = s.lastColumn;
  s.put(1, 1, { formula: `=JobName&""`, style: "title", across: RIGHT - 2 });
  s.put(1, RIGHT, {
    formula: `=CompanyName&""`,
    style: "plain",
    look: { bold: true, align: "right" },
    across: last - RIGHT + 1,
  });
  s.sheet.heights.set(1, 28);
  const line = (row: number, left: string, right: string): void => {
    s.put(row, 1, { formula: left, style: "plain", across: RIGHT - 2 });
    s.put(row, RIGHT, { formula: right, style: "plain", look: { align: "right" }, across: last - RIGHT + 1 });
  };
  line(2, `=FeatureName&IF(SiteAddress="","",", "&SiteAddress)`, `=CompanyPhone&""`);
  line(3, `=IF(AccessNote="","","Access: "&AccessNote)`, `=IF(Estimator="","","Estimate: "&Estimator)`);
  s.row = 5;
}

function cautions(s: SheetLayout): void {
  s.caution(DIGGING_CAUTION);
  s.caution(LIFTING_CAUTION);
}

/** A number in a sentence, or a line to write it on while it is not known yet. */
function said(name: string, mask: string, unit = ""): string {
  return `"&IF(COUNT(${name})=1,TEXT(${name},"${mask}")&"${unit ? ` ${unit}` : ""}","____")&"`;
}

function sequence(s: SheetLayout, job: Job): void {
  heading(s, s.row, 1, s.lastColumn, "Sequence");
  s.row++;
  const length = unitLabel("length", job.system);
  const load = unitLabel("load", job.system);
  const size = unitLabel("size", job.system);
  const sizeMask = job.pick({ US: "0.0", SI: "0" });
  const steps = [
    "See the marks of every buried line before the first bucket. No marks, no digging.",
    `Set the instrument up, read the bench mark (${said("BenchmarkLevel", "0.00", length)}) and stake every point below.`,
    `Dig the pit ${said("PitDepth", "0.00", length)} below finished grade, with ${said("PitMargin", "0.00", length)} of room all round; keep spoil back from the edge.`,
    `Build the berm ${said("BermHeight", "0.00", length)} high from the spoil, in thin layers, each compacted; truckloads of spoil: ${said("SpoilLoads", "0")}, of fill: ${said("FillLoads", "0")}.`,
    `Bedding ${said("BeddingDepth", sizeMask, size)}, then fabric, then liner; fold corners, pull nothing tight, trim last.`,
    `Pump well and ${said("ModuleCount", "0")} void modules, then ${said("BasinStoneTons", "0.0", load)} of stone around them.`,
    `Lay ${said("PipeTotalLength", "0", length)} of pipe, glue, and test it under pressure before the trench is closed.`,
    `Cut the shelves from the lowest up; set ${said("LipStoneCount", "0")} lip stones, each level across its width and on its rod reading.`,
    `Set ${said("BoulderTons", "0.0", load)} of boulders, biggest first and by machine; seal behind the lips.`,
    `Spread ${said("GravelTons", "0.0", load)} of rinsed gravel over bed and basin, up to finished grade.`,
    "Fill, start the pump, walk every edge for wet ground, then stop it: the basin must take the water back without spilling.",
  ];
  steps.forEach((text, index) => {
    const formula = `="${index + 1}.  ${text}"`;
    s.fitHeight(s.row, text.replace(/"&[^&]*&"|"&.*?&"/g, "00.00"), s.charactersAcross(1, s.lastColumn - 1));
    s.put(s.row, 1, { formula: formula.replace(/&""$/, ""), style: "resultText", across: s.lastColumn - 1 });
    s.put(s.row, s.lastColumn, { value: "☐", style: "resultText", look: { align: "center", size: 12 } });
    s.row++;
  });
}

/** A heading over a part of the page's width. */
function heading(s: SheetLayout, row: number, column: number, across: number, text: string): void {
  s.put(row, column, { value: text, style: "section", across });
  s.sheet.heights.set(row, 18);
}

function levels(s: SheetLayout, top: number): void {
  heading(s, top, 1, RIGHT - 2, "Levels");
  s.row = top + 1;
  s.spill({
    // A blank level stays blank; passed on as it is it would read 0.
    formula: `=FILTER(IF(SetoutShort="","",SetoutShort),INDEX(SetoutShort,0,1)<>"","")`,
    rows: LEVEL_ROWS,
    header: "ours",
    columns: [
      { title: "Point", kind: "text" },
      { title: "Level", kind: "length", format: "0.00" },
      { title: "Rod", kind: "length", format: "0.00" },
      { title: "On the tape", kind: "text" },
      { title: "From the string", kind: "text" },
    ],
    needs: ["INDEX(SetoutShort,0,2)"],
  });
}

/** Rows that read cells of another sheet's table, blank where that is blank. */
function rows(
  s: SheetLayout,
  top: number,
  count: number,
  columns: readonly { readonly title: string; readonly kind: Kind; readonly formula: (row: number) => string }[],
): void {
  columns.forEach(({ title, kind }, index) => head(s, top, RIGHT + index, { title, kind }));
  for (let row = 1; row <= count; row++) {
    columns.forEach(({ kind, formula }, index) =>
      s.put(top + row, RIGHT + index, {
        formula: `=${formula(row)}`,
        style: kind === "text" ? "resultText" : "result",
        look: {
          format: kind === "text" ? "General" : formatOf(kind, s.job.system),
          ...(kind === "text" ? { indent: 1 } : {}),
        },
      }),
    );
  }
}

const shownIf = (test: string, value: string): string => `IF(${test},${value},"")`;

function cuts(s: SheetLayout, top: number): void {
  heading(s, top, RIGHT, s.lastColumn - RIGHT + 1, "Cut list, liner");
  const piece = (row: number, column: number): string =>
    shownIf(`COUNT(INDEX(LinerPieces,${row},2))=1`, `INDEX(LinerPieces,${row},${column})`);
  rows(s, top + 1, PIECES, [
    { title: "Piece", kind: "text", formula: (row) => piece(row, 1) },
    { title: "Length", kind: "length", formula: (row) => piece(row, 2) },
    { title: "Width", kind: "length", formula: (row) => piece(row, 3) },
    { title: "Count", kind: "count", formula: (row) => piece(row, 4) },
  ]);
}

function stones(s: SheetLayout, top: number, job: Job): void {
  heading(s, top, RIGHT, s.lastColumn - RIGHT + 1, "Stones");
  const cell = (row: number, column: number): string => `INDEX(StoneSizes,${row},${column})`;
  const sized = (row: number, value: string): string => shownIf(`COUNT(${cell(row, 1)})=1`, value);
  const size = unitLabel("size", job.system);
  rows(s, top + 1, SIZES, [
    { title: "Boulders", kind: "text", formula: (row) => sized(row, `TEXT(${cell(row, 1)},"0")&" ${size}"`) },
    { title: "Each", kind: "weight", formula: (row) => sized(row, cell(row, 4)) },
    { title: "Count", kind: "count", formula: (row) => sized(row, cell(row, 5)) },
    {
      title: "Lift",
      kind: "text",
      formula: (row) => sized(row, `IF(LEFT(${cell(row, 6)},2)="By","by hand","machine")`),
    },
  ]);
  const at = top + SIZES + 2;
  s.put(at, RIGHT, { value: "Lip stones", style: "resultText", look: { indent: 1 } });
  const known = (formula: string): string => shownIf("COUNT(LipStoneWeight,LipStoneCount,HandLimit)=3", formula);
  const look = (kind: Kind): { format: string } => ({ format: formatOf(kind, job.system) });
  s.put(at, RIGHT + 1, { formula: known("LipStoneWeight"), style: "result", look: look("weight") });
  s.put(at, RIGHT + 2, { formula: known("LipStoneCount"), style: "result", look: look("count") });
  s.put(at, RIGHT + 3, {
    formula: known('IF(LipStoneWeight<=HandLimit,"by hand","machine")'),
    style: "resultText",
    look: { indent: 1 },
  });
}

function signOff(s: SheetLayout): void {
  s.put(s.row, 1, {
    value: "Levels read again and closed on the bench mark:  name ______________________  date ______________",
    style: "plain",
    across: s.lastColumn,
  });
  s.sheet.heights.set(s.row, 24);
}
