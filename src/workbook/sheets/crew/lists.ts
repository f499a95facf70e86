import { unitLabel } from "../../../calc/quantity/measures";
import { Ref, type Job, type SheetLayout } from "../../layout";
import { hideBlankRows } from "../../layout/conditions";
import { formatOf, type Kind } from "../../layout/formats";
import { said } from "../../layout/said";
import { head } from "../../layout/tableHead";
import { fillDown } from "../money/cells";
import { PIECES } from "../liner/pieces";
import { heading } from "./heading";

const SIZES = 5;

/** Where a list stands: its first row and column, and the columns it takes. */
export interface Place {
  readonly top: number;
  readonly left: number;
  readonly across: number;
}

interface Column {
  readonly title: string;
  readonly kind: Kind;
  /** Formula that fills the column. */
  readonly formula: string;
  /** Formula of its first row, where that is of its own. */
  readonly first?: string;
}

/** Rows that read cells of another sheet's table, blank where that is blank. */
function rows(s: SheetLayout, { top, left }: Place, count: number, columns: readonly Column[]): void {
  columns.forEach(({ title, kind }, index) => head(s, top, left + index, { title, kind }));
  for (let row = 1; row <= count; row++) {
    columns.forEach(({ kind, first }, index) =>
      s.put(top + row, left + index, {
        ...(first !== undefined && row === 1 ? { formula: `=${first}` } : {}),
        style: kind === "text" ? "resultText" : "result",
        look: {
          format: kind === "text" ? "General" : formatOf(kind, s.job.system),
          ...(kind === "text" ? { indent: 1 } : {}),
        },
      }),
    );
  }
  columns.forEach(({ formula, first }, index) => {
    const from = top + (first === undefined ? 1 : 2);
    fillDown(s, new Ref(s.name, from, left + index, top + count, left + index), formula);
  });
  hideBlankRows(s, { top: top + 1, left, bottom: top + count, right: left + columns.length - 1 });
}

const shownIf = (test: string, value: string): string => `IF(${test},${value},"")`;

/** The liner's pieces; gives the first row below them. */
export function cuts(s: SheetLayout, place: Place): number {
  heading(s, place.top, place.left, place.across, "Cut list, liner");
  const piece = (column: number): string =>
    shownIf("ISNUMBER(INDEX(LinerPieces,0,2))", `INDEX(LinerPieces,0,${column})`);
  rows(s, { ...place, top: place.top + 1 }, PIECES, [
    { title: "Piece", kind: "text", formula: piece(1) },
    { title: "Length", kind: "length", formula: piece(2) },
    { title: "Width", kind: "length", formula: piece(3) },
    { title: "Count", kind: "count", formula: piece(4) },
  ]);
  return place.top + PIECES + 2;
}

/** Boulders by size and the lip stones, with the most one weighs and how it is lifted. */
export function stones(s: SheetLayout, place: Place, job: Job): void {
  heading(s, place.top, place.left, place.across, "Stones");
  const sizes = (column: number): string => `INDEX(StoneSizes,SEQUENCE(${SIZES}),${column})`;
  const size = unitLabel("size", job.system);
  // The lip stones come first: their number is known in every job, the sizes of boulders are few or many.
  const either = (lip: string, boulder: string): Pick<Column, "first" | "formula"> => ({
    first: shownIf("COUNT(LipStoneHeavy,LipStoneCount,HandLimit)=3", lip),
    formula: shownIf(`ISNUMBER(${sizes(1)})`, boulder),
  });
  rows(s, { ...place, top: place.top + 1 }, SIZES + 1, [
    { title: "Stone", kind: "text", ...either('"Lip stones"', `${said(sizes(1), 0)}&" ${size}"`) },
    // The heavy side, as the printed pack has it.
    { title: "Each up to", kind: "weight", ...either("ROUNDUP(LipStoneHeavy,0)", `ROUNDUP(${sizes(6)},0)`) },
    { title: "Count", kind: "count", ...either("LipStoneCount", sizes(7)) },
    {
      title: "Lift",
      kind: "text",
      ...either('IF(LipStoneHeavy<=HandLimit,"by hand","machine")', `IF(LEFT(${sizes(8)},2)="By","by hand","machine")`),
    },
  ]);
}

/** Lines of a label and a text that is put together from cells. */
function lines(s: SheetLayout, place: Place, title: string, texts: readonly (readonly [string, string])[]): void {
  heading(s, place.top, place.left, place.across, title);
  texts.forEach(([label, formula], index) => {
    const row = place.top + 1 + index;
    s.put(row, place.left, { value: label, style: "label" });
    s.put(row, place.left + 1, { formula: `=${formula}`, style: "resultText", across: place.across - 1 });
  });
}

/** The pump, what it is to deliver, and the pipes it feeds. */
export function plumbing(s: SheetLayout, place: Place, job: Job): void {
  const [flow, head_, length, size] = (["flow", "head", "length", "size"] as const).map((kind) =>
    unitLabel(kind, job.system),
  );
  const pipe = (row: number): string => {
    const at = (column: string): string => `INDEX(${column},${row})`;
    return shownIf(
      `N(${at("RouteSizes")})>0`,
      `TEXTJOIN(" ",TRUE,${at("RouteSizes")},"${size}",${at("PipeTypes")})&", "&${said(at("RouteLengths"), 1)}&" ${length}"`,
    );
  };
  lines(s, place, "Pump and pipe", [
    ["Pump", `PumpName&IF(COUNT(PumpCount)=1,IF(PumpCount>1,", "&PumpCount&" of them",""),"")`],
    [
      "Delivers",
      shownIf(
        "COUNT(DeliveredFlow,DutyHead)=2",
        `${said("DeliveredFlow", 0)}&" ${flow} at "&${said("DutyHead", 1)}&" ${head_}"`,
      ),
    ],
    ["Pipe 1", pipe(1)],
    ["Pipe 2", pipe(2)],
    ["Pipe 3 and 4", `TEXTJOIN("; ",TRUE,${pipe(3)},${pipe(4)})`],
  ]);
}

/** The inside of the basin, the fabric under and over the liner, and the marks of the water. */
export function basin(s: SheetLayout, place: Place, job: Job): void {
  const [length, size, water] = (["length", "size", "water"] as const).map((kind) => unitLabel(kind, job.system));
  const strips = (name: string): string =>
    shownIf(
      `COUNT(INDEX(${name},1,2))=1`,
      `INDEX(${name},1,2)&" strips of "&${said(`INDEX(${name},1,3)`, 2)}&" ${length}, "&(FabricUnder+FabricOver)&" layers"`,
    );
  const known = (names: string, count: number, text: string): string => shownIf(`COUNT(${names})=${count}`, text);
  const decimals = job.pick({ US: 1, SI: 0 });
  lines(s, place, "Basin and fabric", [
    [
      "Basin at the bottom",
      known(
        "BasinLength,BasinWidth,BasinWaterDepth",
        3,
        `${said("BasinLength", 2)}&" × "&${said("BasinWidth", 2)}&" × "&${said("BasinWaterDepth", 2)}&" ${length}"`,
      ),
    ],
    ["Rim below grade", known("RimBelowGrade", 1, `${said("RimBelowGrade", decimals)}&" ${size}"`)],
    ["Water to fill it", known("BasinHold", 1, `${said("BasinHold", 0)}&" ${water}"`)],
    ["Fabric, stream", strips("StreamFabric")],
    ["Fabric, basin", strips("BasinFabric")],
  ]);
}
