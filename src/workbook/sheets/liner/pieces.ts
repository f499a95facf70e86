import { whenFilled } from "../../layout/conditions";
import type { Job, SheetLayout } from "../../layout";

/** Rows of pieces; the Crew sheet lists as many. */
export const PIECES = 8;
const SIDE = { min: 0, max: { US: 300, SI: 90 } } as const;

/** What is added to the bare shape. */
export function allowances(s: SheetLayout): void {
  s.section("Allowances");
  s.input({
    name: "LinerOverlap",
    label: "Sheet beyond each edge",
    kind: "length",
    min: 0,
    max: { US: 10, SI: 3 },
    message: "How far the liner runs on over the ground at every edge.",
    note: { US: "Common practice: 1 ft.", SI: "Common practice: 0.3 m." },
  });
  s.input({
    name: "SlackPerDrop",
    label: "Loose sheet at each drop",
    kind: "length",
    min: 0,
    max: { US: 3, SI: 1 },
    message: "Loose liner left at every drop, so that settling ground and stone cannot stretch it.",
    note: { US: "Common practice: 3 in.", SI: "Common practice: 80 mm." },
  });
  s.input({
    name: "CutRounding",
    label: "Round cuts up to a multiple of",
    kind: "length",
    min: { US: 0.01, SI: 0.001 },
    max: { US: 5, SI: 1 },
    message: "Each side of a cut is rounded up to a multiple of this.",
  });
  s.input({
    name: "LinerThickness",
    label: "Liner thickness",
    kind: "number",
    unit: { US: "mil", SI: "mm" },
    min: { US: 10, SI: 0.25 },
    max: { US: 120, SI: 3 },
    message: "Thickness of the liner as sold.",
    note: {
      US: "45 mil EPDM is the usual liner (common practice).",
      SI: "1.15 mm EPDM is the usual liner (common practice).",
    },
  });
}

/** The two cuts that follow from the feature. */
export function cuts(s: SheetLayout, job: Job): void {
  s.section("Cuts that follow from the feature");
  s.note("The stones of both banks stand on the sheet: it is as much wider than the bed as they reach back (Stone).");
  const columns = [{ kind: "length" }, { kind: "length" }, { kind: "area" }, { kind: "weight" }] as const;
  const cut = (name: string, label: string, formula: string, needs: readonly string[]): void => {
    s.put(s.row + 1, 1, { value: label, style: "label" });
    s.fitHeight(s.row + 1, label, s.charactersAcross(1, 1));
    s.spill({ name, header: "function", headerLines: 3, rows: 1, at: 2, columns, formula, needs });
  };
  cut(
    "StreamCut",
    "Stream, along its drops and treads",
    `=RILL.FALLCUT(Drops,Treads,BedWidth+2*BankReach/${job.per("size", "length")},BankHeight,LinerOverlap,SlackPerDrop,CutRounding,Units)`,
    ["Drops", "Treads", "BedWidth", "BankHeight", "BankReach"],
  );
  cut(
    "BasinCut",
    "Basin, floor and walls",
    "=RILL.LINERCUT(BasinLength,BasinWidth,BasinWaterDepth,LinerOverlap,BasinSideSlope,CutRounding,Units)",
    ["BasinLength", "BasinWidth", "BasinWaterDepth"],
  );
}

/** Whether a tub is the basin, so that no liner lies below it. */
const TUB = "IFERROR(TubIsBasin,0)>0";

