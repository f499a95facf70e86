import { shippedLabor } from "../../../book/shipped/people";
import { FACTS } from "../../../job/facts";
import type { Job, SheetLayout } from "../../layout";
import { sizeHoursCells, sizeHoursColumns } from "../../sizeHours";
import { PARTS } from "../basin/pit";
import { RISER_ROWS, ROUTE_ROWS } from "../pump/route";
import { MIX_ROWS } from "../stone/pieces";
import { numbered } from "../water/parts";

/** A step without a number, and a size beyond the last step, have no hours: 1/(1/x) lets no blank pass for 0. */
const timesAt = (size: string, steps: string, times: string): string =>
  `IFERROR(1/(1/INDEX(${times},MATCH(MINIFS(${steps},${steps},">="&${size}),${steps},0))),"")`;

/** What larger pipe, heavier stones and larger tubs take, as the company's own steps say; it is read above, at their tasks. */
export function hoursBySize(s: SheetLayout, job: Job): void {
  s.section("Hours by size");
  s.note(
    "The rates above are for a usual size, which counts 1 here. A pipe, a lip stone, a tub and a boulder take the row of the next size up; " +
      "what is larger than the last row has no hours, and no other size stands in for it.",
  );
  s.table({
    name: "SizeHours",
    rows: FACTS.sizeHours.rows,
    columns: sizeHoursColumns(job.system),
    usual: shippedLabor(job.system).sizes.map((size) => sizeHoursCells(size, job.system)),
  });
  s.skip();
  tubs(s, job);
  s.skip();
  const pipes = s.table({
    rows: ROUTE_ROWS + RISER_ROWS,
    columns: [
      { key: "pipe", title: "Pipe", kind: "text", fixed: [...numbered("Pipe", ROUTE_ROWS), "Risers"] },
      { key: "size", title: "Size", kind: "size", whole: true, formula: '=IF(PipeSizes="","",PipeSizes)' },
      {
        key: "length",
        title: "Length",
        kind: "length",
        whole: true,
        formula: "=IF(ISTEXT(PipeLengths),0,PipeLengths)",
      },
      {
        key: "times",
        title: "Times",
        source: "by definition: read from the company's book; a blank there is no number",
        kind: "factor",
        format: "0.00",
        whole: true,
        formula: `=IF([size]="","",${timesAt("[size]", "SizePipes", "SizePipeTimes")})`,
      },
      {
        key: "product",
        title: "Length × times",
        source: "by definition",
        kind: "number",
        whole: true,
        formula: '=IF([length]=0,0,IF([times]="","",[length]*[times]))',
      },
    ],
  });
  const [length, product] = [pipes.column("length"), pipes.column("product")];
  s.result({
    name: "PipeSizeTimes",
    label: "All pipe, by its length",
    source: "by definition: the mean, weighed by length",
    kind: "factor",
    format: "0.000",
    formula: `=IF(COUNT(${product})<${ROUTE_ROWS + RISER_ROWS},"",IF(SUM(${length})=0,1,SUM(${product})/SUM(${length})))`,
  });
  s.result({
    name: "LipSizeTimes",
    label: "One lip stone, by its likely weight",
    source: "by definition: read from the company's book; a blank there is no number",
    kind: "factor",
    format: "0.00",
    // An error of its own is handed on.
    formula: `=IF(N(LipStoneCount)=0,1,IF(ISNUMBER(LipStoneWeight),${timesAt("LipStoneWeight", "SizeStones", "SizeStoneTimes")},LipStoneWeight))`,
  });
  boulders(s);
}

/** Boulders of each size by the likely weight of one: a load of small ones is many to lift, of large ones slow to set. */
function boulders(s: SheetLayout): void {
  s.skip();
  const of = (column: number): string => `INDEX(StoneSizes,SEQUENCE(${MIX_ROWS}),${column})`;
  const each = s.table({
    rows: MIX_ROWS,
    columns: [
      { key: "size", title: "Boulders", kind: "text", fixed: numbered("Size", MIX_ROWS) },
      {
        key: "weight",
        title: "One weighs",
        kind: "weight",
        whole: true,
        formula: `=IF(ISNUMBER(${of(4)}),${of(4)},"")`,
      },
      { key: "load", title: "Load", kind: "load", whole: true, formula: `=IF([weight]="",0,${of(3)})` },
      {
        key: "times",
        title: "Times",
        kind: "factor",
        format: "0.00",
        source: "by definition: read from the company's book; a blank there is no number",
        whole: true,
        formula: `=IF([weight]="","",${timesAt("[weight]", "SizeBoulders", "SizeBoulderTimes")})`,
      },
    ],
  });
  const [load, times] = [String(each.column("load")), String(each.column("times"))];
  s.result({
    name: "BoulderSizeTimes",
    label: "All boulders, by their load",
    source: "by definition: the mean, weighed by load",
    kind: "factor",
    format: "0.00",
    formula:
      `=IF(IF(COUNT(SizeBoulderTimes)=0,TRUE,N(BoulderTons)=0),1,IF(COUNT(${each.column("weight")})=0,"",` +
      `IF(COUNT(${times})<COUNT(${each.column("weight")}),"",SUMPRODUCT(${load},${times})/SUM(${load}))))`,
  });
}

/** Each tub of the basin by what it holds; machines set the larger ones. */
function tubs(s: SheetLayout, job: Job): void {
  const sides = ["PartLengths", "PartWidths", "PartDepths"];
  const volume = `${sides.join("*")}*IF(PartRoom="",1,PartRoom)*${job.pick({ US: "1728/231", SI: "1000" })}`;
  const known = sides.map((side) => `ISNUMBER(${side})`).join("*");
  const each = s.table({
    rows: PARTS,
    columns: [
      { key: "part", title: "Basin part", kind: "text", fixed: numbered("Part", PARTS) },
      {
        key: "volume",
        title: "Tub holds",
        kind: "water",
        name: "TubVolumes",
        whole: true,
        formula: `=IF((PartKinds="tub")*${known}=1,ROUND(${volume},0),"")`,
        source: "by definition: a US gallon is 231 in³, a liter 1/1000 m³",
      },
      {
        key: "times",
        title: "Times",
        kind: "factor",
        format: "0.00",
        source: "common practice, no source: the company's own steps",
        whole: true,
        formula: `=IF([volume]="","",${timesAt("[volume]", "SizeTubs", "SizeTubTimes")})`,
      },
      {
        key: "machine",
        title: "Machine",
        kind: "factor",
        format: "0.00",
        // 0 says that it is carried; a blank is no 0.
        whole: true,
        formula: `=IF([volume]="","",IFERROR(VALUE(INDEX(SizeTubMachineTimes&"",MATCH(MINIFS(SizeTubs,SizeTubs,">="&[volume]),SizeTubs,0))),""))`,
      },
    ],
  });
  const count = 'COUNTIF(PartKinds,"tub")';
  const [times, machine] = [String(each.column("times")), String(each.column("machine"))];
  const mean = (name: string, label: string, column: string): void => {
    s.result({
      name,
      label,
      kind: "factor",
      format: "0.00",
      source: "by definition: the mean of the tubs",
      formula: `=IF(${count}=0,1,IF(COUNT(${times},${machine})<2*${count},"",AVERAGE(${column})))`,
    });
  };
  mean("TubSizeTimes", "All tubs, each by what it holds", times);
  mean("TubSizeMachineTimes", "Their machine hours", machine);
}