/** All pieces; the first two stand in slanted figures and can be typed over. */
export function pieces(s: SheetLayout): void {
  s.section("Pieces to cut");
  s.note(
    "Stream and basin are filled in from above, the stream by station from Ground once there are shots; type over them where the ground asks for more. Add the skirts that join box, stream and basin.",
  );
  const fromCut = (column: number): string[] => {
    const cell = (name: string): string => `IF(COUNT(INDEX(${name},1,${column}))=1,INDEX(${name},1,${column}),"")`;
    // By station once the ground was shot; until then the rectangle over drops and treads.
    const run = ["LinerRunLength", "LinerRunWidth"][column - 1] ?? "";
    return [
      `=IF(IFERROR(GroundShots,2)>=2,IF(COUNT(${run})=1,${run},""),${cell("StreamCut")})`,
      `=IF(${TUB},"",${cell("BasinCut")})`,
    ];
  };
  const table = s.table({
    rows: PIECES,
    columns: [
      {
        key: "name",
        title: "Piece",
        kind: "text",
        formula: Array.from(
          { length: PIECES },
          (_, index) => `=IF(ISNUMBER([length]),"${["Stream", "Basin"][index] ?? "Piece [#]"}","")`,
        ),
        input: { max: 40, message: "What the piece is for." },
      },
      {
        key: "length",
        title: "Length",
        source: "by definition: two shots make a ground line, fewer leave the rectangle over drops and treads",
        kind: "length",
        name: "PieceLengths",
        formula: fromCut(1),
        input: { ...SIDE, message: "Length of the piece, allowances included." },
      },
      {
        key: "width",
        title: "Width",
        source: "by definition: two shots make a ground line, fewer leave the rectangle over drops and treads",
        kind: "length",
        name: "PieceWidths",
        formula: fromCut(2),
        input: { ...SIDE, message: "Width of the piece, allowances included." },
      },
      {
        key: "count",
        title: "Count",
        kind: "count",
        name: "PieceCounts",
        formula: '=IF(ISNUMBER([length]),1,"")',
        input: { min: 1, max: 3, message: "How many of this piece." },
      },
      {
        key: "weight",
        title: "Weight each",
        source: "by definition: length × width × weight per area",
        kind: "weight",
        name: "PieceWeights",
        whole: true,
        formula: '=IF(ISNUMBER([length])*ISNUMBER([width])*COUNT(LinerWeight),[length]*[width]*LinerWeight,"")',
      },
      {
        key: "fits",
        title: "From one sheet",
        kind: "text",
        name: "PieceFits",
        whole: true,
        formula:
          '=IF(ISNUMBER([length])*ISNUMBER([width])*COUNT(RollWidths)=0,"",IF((IF([length]<[width],[length],[width])<=MAX(RollWidths))+' +
          '(LinerTurn="no")*([width]<=MAX(RollWidths))>0,"yes","needs a seam"))',
      },
    ],
    demo: {
      US: [
        ["", "", "", ""],
        ["", "", "", ""],
        ["Skirt behind the box", 6.5, 4, 1],
        ["Skirts beside the box", 4.5, 2.5, 2],
      ],
      SI: [
        ["", "", "", ""],
        ["", "", "", ""],
        ["Skirt behind the box", 1.9, 1.3, 1],
        ["Skirts beside the box", 1.3, 0.8, 2],
      ],
    },
  });
  s.define("LinerPieces", table.body.top, 1, table.body.bottom, 4);
  // Stream and basin are needed: while one is still to be worked out, what the others come to is a part of it.
  const open = [1, 2].map((row) => {
    const length = table.cell("length", row).address.replace(`${s.name}!`, "");
    return `ISFORMULA(${length})*(${length}="")${row === 2 ? `*NOT(${TUB})` : ""}`;
  });
  s.put(table.body.top - 1, 8, { value: "Pieces", style: "head" });
  s.put(table.body.top, 8, {
    formula: whenFilled(`IF(${open.join("+")}>0,"",COUNT(PieceLengths))`, ["PieceLengths"]),
    style: "result",
    kind: "count",
    look: { format: "0" },
    name: "PieceCount",
  });
  // What is cut beside stream and basin: their fabric is not worked out strip by strip.
  (["length", "width", "count"] as const).forEach((key, index) => {
    const { left, bottom } = table.column(key);
    s.define(["SkirtLengths", "SkirtWidths", "SkirtCounts"][index] ?? "", table.body.top + 2, left, bottom, left);
  });
}
